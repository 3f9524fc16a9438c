// The plate that is left between holes and slots.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;
using test::two_anchors;

namespace {

std::vector<checks::Finding> findings_of(const catalog::Resolved& resolved) {
    return test::run_finding("holes-too-close", resolved);
}

}  // namespace

TEST_CASE("Holes with less than an anchor's diameter between them fail", "[unit]") {
    // 0.75 - 0.4375 = 5/16 in of plate, and a 3/8 in anchor.
    const auto findings = findings_of(two_anchors({-2.0, -2.5}, {-1.25, -2.5}));
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "hole B");
    CHECK(test::says(findings[0].message, "Holes A and B leave 5/16 in"));
    CHECK(test::says(findings[0].message, "3/8 in"));
    CHECK(findings_of(two_anchors({-2.0, -2.5}, {-1.1875, -2.5})).empty());
    CHECK(findings_of(test::example_resolved()).empty());
}

TEST_CASE("Slots that leave the post on four narrow bridges fail", "[unit]") {
    // Slots 1/2 in wide on the sides of a square, 1.6 in from the post's center. The centers of neighboring ends are
    // sqrt(2) (1.6 - 1.14038) = 0.65 in apart, which leaves 0.15 in.
    catalog::Resolved resolved = test::example_resolved();
    const double length = 2.0 * (1.14038 + 0.25);
    on_deck(resolved.detail).plate.holes = {{"A", {0.0, -1.6}, model::Slot{length, 0.5, 0.0}},
                                            {"B", {1.6, 0.0}, model::Slot{length, 0.5, 90.0}},
                                            {"C", {0.0, 1.6}, model::Slot{length, 0.5, 0.0}},
                                            {"D", {-1.6, 0.0}, model::Slot{length, 0.5, 90.0}}};
    const auto findings = findings_of(resolved);
    REQUIRE(findings.size() == 4);
    CHECK(test::says(findings[0].message, "leave 0.15 in"));
}

TEST_CASE("Between holes without anchors nothing is asked", "[unit]") {
    catalog::Resolved resolved = two_anchors({-2.0, -2.5}, {-1.25, -2.5});
    resolved.anchors.resize(1);
    CHECK(findings_of(resolved).size() == 1);
    resolved.anchors.clear();
    CHECK(findings_of(resolved).empty());
}
