// Edits of holes against places worked by hand.
#include "editing/edits.h"
#include "editing/samples.h"
#include "support/compare.h"
#include "support/parts.h"

#include <cmath>
#include <limits>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Edit;

namespace {

/// Hole A of the square base alone, with a group that names it.
model::BaseDetail one_hole(double x_in, double y_in) {
    model::BaseDetail detail = test::square_base();
    on_deck(detail).plate.holes = {{"A", {x_in, y_in}, model::RoundHole{0.5}}};
    on_deck(detail).anchors[0].holes = {"A"};
    return detail;
}

const model::Hole& hole(const model::BaseDetail& detail, const std::string& id) {
    for (const model::Hole& one : on_deck(detail).plate.holes) {
        if (one.id == id) return one;
    }
    throw std::runtime_error("no hole " + id);
}

void check_place(const model::Hole& hole, double x_in, double y_in) {
    INFO("hole " << hole.id);
    CHECK_CLOSE(hole.center.x_in, x_in, 0.0, 1e-12);
    CHECK_CLOSE(hole.center.y_in, y_in, 0.0, 1e-12);
}

}  // namespace

TEST_CASE("a new hole takes the first free letter, and shape and anchor of the nearest", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).plate.holes[1].id = "E";
    on_deck(base).plate.holes[2].shape = model::Slot{1.5, 0.5, 30.0};
    on_deck(base).anchors.push_back(on_deck(base).anchors[0]);
    on_deck(base).anchors[0].holes = {"A", "E", "D"};
    on_deck(base).anchors[1].holes = {"C"};
    const Edit edit = editing::add_hole(base, {3.0, 3.0});
    CHECK(format::english(edit.step) == "Add hole B");
    CHECK(edit.selected == std::vector<model::PartId>{parts::anchor("B")});
    CHECK(hole(edit.detail, "B").shape == on_deck(base).plate.holes[2].shape);
    CHECK(on_deck(edit.detail).anchors[1].holes == std::vector<std::string>{"C", "B"});
    CHECK(on_deck(edit.detail).anchors[0].holes == on_deck(base).anchors[0].holes);
}

TEST_CASE("letters go on past Z", "[unit]") {
    model::BaseDetail base = test::square_base();
    for (int count = 4; count < 28; ++count) base = editing::add_hole(base, {0.0, 0.1 * count}).detail;
    CHECK(on_deck(base).plate.holes[25].id == "Z");
    CHECK(on_deck(base).plate.holes[26].id == "AA");
    CHECK(on_deck(base).plate.holes[27].id == "AB");
}

TEST_CASE("a plate takes a hundred holes and no more", "[bad-input]") {
    model::BaseDetail base = test::square_base();
    while (on_deck(base).plate.holes.size() < 100) base = editing::add_hole(base, {0.0, 0.0}).detail;
    const Edit edit = editing::add_hole(base, {0.0, 0.0});
    CHECK(edit.step.empty());
    CHECK_FALSE(edit.refusal.empty());
    CHECK(edit.detail == base);
    CHECK_FALSE(editing::duplicate(base, {parts::anchor("A")}, {1.0, 0.0}).refusal.empty());
    CHECK_FALSE(editing::array(base, {parts::anchor("A")}, 2, 1, 1.0, 1.0).refusal.empty());
}

TEST_CASE("an array has columns and rows from its original", "[unit]") {
    const Edit edit = editing::array(one_hole(-3.0, 1.0), {parts::anchor("A")}, 3, 2, 2.5, -1.5);
    REQUIRE(on_deck(edit.detail).plate.holes.size() == 6);
    check_place(hole(edit.detail, "A"), -3.0, 1.0);
    check_place(hole(edit.detail, "B"), -0.5, 1.0);
    check_place(hole(edit.detail, "C"), 2.0, 1.0);
    check_place(hole(edit.detail, "D"), -3.0, -0.5);
    check_place(hole(edit.detail, "E"), -0.5, -0.5);
    check_place(hole(edit.detail, "F"), 2.0, -0.5);
    CHECK(on_deck(edit.detail).anchors[0].holes == std::vector<std::string>{"A", "B", "C", "D", "E", "F"});
    CHECK(edit.selected.size() == 6);
    CHECK(format::english(edit.step) == "Array hole A");
}

