// Edits of a post on a member's side: each is made and named, or refused with a sentence.
#include "editing/edits.h"
#include "editing/fields/variants.h"
#include "editing/picked.h"
#include "editing/samples.h"
#include "support/parts.h"

#include <catch2/catch.hpp>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Edit;
using editing::MirrorLine;

namespace {

const std::vector<model::SidePlace>& places(const Edit& edit) { return on_side(edit.detail).places; }
std::string step(const Edit& edit) { return format::english(edit.step); }
std::string refusal(const Edit& edit) { return format::english(edit.refusal); }

/// A above B, to the left of the post's axis.
model::BaseDetail two_to_the_left() {
    model::BaseDetail detail = test::post_on_side();
    on_side(detail).places = {{"A", -1.0, 2.0}, {"B", -1.0, 6.0}};
    return detail;
}

}  // namespace

TEST_CASE("a fastener is added in the group of the nearest", "[unit]") {
    model::BaseDetail detail = two_to_the_left();
    on_side(detail).anchors.push_back(on_side(detail).anchors.front());
    on_side(detail).anchors[0].holes = {"A"};
    on_side(detail).anchors[1].holes = {"B"};
    const Edit edit = editing::add_hole(detail, {1.0, -5.0});
    CHECK(step(edit) == "Add fastener C");
    CHECK(places(edit).back() == model::SidePlace{"C", 1.0, 5.0});
    CHECK(on_side(edit.detail).anchors[1].holes == std::vector<std::string>{"B", "C"});
    CHECK(edit.selected == std::vector{parts::anchor("C")});
}

TEST_CASE("fasteners are moved by a step, by typed coordinates and forth and back", "[unit]") {
    const model::BaseDetail detail = two_to_the_left();
    const Edit down = editing::nudge(detail, {parts::anchor("A")}, model::Place{0.5, 3.0, -0.25});
    CHECK(places(down).front() == model::SidePlace{"A", -0.5, 2.25});
    CHECK(step(down) == "Move fastener A");
    CHECK(editing::nudge(down.detail, {parts::anchor("A")}, model::Place{-0.5, 0.0, 0.25}).detail == detail);
    CHECK(editing::place_of(detail, parts::anchor("B")) == model::Position{-1.0, -6.0});
    const Edit typed = editing::place_at(detail, parts::anchor("B"), {0.0, -7.0});
    CHECK(places(typed).back() == model::SidePlace{"B", 0.0, 7.0});
    // Up and down is nothing to a block, which moves across itself in plan.
    const Edit block = editing::nudge(detail, {parts::block("B3")}, model::Place{0.0, 0.0, 1.0});
    CHECK(refusal(block) == "Blocks and joists move across themselves only.");
    const Edit back = editing::nudge(detail, {parts::block("B3")}, model::Place{0.0, -1.0, 1.0});
    CHECK(back.detail.framing.blocks.back().across_in == detail.framing.blocks.back().across_in - 1.0);
    CHECK_FALSE(refusal(editing::nudge(detail, {parts::post}, 1.0, 0.0)).empty());
}

TEST_CASE("copies stand below, mirror images beside, rows downward", "[unit]") {
    const model::BaseDetail detail = two_to_the_left();
    CHECK(places(editing::duplicate(detail, {parts::anchor("B")}, {1.0, 1.0})).back() ==
          model::SidePlace{"C", -1.0, 7.0});
    const Edit mirrored = editing::mirror(detail, {parts::anchor("A"), parts::anchor("B")}, MirrorLine::y_axis, true);
    CHECK(step(mirrored) == "Mirror 2 fasteners");
    CHECK(places(mirrored)[3] == model::SidePlace{"D", 1.0, 6.0});
    CHECK_FALSE(refusal(editing::mirror(detail, {parts::anchor("A")}, MirrorLine::x_axis, true)).empty());
    const Edit rows = editing::array(detail, {parts::anchor("A")}, 2, 2, 2.0, 1.5);
    REQUIRE(places(rows).size() == 5);
    CHECK(places(rows).back() == model::SidePlace{"E", 1.0, 3.5});
    CHECK_FALSE(refusal(editing::array_round(detail, {parts::anchor("A")}, 4)).empty());
}

