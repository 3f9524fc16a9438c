// A bolt's stated length against what it must pass.
#include "checks/anchor/bolt_example.h"
#include "checks/run_check.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

std::vector<checks::Finding> of_length(double length_in) {
    catalog::Resolved resolved = test::bolted_example();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.bolt = model::ThroughBolt{"bolt-1/2", "a307", {}};
        anchor.bolt->length_in = length_in;
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
