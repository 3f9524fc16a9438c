// Holes against the least clearance an anchor goes through with.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;

namespace {

std::vector<checks::Finding> findings_of(double anchor_in, double hole_in) {
    catalog::Resolved resolved = test::one_anchor({-2.0, -2.5}, model::RoundHole{hole_in});
    resolved.anchors[0].diameter_in = anchor_in;
    resolved.anchors[0].hole_diameter_in = hole_in;
    return test::run_finding("hole-tight", resolved);
}

}  // namespace

TEST_CASE("A hole of the anchor's own diameter may not let it through", "[unit]") {
    const auto findings = findings_of(0.4375, 0.4375);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == checks::Severity::caution);
    CHECK(test::about(findings[0]) == "hole A");
    CHECK(test::says(findings[0].message, "7/16 in wide for anchor A of 7/16 in"));
    CHECK(test::says(findings[0].message, "Drill 1/2 in"));
}

TEST_CASE("From 1/32 in of clearance on nothing is said", "[unit]") {
    CHECK(findings_of(0.4375, 0.453125).size() == 1);
    CHECK(findings_of(0.4375, 0.4375 + 0.0310).size() == 1);
    CHECK(findings_of(0.4375, 0.46875).empty());
    CHECK(findings_of(0.4375, 0.5).empty());
    CHECK(findings_of(0.242, 0.25).size() == 1);
    CHECK(findings_of(0.242, 0.2734).empty());
}
