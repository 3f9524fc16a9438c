// Room to turn a 9/16 in head beside the example's weld, whose toe stands 1.1875 in from the center.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;
using test::one_anchor;

namespace {

std::vector<checks::Finding> findings_of(const catalog::Resolved& resolved) {
    return test::run_finding("wrench-clearance", resolved);
}

}  // namespace

TEST_CASE("A head whose corners cannot pass the weld fails", "[unit]") {
    // It lies just beside the weld, 0.28125 in from the toe; its corners need 9/16 / sqrt(3) = 0.32476 in.
    const auto findings = findings_of(one_anchor({-1.46875, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "anchor A");
    CHECK(test::says(findings[0].message, "need 0.325 in from the anchor's center to the weld and have 9/32 in"));
    CHECK(findings_of(one_anchor({-1.1875 - test::half_corners_in, 0.0})).at(0).severity == Severity::caution);
    CHECK(findings_of(one_anchor({-1.45, 0.0})).empty());  // on the weld: another rule's
}

TEST_CASE("Without room for a socket an open-end wrench is needed", "[unit]") {
    // 0.75 x 9/16 = 0.421875 in; 0.4125 is there.
    const auto findings = findings_of(one_anchor({-1.6, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::caution);
    CHECK(test::says(findings[0].message, "open-end wrench"));
    CHECK(findings_of(one_anchor({-1.609375, 0.0})).empty());
    CHECK(findings_of(test::example_resolved()).empty());
}

TEST_CASE("Without a weld the post's face is the limit", "[unit]") {
    catalog::Resolved resolved = one_anchor({-1.3, 0.0});
    on_deck(resolved.detail).weld.reset();
    REQUIRE(findings_of(resolved).size() == 1);
    CHECK(test::says(findings_of(resolved)[0].message, "to the post"));
}

TEST_CASE("A bolt is tightened by its nut, and a screw by a bit", "[unit]") {
    catalog::Resolved resolved = one_anchor({-1.46875, 0.0});
    resolved.anchors[0].kind = catalog::FastenerKind::through_bolt;
    REQUIRE(findings_of(resolved).size() == 1);
    CHECK(findings_of(resolved)[0].severity == Severity::caution);
    CHECK(test::says(findings_of(resolved)[0].message, "by its nut"));
    on_deck(resolved.detail).plate.holes[0].center = {-1.6, 0.0};
    CHECK(findings_of(resolved).empty());
    resolved = one_anchor({-1.46875, 0.0});
    resolved.anchors[0].kind = catalog::FastenerKind::wood_screw;
    CHECK(findings_of(resolved).empty());
}