TEST_CASE("an array leaves out what is there, and refuses what is none", "[unit]") {
    const model::BaseDetail base = test::square_base();
    // 2 x 1 at 8 in from A falls on B.
    CHECK_FALSE(editing::array(base, {parts::anchor("A")}, 2, 1, 8.0, 8.0).refusal.empty());
    CHECK_FALSE(editing::array(base, {parts::anchor("A")}, 0, 1, 8.0, 8.0).refusal.empty());
    CHECK_FALSE(editing::array(base, {parts::anchor("A")}, 2, 1, 0.0, 8.0).refusal.empty());
    CHECK_FALSE(editing::array(base, {parts::plate}, 2, 2, 1.0, 1.0).refusal.empty());
    CHECK_FALSE(editing::array(base, {parts::anchor("A")}, 2000000000, 2000000000, 1.0, 1.0).refusal.empty());
}

TEST_CASE("a round array lies on the circle of its original", "[closed-form]") {
    // Radius 5 at atan2(4, 3); six in all, 60 degrees apart.
    const Edit edit = editing::array_round(one_hole(3.0, 4.0), {parts::anchor("A")}, 6);
    REQUIRE(on_deck(edit.detail).plate.holes.size() == 6);
    for (const model::Hole& one : on_deck(edit.detail).plate.holes)
        CHECK_CLOSE(std::hypot(one.center.x_in, one.center.y_in), 5.0, 0.0, 1e-12);
    // A quarter-turn's neighbours by cos 60 = 1/2, sin 60 = sqrt 3 / 2; the fourth is opposite.
    check_place(hole(edit.detail, "B"), 1.5 - 2.0 * std::sqrt(3.0), 2.0 + 1.5 * std::sqrt(3.0));
    check_place(hole(edit.detail, "D"), -3.0, -4.0);
}

TEST_CASE("a slot turns with its round array", "[unit]") {
    model::BaseDetail base = one_hole(3.0, 0.0);
    on_deck(base).plate.holes[0].shape = model::Slot{1.5, 0.5, 10.0};
    const Edit edit = editing::array_round(base, {parts::anchor("A")}, 4);
    CHECK_CLOSE(std::get<model::Slot>(hole(edit.detail, "B").shape).angle_deg, 100.0, 0.0, 1e-9);
    check_place(hole(edit.detail, "B"), 0.0, 3.0);
}

TEST_CASE("a hole on the post's axis has no round array", "[bad-input]") {
    CHECK_FALSE(editing::array_round(one_hole(0.0, 0.0), {parts::anchor("A")}, 4).refusal.empty());
    CHECK_FALSE(editing::array_round(one_hole(1.0, 0.0), {parts::anchor("A")}, 1).refusal.empty());
}

TEST_CASE("a mirror image of holes and slots", "[unit]") {
    model::BaseDetail base = one_hole(3.0, 1.0);
    on_deck(base).plate.holes[0].shape = model::Slot{1.5, 0.5, 30.0};
    const Edit left = editing::mirror(base, {parts::anchor("A")}, editing::MirrorLine::y_axis, true);
    check_place(hole(left.detail, "B"), -3.0, 1.0);
    CHECK(std::get<model::Slot>(hole(left.detail, "B").shape).angle_deg == 150.0);
    CHECK(on_deck(left.detail).anchors[0].holes == std::vector<std::string>{"A", "B"});
    const Edit below = editing::mirror(base, {parts::anchor("A")}, editing::MirrorLine::x_axis, false);
    REQUIRE(on_deck(below.detail).plate.holes.size() == 1);
    check_place(hole(below.detail, "A"), 3.0, -1.0);
    CHECK(std::get<model::Slot>(hole(below.detail, "A").shape).angle_deg == -30.0);
}

