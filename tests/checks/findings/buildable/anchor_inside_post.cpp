// Anchors in the hollow of the example's post, 1 3/4 in square, and under a wood post in its shoe.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "checks/steel_examples.h"
#include "support/compare.h"

using namespace toehold;
using checks::Severity;
using test::one_anchor;

namespace {

std::size_t count(const catalog::Resolved& resolved) {
    return test::run_finding("anchor-inside-post", resolved).size();
}

}  // namespace

TEST_CASE("An anchor sealed inside the tube fails", "[unit][A2]") {
    // Its center is 0.4 in inside the face: clear of the post it stands 0.4 + 0.21875 = 0.61875 in farther out.
    const auto findings = test::run_finding("anchor-inside-post", one_anchor({-0.6, 0.0}));
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::fails);
    CHECK(test::about(findings[0]) == "anchor A");
    CHECK(test::says(findings[0].message, "out by at least 0.619 in"));
    CHECK(count(test::example_resolved()) == 0);
}

TEST_CASE("A hole that touches the inside of the wall is inside, one that cuts it is the other rule's", "[unit]") {
    CHECK(count(one_anchor({-0.65625, 0.0})) == 1);
    CHECK(count(one_anchor({-0.65625 - 2e-6, 0.0})) == 0);
    CHECK(count(one_anchor({0.0, 0.65625})) == 1);
    CHECK(count(one_anchor({0.0, 0.65625 + 2e-6})) == 0);
    CHECK(count(one_anchor({-0.6, 0.0}, model::Slot{0.6, 0.4375, 0.0})) == 0);  // its end passes the wall
    CHECK(count(one_anchor({-0.6, 0.0}, model::Slot{0.6, 0.4375, 90.0})) == 1);
}

TEST_CASE("A round post's hollow is round", "[closed-form]") {
    // sqrt(2) x 0.5 + 0.21875 = 0.9259 passes 0.875; in a square hollow the hole reaches 0.71875 each way.
    catalog::Resolved resolved = one_anchor({0.5, 0.5});
    CHECK(count(resolved) == 1);
    resolved.detail.post = model::RoundTube{2.0, 0.125, "steel"};
    CHECK(count(resolved) == 0);
    on_deck(resolved.detail).plate.holes[0].center = {0.46, 0.46};  // 0.8693
    CHECK(count(resolved) == 1);
}

TEST_CASE("An anchor under a wood post fails, and a hole there without one does not", "[unit]") {
    catalog::Resolved resolved = test::wood_post_example();
    on_deck(resolved.detail).plate.holes[0].center = {0.0, 1.0};
    const auto findings = test::run_finding("anchor-inside-post", resolved);
    REQUIRE(findings.size() == 1);
    CHECK(test::says(findings[0].message, "under the wood post"));
    resolved.anchors.erase(resolved.anchors.begin());
    CHECK(count(resolved) == 0);
}
