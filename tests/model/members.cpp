// Blocks, joists and rims as one list, and where a point lands in it. Places worked by hand.
#include "model/member.h"

#include "model/placement.h"
#include "support/compare.h"

#include <stdexcept>

namespace {

using namespace toehold::model;

/// Joists along y at -8 and 8 in, the second doubled; a rim beyond their upper end; a tripled block between them.
Framing framing() {
    Framing result;
    result.joists = Joists{PlanAxis::y, 1.5, 9.25, "hem-fir", "no-2", {{"J1", -8.0, 1}, {"J2", 8.0, 2}}, -120.0, 12.0};
    Rim rim;
    rim.id = "R1";
    rim.at_in = 12.75;
    rim.from_in = -20.0;
    rim.to_in = 20.0;
    rim.width_in = 1.5;
    rim.depth_in = 11.25;
    rim.species = "southern-pine";
    result.rims = {rim};
    Block block;
    block.id = "B1";
    block.from_in = -7.25;
    block.to_in = 6.5;
    block.across_in = 3.0;
    block.width_in = 1.5;
    block.depth_in = 7.25;
    block.plies = 3;
    result.blocks = {block};
    return result;
}

}  // namespace

TEST_CASE("members are the blocks, then the joists, then the rims", "[unit]") {
    const std::vector<Member> all = members(framing());
    REQUIRE(all.size() == 4);
    CHECK(key(part_of(all[0])) == "block B1");
    CHECK(key(part_of(all[1])) == "joist J1");
    CHECK(key(part_of(all[2])) == "joist J2");
    CHECK(key(part_of(all[3])) == "rim R1");
    CHECK(all[2].index == 1);
    CHECK(member(framing(), 3).depth_in == 11.25);
    CHECK_THROWS_AS(member(framing(), 4), std::out_of_range);
}

TEST_CASE("a member's width is of all its pieces, each as wide as the file says", "[unit]") {
    const std::vector<Member> all = members(framing());
    CHECK(all[0].width_in == 4.5);
    CHECK(ply_width_in(all[0]) == 1.5);
    CHECK(all[1].width_in == 1.5);
    CHECK(all[2].width_in == 3.0);
    CHECK(ply_width_in(all[2]) == 1.5);
}

TEST_CASE("joists share their section and ends, a rim runs across them", "[unit]") {
    const std::vector<Member> all = members(framing());
    CHECK(all[2].along == PlanAxis::y);
    CHECK(length_in(all[2]) == 132.0);
    CHECK(all[2].length_stated);
    CHECK(all[2].species == "hem-fir");
    CHECK(all[3].along == PlanAxis::x);
    CHECK(length_in(all[3]) == 40.0);
    CHECK(all[3].across_in == 12.75);
    CHECK(all[3].species == "southern-pine");
}

TEST_CASE("joists without described ends run on beyond any plate, and say so", "[unit]") {
    Framing open = framing();
    open.joists->from_in.reset();
    const Member joist = members(open)[1];
    CHECK_FALSE(joist.length_stated);
    CHECK(joist.from_in == -beyond_any_plate_in);
    CHECK(members(Framing{}).empty());
}

TEST_CASE("a member is found by its id, whatever its kind", "[unit]") {
    CHECK(find_member(framing(), "B1") == 0U);
    CHECK(find_member(framing(), "J2") == 2U);
    CHECK(find_member(framing(), "R1") == 3U);
    CHECK_FALSE(find_member(framing(), "S1"));
    CHECK_FALSE(find_member(framing(), ""));
}

TEST_CASE("an anchor's edge distance is to the seam of its piece, not to the member's edge", "[unit]") {
    // J2 is 3 in wide, from 6.5 to 9.5 in, with its seam at 8 in.
    struct Row {
        double x_in, edge_in;
    };
    for (const Row& row : {Row{7.25, 0.75}, Row{7.75, 0.25}, Row{8.25, 0.25}, Row{9.25, 0.25}, Row{9.0, 0.5}}) {
        const auto seat = toehold::model::seat(framing(), {row.x_in, 0.0});
        INFO("x " << row.x_in);
        REQUIRE(seat);
        CHECK(seat->member == 2);
        CHECK_CLOSE(seat->edge_in, row.edge_in, 1e-12, 0.0);
        CHECK_CLOSE(seat->end_in, 12.0, 1e-12, 0.0);
    }
    // The block's pieces meet at 2.25 and 3.75 in.
    const auto middle = toehold::model::seat(framing(), {0.0, 3.5});
    REQUIRE(middle);
    CHECK(middle->member == 0);
    CHECK_CLOSE(middle->edge_in, 0.25, 1e-12, 0.0);
    CHECK_CLOSE(middle->end_in, 6.5, 1e-12, 0.0);
}

TEST_CASE("anchors may land in joists and rims, and on a seam have no edge distance at all", "[unit]") {
    const auto on_rim = toehold::model::seat(framing(), {0.0, 12.5});
    REQUIRE(on_rim);
    CHECK(on_rim->member == 3);
    CHECK_CLOSE(on_rim->edge_in, 0.5, 1e-12, 0.0);
    CHECK_CLOSE(on_rim->end_in, 20.0, 1e-12, 0.0);
    const auto on_seam = toehold::model::seat(framing(), {8.0, 0.0});
    REQUIRE(on_seam);
    CHECK_CLOSE(on_seam->edge_in, 0.0, 0.0, 1e-12);
    CHECK_FALSE(toehold::model::seat(framing(), {0.0, -3.0}));
}

TEST_CASE("an end meets the near face of what runs across it, within a quarter inch", "[unit]") {
    const std::vector<Member> all = members(framing());
    const Member &block = all[0], &left = all[1], &doubled = all[2], &rim = all[3];
    CHECK(meets(block, -7.25, false, left));
    CHECK(meets(block, 6.5, true, doubled));  // the doubled joist's near face
    CHECK(meets(block, 6.25, true, doubled));
    CHECK(meets(block, 6.75, true, doubled));
    CHECK_FALSE(meets(block, 6.2, true, doubled));
    CHECK_FALSE(meets(block, 7.25, true, doubled));  // where a single joist's face would be
    CHECK_FALSE(meets(block, 6.5, false, doubled));  // its far side
    CHECK(meets(left, 12.0, true, rim));
    CHECK_FALSE(meets(left, -120.0, false, rim));
    CHECK_FALSE(meets(block, 6.5, true, block));  // runs along it
}

TEST_CASE("an end beside the holder's own end meets nothing", "[unit]") {
    std::vector<Member> all = members(framing());
    Member& rim = all[3];
    rim.to_in = 7.75;  // just short of joist J2's centre line
    CHECK(meets(all[2], 12.0, true, rim));
    rim.to_in = 7.7;
    CHECK_FALSE(meets(all[2], 12.0, true, rim));
}
