// Regions of a light detail, where hand or code says how far they reach.
#include "study/region.h"

#include "model/base_detail.h"
#include "study/light_detail.h"
#include "support/compare.h"

using namespace toehold;

namespace {

const catalog::Resolved& light() {
    static const catalog::Resolved resolved = test::light_resolved();
    return resolved;
}

study::Subject subject() { return {light(), test::shipped_catalog()}; }

/// The guard's height as if it were dragged.
study::Reach height_reach() {
    study::Reach reach;
    reach.id = "height";
    reach.plane = false;
    reach.now = {42.0, 0.0};
    reach.x = {30.0, 66.0};
    reach.finest_in = 0.25;
    reach.set = [](model::BaseDetail detail, model::Position at) -> study::Made {
        detail.guard.height_in = at.x_in;
        return {std::move(detail), {}};
    };
    return reach;
}

}  // namespace

TEST_CASE("The region of a guard's height ends at the code's least and where a ratio reaches 1", "[published]") {
    // IRC 2021 R312.1.2: guards of a dwelling at least 36 in high.
    std::vector<study::Region> told;
    study::RegionRun run;
    run.better = [&told](const study::Region& region) { told.push_back(region); };
    const study::Region region = study::find_region(subject(), height_reach(), run);
    CHECK_FALSE(region.provisional);
    REQUIRE(region.holds.size() == 1);
    REQUIRE(region.border.size() == 2);
    CHECK_CLOSE(region.holds[0][0].x_in, 36.0, 0.0, 0.25);
    CHECK(region.border[0].limit.id == "guard-height");
    model::BaseDetail highest = light().detail;
    highest.guard.height_in = region.holds[0][1].x_in;
    const study::Judged there = study::judge(test::resolved_by_shipped(highest));
    CHECK_CLOSE(*there.ratio(), 1.0, 0.005, 0.0);
    CHECK(region.border[1].limit.id == there.limit.id);
    // A first answer before the last, and provisional.
    REQUIRE(told.size() >= 2);
    CHECK(told.front().provisional);
    CHECK(told.front().holds.empty());  // nothing is confirmed so soon
    CHECK_FALSE(told.front().likely.empty());
    CHECK(region.likely.empty());
    CHECK_FALSE(told.back().provisional);
    CHECK(region.confirmed < region.probed);
}

TEST_CASE("A region that is stopped is provisional, and costs no more", "[property]") {
    study::RegionRun run;
    run.stop = [] { return true; };
    const study::Region region = study::find_region(subject(), height_reach(), run);
    CHECK(region.stopped);
    CHECK(region.provisional);
    CHECK(region.probed == 0);
    CHECK(region.holds.empty());
}

TEST_CASE("A search that is stopped goes on where it was, for the same detail wherever the thing stands",
          "[property]") {
    study::RegionSearch search(light(), test::shipped_catalog(), height_reach());
    int asked = 0;
    study::RegionRun some;
    some.stop = [&asked] { return ++asked > 6; };
    const study::Region begun = search.go_on(some);
    CHECK(begun.stopped);
    CHECK(begun.probed > 0);

    model::BaseDetail moved = light().detail;
    moved.guard.height_in = 40.0;
    CHECK(search.is_of(moved));
    moved.guard.tributary_length_in = 50.0;
    CHECK_FALSE(search.is_of(moved));

    const study::Region whole = study::find_region(subject(), height_reach());
    const study::Region gone_on = search.go_on();
    CHECK_FALSE(gone_on.stopped);
    CHECK(gone_on.holds == whole.holds);
    CHECK(gone_on.probed == whole.probed);  // none twice
    CHECK(gone_on.confirmed == whole.confirmed);
}

TEST_CASE("What can be dragged stands where it is, and what cannot be is absent", "[property]") {
    const auto anchor = study::anchor_reach(subject(), "A");
    REQUIRE(anchor);
    CHECK(anchor->now == model::Position{-3.75, -3.75});
    CHECK(anchor->x.least == -4.75);
    const study::Made moved = anchor->set(light().detail, {-3.0, -3.5});
    REQUIRE(moved.detail);
    CHECK(on_deck(*moved.detail).plate.holes.front().center == model::Position{-3.0, -3.5});
    const auto edge = study::edge_reach(subject(), study::EdgeSide::left);
    REQUIRE(edge);
    CHECK(edge->now.x_in == -4.75);
    const study::Made wider = edge->set(light().detail, {-5.75, 0.0});
    const auto& outline = std::get<model::RectangleOutline>(on_deck(*wider.detail).plate.outline);
    CHECK(outline.width_in == 10.5);
    CHECK(outline.center.x_in == -0.5);
    CHECK_FALSE(edge->set(light().detail, {4.75, 0.0}).detail);
    const auto block = study::block_reach(subject(), "B1");
    REQUIRE(block);
    CHECK(block->along == model::PlanAxis::y);
    CHECK(block->set(light().detail, {-3.0, 0.0}).detail->framing.blocks.front().across_in == -3.0);
    const auto length = study::length_reach(subject(), 0);
    REQUIRE(length);
    CHECK(length->now.x_in == 8.0);
    CHECK_FALSE(study::anchor_reach(subject(), "nothing"));
    CHECK_FALSE(study::block_reach(subject(), "nothing"));
    CHECK_FALSE(study::length_reach(subject(), 7));
}

TEST_CASE("A screw's length ends where its tip would leave the block", "[closed-form]") {
    // Lag screws 8 in long through a 5/8 in plate, its washer and 1 in boards into blocks 7 1/4 in deep: all of the
    // length region holds at least where it stands, and an end it has is not below a length that holds.
    const auto length = study::length_reach(subject(), 0);
    study::RegionRun run;
    run.jobs = 2;
    const study::Region region = study::find_region(subject(), *length, run);
    REQUIRE_FALSE(region.holds.empty());
    const bool now_within = std::any_of(region.holds.begin(), region.holds.end(), [](const study::Polygon& piece) {
        return piece[0].x_in <= 8.0 && piece[1].x_in >= 8.0;
    });
    CHECK(now_within);
    CHECK(region.holds.front()[0].x_in > 4.0);
}
