// Holes against the wall of the example's post, whose faces stand 1 in from the center.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;
using test::one_anchor;

namespace {

std::size_t count(const catalog::Resolved& resolved) { return test::run_finding("hole-in-post", resolved).size(); }

}  // namespace

TEST_CASE("A hole that cuts the post's wall fails, one that touches it from outside or inside does not", "[unit][A2]") {
    // Center 1.1 in out, radius 7/32: it reaches 0.21875 - 0.1 = 0.11875 in inside the face.
    const auto findings = test::run_finding("hole-in-post", one_anchor({-1.1, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "hole A");
    CHECK(test::says(findings[0].message, "reaches 0.119 in under the post"));
    CHECK(count(one_anchor({-1.21875, 0.0})) == 0);
    CHECK(count(one_anchor({-30.95625 / 25.4, 0.0})) == 0);  // the same in millimeters
    CHECK(count(one_anchor({-1.21874, 0.0})) == 1);
    // The hollow's faces stand 0.875 in from the center: 0.65625 + 0.21875.
    CHECK(count(one_anchor({-0.65625, 0.0})) == 0);
    CHECK(count(one_anchor({-0.66, 0.0})) == 1);
    CHECK(count(test::example_resolved()) == 0);
}

TEST_CASE("A hole off the corner of the post is as far from a square tube as its corner, from a round one its circle",
          "[closed-form]") {
    // At (1.15, 1.15): 0.15 x sqrt(2) = 0.2121 from the corner, less than 0.21875; 1.6263 - 1 from a round post.
    catalog::Resolved resolved = one_anchor({1.15, 1.15});
    CHECK(count(resolved) == 1);
    resolved.detail.post = model::RoundTube{2.0, 0.125, "steel"};
    CHECK(count(resolved) == 0);
    // At (0.85, 0.85) the round post's face is 1.2021 - 1 = 0.2021 in away.
    resolved = one_anchor({0.85, 0.85});
    resolved.detail.post = model::RoundTube{2.0, 0.125, "steel"};
    CHECK(count(resolved) == 1);
}

TEST_CASE("A slot cuts the wall wherever along it that is", "[unit]") {
    // Half of its straight part is (1 - 7/16) / 2 = 0.28125: its end's center is 1.21875 from the post's, and touches.
    CHECK(count(one_anchor({-1.5, 0.0}, model::Slot{1.0, 0.4375, 0.0})) == 0);
    CHECK(count(one_anchor({-1.5, 0.0}, model::Slot{1.0, 0.4375, 180.0})) == 0);
    const auto findings = test::run_finding("hole-in-post", one_anchor({-1.5, 0.0}, model::Slot{1.1, 0.4375, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(test::says(findings[0].message, "reaches 0.05 in under the post"));
    // Both ends stand clear, and its middle passes under the post: 1 + 0.21875 in.
    const auto through = test::run_finding("hole-in-post", one_anchor({0.0, 0.0}, model::Slot{4.0, 0.4375, 90.0}));
    REQUIRE(through.size() == 1);
    CHECK(test::says(through[0].message, "reaches 1 7/32 in under the post"));
}

TEST_CASE("A hole without an anchor cuts the wall too, and in the hollow it is a vent", "[unit]") {
    catalog::Resolved resolved = one_anchor({-2.0, -2.5});
    on_deck(resolved.detail).plate.holes.push_back({"V", {0.0, 0.0}, model::RoundHole{0.5}});
    CHECK(count(resolved) == 0);
    on_deck(resolved.detail).plate.holes.back().center = {0.9, 0.0};
    CHECK(count(resolved) == 1);
}

TEST_CASE("A wood post's shoe is what stands on the plate", "[unit]") {
    catalog::Resolved resolved = test::wood_post_example();  // shoe 4 in square
    CHECK(count(resolved) == 0);
    on_deck(resolved.detail).plate.holes[0].center = {-2.1, 0.0};
    const auto findings = test::run_finding("hole-in-post", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(test::says(findings[0].message, "under the shoe and cuts its wall"));
}
