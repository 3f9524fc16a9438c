// Holes against the standard and oversize hole of their anchor.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;

namespace {

std::vector<checks::Finding> findings_of(double anchor_in, double hole_in, double washer_in = 0.0) {
    catalog::Resolved resolved = test::one_anchor({-2.0, -2.5}, model::RoundHole{hole_in});
    resolved.anchors[0].diameter_in = anchor_in;
    resolved.anchors[0].hole_diameter_in = hole_in;
    if (washer_in > 0.0) test::add_washers(resolved, washer_in);
    return test::run_finding("hole-oversize", resolved);
}

}  // namespace

TEST_CASE("A hole past the oversize hole fails", "[unit][A12]") {
    // 7/16 in: standard 1/2 in, oversize 9/16 in.
    const auto findings = findings_of(0.4375, 0.875);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "hole A");
    CHECK(test::says(findings[0].message, "7/8 in wide for anchor A of 7/16 in; the largest oversize hole is 9/16 in"));
    CHECK(findings_of(0.4375, 0.5625).at(0).severity == Severity::caution);
    CHECK(findings_of(0.4375, 14.2875 / 25.4).at(0).severity == Severity::caution);
    CHECK(findings_of(0.4375, 0.563).at(0).severity == Severity::fails);
}

TEST_CASE("A hole between standard and oversize has play and needs a washer", "[unit]") {
    CHECK(findings_of(0.375, 0.4375).empty());
    CHECK(findings_of(0.375, 11.1125 / 25.4).empty());
    CHECK(test::run_finding("hole-oversize", test::example_resolved()).empty());
    CHECK(test::says(findings_of(0.375, 0.46875).at(0).message, "add a washer"));
    CHECK_FALSE(test::says(findings_of(0.375, 0.46875, 1.0).at(0).message, "add a washer"));
    CHECK(findings_of(0.375, 0.46875, 1.0).at(0).severity == Severity::caution);
}

TEST_CASE("From 1/2 in on the limits are those of the table", "[published]") {
    // AISC 360-16 Table J3.3, from memory.
    CHECK(findings_of(0.75, 0.8125).empty());
    CHECK(findings_of(0.75, 0.94).at(0).clause == "AISC 360-16 Table J3.3 (from memory)");
    CHECK(findings_of(0.5, 0.75).at(0).clause == "AISC 360-16 Table J3.3 (from memory)");
    CHECK(findings_of(0.4375, 0.875).at(0).clause.find("begins at 1/2 in") != std::string::npos);
    CHECK(findings_of(0.75, 0.9375).at(0).severity == Severity::caution);
    CHECK(findings_of(0.75, 0.94).at(0).severity == Severity::fails);
    CHECK(findings_of(1.0, 1.125).empty());
    CHECK(findings_of(1.0, 1.25).at(0).severity == Severity::caution);
    CHECK(findings_of(1.0, 1.26).at(0).severity == Severity::fails);
}

TEST_CASE("A number screw's standard hole is the next drill", "[unit]") {
    // No. 14: 0.242 + 1/16 = 0.3045 in, drilled 5/16; 0.242 + 1/8 = 0.367 in, drilled 3/8.
    CHECK(findings_of(0.242, 0.3125).empty());
    CHECK(findings_of(0.242, 0.375).at(0).severity == Severity::caution);
    CHECK(findings_of(0.242, 0.390625).at(0).severity == Severity::fails);
}
