// A bolt's stated length against what it must pass.
#include "checks/anchor/bolt_example.h"
#include "checks/run_check.h"

#include <catch2/catch.hpp>
#include <optional>

using namespace toehold;

namespace {

std::vector<checks::Finding> of_length(double length_in, const std::optional<model::LowerPlate>& lower = {}) {
    catalog::Resolved resolved = test::bolted_example();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.bolt = model::ThroughBolt{"bolt-1/2", "a307", {}};
        anchor.bolt->length_in = length_in;
        anchor.lower = lower;
    }
    return test::run_finding("bolt-too-short", resolved);
}

}  // namespace

TEST_CASE("A bolt that leaves no room for its nut cannot be built", "[closed-form]") {
    // 3/8 plate + 1 decking + 5.5 block + 7/16 nut = 7.3125 in
    CHECK(of_length(7.3125).empty());
    const auto findings = of_length(7.25);
    REQUIRE(findings.size() == 4);
    CHECK(findings[0].severity == checks::Severity::fails);
    CHECK(test::about(findings[0]) == "anchor A");
    CHECK(test::says(findings[0].message, "7 1/4 in long"));
    CHECK(test::run_finding("bolt-too-short", test::bolted_example()).empty());
}

TEST_CASE("A bolt must also pass the lower plate of its group", "[closed-form]") {
    // 3/8 plate + 1 decking + 5.5 block + 1/4 lower plate + 7/16 nut = 7.5625 in
    model::LowerPlate lower;
    lower.width_in = lower.depth_in = 8.0;
    lower.thickness_in = 0.25;
    CHECK(of_length(7.5625, lower).empty());
    const auto findings = of_length(7.3125, lower);
    REQUIRE(findings.size() == 4);
    CHECK(findings[0].severity == checks::Severity::fails);
}