TEST_CASE("an image that falls on a hole is not made", "[unit]") {
    const model::BaseDetail base = test::square_base();
    CHECK_FALSE(editing::mirror(base, {parts::anchor("A")}, editing::MirrorLine::y_axis, true).refusal.empty());
    const model::BaseDetail on_the_line = one_hole(0.0, 2.0);
    CHECK_FALSE(editing::mirror(on_the_line, {parts::anchor("A")}, editing::MirrorLine::y_axis, true).refusal.empty());
}

TEST_CASE("mirrored twice is as before, on every demo detail", "[property]") {
    for (const model::BaseDetail& detail : test::demo_details()) {
        std::vector<model::PartId> parts;
        for (const model::Hole& one : on_deck(detail).plate.holes) parts.push_back(parts::anchor(one.id));
        for (const model::Block& block : detail.framing.blocks) parts.push_back(parts::block(block.id));
        for (const auto line : {editing::MirrorLine::x_axis, editing::MirrorLine::y_axis}) {
            INFO(detail.name);
            const Edit once = editing::mirror(detail, parts, line, false);
            const Edit twice = editing::mirror(once.detail, parts, line, false);
            CHECK(on_deck(twice.detail).plate == on_deck(detail).plate);
            REQUIRE(twice.detail.framing.blocks.size() == detail.framing.blocks.size());
            for (std::size_t index = 0; index < detail.framing.blocks.size(); ++index) {
                CHECK(twice.detail.framing.blocks[index].from_in == detail.framing.blocks[index].from_in);
                CHECK(twice.detail.framing.blocks[index].across_in == detail.framing.blocks[index].across_in);
            }
        }
    }
}

TEST_CASE("a nudge forth and back is none, and is named for what it moves", "[property]") {
    const model::BaseDetail base = test::square_base();
    const std::vector<model::PartId> parts{parts::anchor("A"), parts::anchor("C"), parts::block("B2")};
    const Edit forth = editing::nudge(base, parts, 0.125, -0.25);
    CHECK(format::english(forth.step) == "Move 3 parts");
    check_place(hole(forth.detail, "A"), -3.875, -4.25);
    check_place(hole(forth.detail, "B"), 4.0, -4.0);
    CHECK(forth.detail.framing.blocks[1].across_in == 3.75);
    CHECK(forth.detail.framing.blocks[1].from_in == -7.25);
    CHECK(editing::nudge(forth.detail, parts, -0.125, 0.25).detail == base);
    CHECK(format::english(editing::nudge(base, {parts::anchor("A")}, 1.0, 0.0).step) == "Move hole A");
}

TEST_CASE("what cannot be moved says so", "[bad-input]") {
    const model::BaseDetail base = test::square_base();
    CHECK_FALSE(editing::nudge(base, {parts::post}, 1.0, 0.0).refusal.empty());
    CHECK_FALSE(editing::nudge(base, {parts::block("B1")}, 1.0, 0.0).refusal.empty());  // along itself
    CHECK_FALSE(
        editing::nudge(base, {parts::anchor("A")}, std::numeric_limits<double>::infinity(), 0.0).refusal.empty());
    CHECK_FALSE(editing::nudge(base, {}, 1.0, 0.0).refusal.empty());
    CHECK_FALSE(editing::place_at(base, parts::post, {0.0, 0.0}).refusal.empty());
    CHECK_FALSE(editing::place_at(base, parts::anchor("Z"), {0.0, 0.0}).refusal.empty());
}

TEST_CASE("a joist that is nudged takes its block ends along", "[unit]") {
    const Edit edit = editing::nudge(test::square_base(), {parts::joist("J1")}, -2.0, 1.0);
    CHECK(edit.detail.framing.joists->members[0].offset_in == -10.0);
    CHECK(edit.detail.framing.blocks[0].from_in == -9.25);
    CHECK(format::english(edit.step) == "Move joist J1");
}

TEST_CASE("typed places", "[unit]") {
    const model::BaseDetail base = test::square_base();
    CHECK(editing::place_of(base, parts::anchor("B")) == model::Position{4.0, -4.0});
    CHECK(editing::place_of(base, parts::block("B1")) == model::Position{0.0, -4.0});
    CHECK(editing::place_of(base, parts::corner(2)) == model::Position{5.0, -5.0});
    CHECK_FALSE(editing::place_of(base, parts::post));
    CHECK_FALSE(editing::place_of(base, parts::corner(5)));
    for (const model::PartId& part : {parts::anchor("B"), parts::block("B1"), parts::corner(2)}) {
        const Edit edit = editing::place_at(base, part, {6.0, -6.5});
        CHECK(editing::place_of(edit.detail, part) == model::Position{6.0, -6.5});
    }
}