TEST_CASE("fasteners, ties and framing are erased, what the post is fastened to is not", "[unit]") {
    model::BaseDetail detail = two_to_the_left();
    on_side(detail).ties = {test::tie_into("B3")};
    on_side(detail).anchors.front().into = "B3";
    const Edit gone = editing::erase(detail, {parts::anchor("A"), {model::PartKind::tie, "T1"}});
    CHECK(step(gone) == "Erase 2 parts");
    CHECK(places(gone).size() == 1);
    CHECK(on_side(gone.detail).ties.empty());
    const Edit block = editing::erase(detail, {parts::block("B3")});
    CHECK(on_side(block.detail).anchors.front().into.empty());
    CHECK(on_side(block.detail).ties.front().into.empty());
    CHECK(refusal(editing::erase(detail, {parts::rim("R1")})) ==
          "The post is fastened to rim R1: fasten it to another member first.");
    CHECK(refusal(editing::erase(detail, {parts::post})) == "Post, guard and push belong to every detail.");
    CHECK_FALSE(refusal(editing::erase(detail, {parts::decking})).empty());
}

TEST_CASE("a tie goes with the bolt that hangs it", "[unit]") {
    model::BaseDetail detail = two_to_the_left();
    on_side(detail).ties = {test::tie_into("J2")};
    on_side(detail).ties.front().bolt = "A";
    const auto tie = [](const Edit& edit) { return on_side(edit.detail).ties.front(); };
    CHECK(tie(editing::place_at(detail, parts::anchor("A"), {0.5, -3.0})).below_top_in == 3.0);
    CHECK(tie(editing::nudge(detail, {parts::anchor("A")}, model::Place{0.5, 0.0, 0.0})).x_in == -0.5);
    CHECK(tie(editing::erase(detail, {parts::anchor("A")})).bolt.empty());
    const model::BaseDetail renamed = test::with(detail, "side/place[A]/id", "U");
    CHECK(on_side(renamed).ties.front().bolt == "U");
    CHECK(on_side(test::with(renamed, "side/place[U]/below-top", "4")).ties.front().below_top_in == 4.0);
}

TEST_CASE("what only a plate has is refused in a sentence, and changes nothing", "[unit]") {
    const model::BaseDetail detail = test::post_on_side();
    const std::vector<model::PartId> both{parts::anchor("A"), parts::anchor("B")};
    const std::string plates = editing::copy_holes(test::square_base(), {parts::anchor("A")});
    for (const Edit& edit :
         {editing::to_slot(detail, both, 1.0, 0.0), editing::to_round(detail, both), editing::to_polygon(detail),
          editing::add_corner(detail, {0.0, -2.0}), editing::add_block(detail, {0.0, -2.0}),
          editing::paste_holes(detail, plates), editing::use_plate(detail, on_deck(test::square_base()).plate),
          editing::place_at(detail, parts::corner(1), {0.0, 0.0})}) {
        CHECK(edit.step.empty());
        CHECK(refusal(edit).ends_with("."));
        CHECK(edit.detail == detail);
    }
    CHECK(editing::copy_holes(detail, both).empty());
    CHECK_FALSE(editing::corners_can_be_freed(detail));
    CHECK_FALSE(editing::hole_at(detail, parts::anchor("A")));
}

TEST_CASE("what is picked on the face, and its distance to the nearest edge", "[unit]") {
    const model::BaseDetail detail = two_to_the_left();
    CHECK(editing::all_anchors(detail) == std::vector{parts::anchor("A"), parts::anchor("B")});
    CHECK(editing::anchors_within(detail, {-2.0, -3.0}, {0.0, 0.0}) == std::vector{parts::anchor("A")});
    // 1 3/4 in of the post to either side of its axis, less 1 in; the member's edge is 2 in away.
    CHECK(editing::edge_distance_in(detail, parts::anchor("A")) == 0.75);
    CHECK(editing::edge_distance_in(test::post_on_side(), parts::anchor("B")) == 1.75);
    CHECK_FALSE(editing::edge_distance_in(detail, parts::post));
}
