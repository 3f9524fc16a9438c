// The guard posts tested by Loferski, Albright and Woeste (trade journal, February 2005, seen in a trade copy): 4x4 No.
// 2 southern pine, 2x8 joists and band, outward push at 36 in, wet lumber. Where screws and bolts stood was not seen,
// so no load is compared: what is held to the tests is which details carry the code's load, and which link is the first
// to go.
#include "review/review.h"
#include "support/shipped.h"
#include "support/side_detail.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using checks::Status;

namespace {

constexpr demand::Sampling quick{.every = 1, .all_stiffnesses = false, .peaks = false, .measured = false};

/// 4x4 on a single 2x8 band that is screwed into the joists' end grain, pushed outward alone.
model::BaseDetail tested_post() {
    constexpr double depth_in = 7.25;
    model::BaseDetail detail = test::side_detail();
    detail.guard.handrail = false;
    detail.loads.directions = model::Directions::outward;
    detail.basis.code = model::BuildingCode::irc_2021;
    detail.basis.load_duration = 1.6;
    on_side(detail).decking.reset();
    on_side(detail).post_bottom_below_top_in = depth_in;
    on_side(detail).places = {{"U", 0.0, 2.0}, {"L", 0.0, 5.25}};
    detail.framing.joists->depth_in = depth_in;
    model::Rim& band = detail.framing.rims.front();
    band.plies = 1;
    band.depth_in = depth_in;
    band.at_in = -1.75 - 0.75;
    detail.framing.joists->to_in = band.at_in - 0.75;
    band.connection = model::EndGrainFasteners{model::EndGrainFasteners::Kind::wood_screw, 0.164, 3.5, 3, 5.0};
    return detail;
}

review::Review review_of(const model::BaseDetail& detail) {
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    return review::evaluate(resolved, demand::find_demand(resolved, quick), "");
}

/// The worst status of the check's results.
Status status_of(const review::Review& review, const std::string& id) {
    Status worst = Status::holds;
    bool found = false;
    for (const checks::CheckResult& result : review.checks) {
        if (result.id != id) continue;
        found = true;
        if (result.status != Status::holds) worst = result.status;
    }
    INFO(id);
    CHECK(found);
    return worst;
}

bool finds(const review::Review& review, const std::string& words) {
    return std::any_of(review.findings.begin(), review.findings.end(), [&](const checks::Finding& finding) {
        return format::english(finding.message).find(words) != std::string::npos;
    });
}

}  // namespace

// Mean 237 lb of 500 lb: the band peeled off the joists, its screws withdrew from their ends.
TEST_CASE("Bolts through a band on end screws: the band leaves the joists, and the bolts hold", "[published]") {
    const review::Review review = review_of(tested_post());
    CHECK(review.verdict == review::Verdict::inadequate);
    CHECK(finds(review, "end grain"));
    CHECK(status_of(review, "joist-roll") == Status::no_path);
    CHECK(status_of(review, "anchor-steel-tension") == Status::holds);
    CHECK(status_of(review, "side-head-bearing") == Status::holds);
}

// Mean 178 lb: below the code's 200 lb; the lag screws withdrew from the band, and the post was notched.
TEST_CASE("Lag screws into a single band let go, and a notched 4x4 is refused", "[published]") {
    model::BaseDetail detail = tested_post();
    model::AnchorGroup& group = on_side(detail).anchors.front();
    group.fastener = model::LagScrew{"lag-1/2", 5.0, std::nullopt};
    group.head_plate.reset();
    group.washer = model::Washer{"washer-wide-1/2"};
    const review::Review plain = review_of(detail);
    CHECK(status_of(plain, "anchor-withdrawal") == Status::fails);
    on_side(detail).notch = model::PostNotch{0.5, -0.25};
    detail.framing.rims.front().at_in += 0.5;
    detail.framing.joists->to_in = *detail.framing.joists->to_in + 0.5;
    const review::Review notched = review_of(detail);
    CHECK(notched.verdict == review::Verdict::inadequate);
    CHECK(finds(notched, "notch"));
}

// Hold-downs from the post to a joist carried 500 lb and more.
TEST_CASE("Ties from the post back to a joist take the pull past the band", "[published]") {
    model::BaseDetail detail = tested_post();
    for (model::Joist& joist : detail.framing.joists->members) {
        if (joist.id == "J3") joist.offset_in = 4.0;
    }
    test::add_ties(detail);
    for (model::TensionTie& tie : on_side(detail).ties) tie.x_in = 3.25;
    const review::Review tied = review_of(detail), alone = review_of(tested_post());
    REQUIRE(tied.demand);
    REQUIRE(alone.demand);
    CHECK(tied.demand->states.front().ties_lb.front() > 0.0);
    CHECK(tied.demand->anchors.front().tension_lb < alone.demand->anchors.front().tension_lb);
}