TEST_CASE("holes become slots of their width, and slots round holes again", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const Edit slots = editing::to_slot(base, {parts::anchor("A"), parts::anchor("B")}, 1.5, 45.0);
    CHECK(std::get<model::Slot>(on_deck(slots.detail).plate.holes[0].shape) == model::Slot{1.5, 0.5, 45.0});
    CHECK(format::english(slots.step) == "Slot 2 holes");
    CHECK(editing::to_round(slots.detail, {parts::anchor("A"), parts::anchor("B"), parts::anchor("C")}).detail == base);
    CHECK_FALSE(editing::to_slot(base, {parts::anchor("A")}, 0.5, 0.0).refusal.empty());
    CHECK_FALSE(editing::to_round(base, {parts::anchor("A")}).refusal.empty());
}

TEST_CASE("copies of holes and blocks", "[unit]") {
    const Edit edit = editing::duplicate(test::square_base(), {parts::anchor("A"), parts::block("B1")}, {0.5, 0.5});
    check_place(hole(edit.detail, "E"), -3.5, -3.5);
    REQUIRE(edit.detail.framing.blocks.size() == 3);
    // Beside its original, 3 1/2 in wide.
    CHECK(edit.detail.framing.blocks[2].id == "B3");
    CHECK(edit.detail.framing.blocks[2].across_in == -0.5);
    CHECK(edit.detail.framing.blocks[2].to_end.joist == "J2");
    CHECK(edit.selected == std::vector<model::PartId>{parts::anchor("E"), parts::block("B3")});
}

TEST_CASE("a pattern that is copied and pasted comes back beside itself", "[property]") {
    for (const model::BaseDetail& detail : test::demo_details()) {
        std::vector<model::PartId> parts;
        for (const model::Hole& one : on_deck(detail).plate.holes) parts.push_back(parts::anchor(one.id));
        const std::string text = editing::copy_holes(detail, parts);
        const Edit edit = editing::paste_holes(detail, text);
        INFO(detail.name << ": " << format::english(edit.refusal));
        const std::size_t count = on_deck(detail).plate.holes.size();
        REQUIRE(on_deck(edit.detail).plate.holes.size() == 2 * count);
        for (std::size_t index = 0; index < count; ++index) {
            const model::Hole &was = on_deck(detail).plate.holes[index],
                              &copy = on_deck(edit.detail).plate.holes[count + index];
            check_place(copy, was.center.x_in + 0.5, was.center.y_in + 0.5);
            CHECK(copy.shape == was.shape);
        }
        CHECK(test::whats_broken(edit.detail).empty());
    }
}

TEST_CASE("a pattern is pasted where it stood when there is room, with off-plate holes too", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).plate.holes[0].center = {-40.0, 3.0};
    const std::string text = editing::copy_holes(base, {parts::anchor("A"), parts::anchor("B")});
    const Edit edit = editing::paste_holes(one_hole(0.0, 0.0), text);
    REQUIRE(on_deck(edit.detail).plate.holes.size() == 3);
    check_place(hole(edit.detail, "B"), -40.0, 3.0);
    check_place(hole(edit.detail, "C"), 4.0, -4.0);
    CHECK(on_deck(edit.detail).anchors[0].holes == std::vector<std::string>{"A", "B", "C"});
}

TEST_CASE("what is no pattern is not pasted", "[bad-input]") {
    const model::BaseDetail base = test::square_base();
    for (const char* text : {"", "holes", "<plates/>", "<?xml version=\"1.0\"?><base-detail/>"}) {
        const Edit edit = editing::paste_holes(base, text);
        CHECK_FALSE(edit.refusal.empty());
        CHECK(edit.detail == base);
    }
    CHECK(editing::copy_holes(base, {parts::post}).empty());
}
