// Remedies of shipped details: each must be a change that hand arithmetic and a review of its own confirm.
#include "review/remedies.h"

#include "model/validate.h"
#include "review/shipped_reviews.h"

#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold;
using review::Verdict;

TEST_CASE("one block under the heel only: a second block under the other row mends it", "[unit]") {
    const review::Review before = test::shipped_review("heron-landing-heel-block-only");
    REQUIRE(before.verdict == Verdict::inadequate);
    const std::vector<review::Remedy> remedies = review::find_remedies(before, test::shipped_catalog());
    const auto found = std::find_if(remedies.begin(), remedies.end(),
                                    [](const review::Remedy& one) { return one.id == "second-block"; });
    REQUIRE(found != remedies.end());
    CHECK(found->verdict == Verdict::adequate);
    REQUIRE(found->detail.framing.blocks.size() == 2);
    CHECK(found->detail.framing.blocks[1].across_in == 3.75);  // under the row at y = 3 3/4 in

    // What governs then: a screw's withdrawal and lateral force together (NDS 12.4.1, Eq. 12.4-1). Withdrawal alone is
    // 395 lb/in x 4.21875 in x 0.7 = 1166.5 lb; 50 lb of shear beside a pull of some 950 lb leaves a little less.
    CHECK(found->governing.check == "anchor-combined");
    CHECK(found->governing.capacity > 0.9 * 1166.5);
    CHECK(found->governing.capacity < 1166.5);
    CHECK(found->governing.ratio < 1.0);

    // A fresh review of the changed detail says the same, and hand arithmetic says it too.
    const review::Review after = review::review(test::resolved_by_shipped(found->detail), "");
    CHECK(after.verdict == found->verdict);
    CHECK(after.governing.ratio == found->governing.ratio);
    // 7/16 x 8 in lag screw, G 0.55: 395 lb/in (NDS Table 12.2A), thread 8/2 + 1/2 - 9/32 = 4.21875 in, wet 0.7:
    // 395 x 4.21875 x 0.7 = 1166.5 lb; the table's rounding is worth 1.5 lb.
    for (const checks::CheckResult& result : after.checks) {
        if (result.id != "anchor-withdrawal") continue;
        CHECK_CLOSE(result.capacity, 1166.5, 0.0, 1.5);
        CHECK(result.status == checks::Status::holds);
    }
    // Pushed outward, 8400 lb in: the two heel anchors, 3 3/4 in behind the post, pull against bearing that lies on the
    // new block, between 2 in and the plate's edge at 4 3/4 in: 8400 / 8.5 = 988 lb to 8400 / 5.75 = 1461 lb.
    int outward = 0;
    for (const demand::State& state : after.demand->states) {
        if (std::abs(state.direction_rad - 0.5 * std::numbers::pi) > 1e-9) continue;
        if (after.demand->cases.at(state.load_case).down_lb != 0.0) continue;  // straight down or up
        ++outward;
        const double heel_lb = state.anchors[0].tension_lb + state.anchors[1].tension_lb;
        CHECK(heel_lb > 8400.0 / 8.5);
        CHECK(heel_lb < 8400.0 / 5.75);
    }
    CHECK(outward == 7);  // every state of stiffness
}

TEST_CASE("a detail that holds is offered no remedy", "[unit]") {
    const review::Review holds = test::shipped_review("heron-landing-lags-in-deep-blocks");
    REQUIRE(holds.verdict == Verdict::adequate);
    CHECK(review::find_remedies(holds, test::shipped_catalog()).empty());
}

TEST_CASE("every change leaves a detail that passes validation", "[property]") {
    for (const char* name : {"heron-landing-end-nailed-blocks", "heron-landing-over-a-joist"}) {
        const catalog::Resolved resolved = test::shipped_detail(name);
        const std::vector<review::Remedy> remedies =
            review::find_remedies(review::review(resolved, ""), test::shipped_catalog());
        for (const review::Remedy& remedy : remedies) {
            INFO(name << ", " << remedy.id);
            CHECK(model::validate(remedy.detail).empty());
        }
    }
}
