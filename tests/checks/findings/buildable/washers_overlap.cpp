// Washers and heads side by side.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;
using test::two_anchors;

namespace {

std::vector<checks::Finding> findings_of(catalog::Resolved resolved, double washer_in = 0.0) {
    if (washer_in > 0.0) test::add_washers(resolved, washer_in);
    return test::run_finding("washers-overlap", resolved);
}

}  // namespace

TEST_CASE("Washers that overlap fail, and washers that touch do not", "[unit]") {
    const auto findings = findings_of(two_anchors({-2.0, -2.5}, {-1.2, -2.5}), 1.0);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "anchor B");
    CHECK(test::says(findings[0].message, "Washer of anchor B overlaps that of anchor A"));
    CHECK(test::says(findings[0].message, "0.8 in apart and need 1 in"));
    CHECK(findings_of(two_anchors({-2.0, -2.5}, {-1.0, -2.5}), 1.0).empty());
    CHECK(findings_of(two_anchors({-50.8 / 25.4, -2.5}, {-25.4 / 25.4, -2.5}), 1.0).empty());
    CHECK(findings_of(test::example_resolved(), 1.0).empty());
}

TEST_CASE("Heads need room for their corners", "[unit]") {
    // Twice 0.32476 in.
    CHECK(findings_of(two_anchors({-2.0, -2.5}, {-1.35, -2.5})).empty());
    CHECK(findings_of(two_anchors({-2.0, -2.5}, {-1.36, -2.5})).size() == 1);
}

TEST_CASE("A slot's washer may stand at its near end", "[unit]") {
    // The slot's near end is centered at x = -1.5.
    const model::Slot slot{1.4375, 0.4375, 0.0};
    CHECK(findings_of(two_anchors({-2.0, -2.5}, {-0.5, -2.5}, slot), 1.0).empty());
    CHECK(findings_of(two_anchors({-2.0, -2.5}, {-0.6, -2.5}, slot), 1.0).size() == 1);
}
