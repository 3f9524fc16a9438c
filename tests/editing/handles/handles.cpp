// Handles stand where their part is, and a drag makes of the detail what the hand means.
#include "editing/handles.h"

#include "editing/edits.h"
#include "editing/samples.h"
#include "support/compare.h"
#include "support/parts.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

using namespace toehold;
using editing::Handle;
using editing::HandleId;
using editing::HandleKind;
using editing::Moved;
using editing::Sheet;
using editing::SheetPlace;
using editing::SnapRules;
namespace parts = toehold::test::parts;

namespace {

const SnapRules free_hand{false, 0.0, 0.0};
const SheetPlace in_plan{Sheet::plan, {}};
const SheetPlace in_section{Sheet::section, {model::PlanAxis::y, -4.0}};
const SheetPlace in_elevation{Sheet::elevation, {}};

const HandleId radius{HandleKind::radius, parts::plate};
const HandleId plate_thickness{HandleKind::plate_thickness, parts::plate};
const HandleId decking_thickness{HandleKind::decking_thickness, parts::decking};
const HandleId guard_height{HandleKind::guard_height, parts::guard};

HandleId at_hole(const std::string& id) { return {HandleKind::hole, parts::anchor(id)}; }
/// By their numbers, from 1.
HandleId at_corner(std::size_t number) { return {HandleKind::corner, parts::plate, number - 1}; }
HandleId at_side(std::size_t number) { return {HandleKind::side, parts::plate, number - 1}; }

Handle handle(const model::BaseDetail& detail, const SheetPlace& place, const HandleId& id) {
    for (const Handle& one : editing::handles(detail, place)) {
        if (one.id == id) return one;
    }
    FAIL("no handle of " << model::key(id.part));
    return {};
}

Moved dragged(const model::BaseDetail& detail, const SheetPlace& place, const HandleId& id, drawing::Point to,
              const SnapRules& rules = free_hand) {
    return editing::drag(detail, place, handle(detail, place, id), to, rules);
}

const model::RectangleOutline& rectangle(const model::BaseDetail& detail) {
    return std::get<model::RectangleOutline>(on_deck(detail).plate.outline);
}

}  // namespace

TEST_CASE("a hole goes where it is taken, even off the plate", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const Moved moved = dragged(base, in_plan, at_hole("A"), {-7.3, 1.1});
    CHECK(on_deck(moved.detail).plate.holes[0].center == model::Position{-7.3, 1.1});
    CHECK(format::english(moved.step) == "Move hole A");
    CHECK(moved.at == drawing::Point{-7.3, 1.1});
    CHECK(handle(moved.detail, in_plan, at_hole("A")).at == moved.at);
}

TEST_CASE("a corner of a rectangle keeps the opposite corner", "[unit]") {
    const model::BaseDetail base = test::square_base();
    // Corner 3 is (5, 5); corner 1, (-5, -5), stays: 13 x 11 about (1.5, 0.5).
    const Moved moved = dragged(base, in_plan, at_corner(3), {8.0, 6.0});
    CHECK(rectangle(moved.detail) == model::RectangleOutline{13.0, 11.0, 0.0, {1.5, 0.5}});
    CHECK(moved.at == drawing::Point{8.0, 6.0});
    const Moved across = dragged(base, in_plan, at_corner(3), {-20.0, -20.0});
    CHECK(rectangle(across.detail).width_in > 0.0);
    CHECK_CLOSE(rectangle(across.detail).center.x_in - 0.5 * rectangle(across.detail).width_in, -5.0, 0.0, 1e-12);
}

TEST_CASE("a side of a rectangle moves square to itself", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const Moved right = dragged(base, in_plan, at_side(2), {6.0, 3.0});
    CHECK(rectangle(right.detail) == model::RectangleOutline{11.0, 10.0, 0.0, {0.5, 0.0}});
    const Moved heel = dragged(base, in_plan, at_side(1), {3.0, -6.0});
    CHECK(rectangle(heel.detail) == model::RectangleOutline{10.0, 11.0, 0.0, {0.0, -0.5}});
}

TEST_CASE("the corner radius follows the diagonal, from nothing to half the shorter side", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const drawing::Point at = handle(base, in_plan, radius).at;
    CHECK_CLOSE(rectangle(dragged(base, in_plan, radius, {at.x - 1.0, at.y - 1.0}).detail).corner_radius_in, 1.0, 0.0,
                1e-9);
    CHECK(rectangle(dragged(base, in_plan, radius, {-9.0, -9.0}).detail).corner_radius_in == 5.0);
    CHECK(rectangle(dragged(base, in_plan, radius, {9.0, 9.0}).detail).corner_radius_in == 0.0);
}

TEST_CASE("a circle's edge changes its diameter", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).plate.outline = model::CircleOutline{10.0, {1.0, 0.0}};
    const Moved moved = dragged(base, in_plan, radius, {8.0, 0.0});
    CHECK(std::get<model::CircleOutline>(on_deck(moved.detail).plate.outline).diameter_in == 14.0);
    CHECK(format::english(moved.step) == "Change plate diameter");
}

TEST_CASE("a polygon's corner and side move, and stop where no area would be left", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).plate.outline = model::PolygonOutline{{{-5.0, -5.0}, {5.0, -5.0}, {0.0, 5.0}}};
    const Moved corner = dragged(base, in_plan, at_corner(3), {1.0, 6.0});
    CHECK(std::get<model::PolygonOutline>(on_deck(corner.detail).plate.outline).corners[2] ==
          model::Position{1.0, 6.0});
    const Moved flat = dragged(base, in_plan, at_corner(3), {0.0, -5.0});
    // Base 10, so that 1/16 in2 of area is a height of 1/80 in.
    CHECK_CLOSE(std::get<model::PolygonOutline>(on_deck(flat.detail).plate.outline).corners[2].y_in, -5.0 + 1.0 / 80.0,
                0.0, 1e-9);
    const Moved side = dragged(base, in_plan, at_side(1), {3.0, -6.0});
    const auto& corners = std::get<model::PolygonOutline>(on_deck(side.detail).plate.outline).corners;
    CHECK(corners[0] == model::Position{-5.0, -6.0});
    CHECK(corners[1] == model::Position{5.0, -6.0});
}

TEST_CASE("a slot's end turns and lengthens it about its middle", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).plate.holes[0].shape = model::Slot{2.0, 0.5, 0.0};
    CHECK(handle(base, in_plan, HandleId{HandleKind::slot_end, parts::anchor("A"), 0}).at ==
          drawing::Point{-3.0, -4.0});
    const Moved moved = dragged(base, in_plan, HandleId{HandleKind::slot_end, parts::anchor("A"), 0}, {-4.0, -2.5});
    const auto& slot = std::get<model::Slot>(on_deck(moved.detail).plate.holes[0].shape);
    CHECK_CLOSE(slot.length_in, 3.0, 0.0, 1e-9);
    CHECK_CLOSE(slot.angle_deg, 90.0, 0.0, 1e-9);
    const Moved other = dragged(base, in_plan, HandleId{HandleKind::slot_end, parts::anchor("A"), 1}, {-5.0, -5.0});
    CHECK_CLOSE(std::get<model::Slot>(on_deck(other.detail).plate.holes[0].shape).angle_deg, 45.0, 0.0, 1e-9);
    const Moved nothing = dragged(base, in_plan, HandleId{HandleKind::slot_end, parts::anchor("A"), 0}, {-4.0, -4.0});
    CHECK(std::get<model::Slot>(on_deck(nothing.detail).plate.holes[0].shape).length_in > 0.5);
}

TEST_CASE("a block moves across itself and keeps its joists", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const Moved moved = dragged(base, in_plan, HandleId{HandleKind::block, parts::block("B1")}, {3.0, -2.6});
    const model::Block& block = moved.detail.framing.blocks[0];
    CHECK(block.across_in == -2.6);
    CHECK(block.from_in == -7.25);
    CHECK(block.from_end.joist == "J1");
    // A row of holes at y = -4 catches it.
    const Moved caught = dragged(base, in_plan, HandleId{HandleKind::block, parts::block("B1")}, {0.0, -4.05}, {});
    CHECK(caught.detail.framing.blocks[0].across_in == -4.0);
    CHECK(caught.caught.size() == 1);
}

TEST_CASE("a block's end catches the face of the joist it comes to", "[unit]") {
    model::BaseDetail base = test::square_base();
    base.framing.joists->members.push_back({"J3", 16.0});
    const Moved moved = dragged(base, in_plan, HandleId{HandleKind::block_end, parts::block("B1"), 1}, {15.1, 0.0});
    CHECK(moved.detail.framing.blocks[0].to_in == 15.25);
    CHECK(moved.detail.framing.blocks[0].to_end.joist == "J3");
    REQUIRE(moved.caught.size() == 1);
    CHECK(format::english(moved.caught[0].why) == "against J3");
    const Moved away = dragged(base, in_plan, HandleId{HandleKind::block_end, parts::block("B1"), 1}, {12.0, 0.0});
    CHECK(away.detail.framing.blocks[0].to_in == 12.0);
    CHECK(away.detail.framing.blocks[0].to_end.joist == "J2");
    const Moved beyond = dragged(base, in_plan, HandleId{HandleKind::block_end, parts::block("B1"), 1}, {-30.0, 0.0});
    CHECK(beyond.detail.framing.blocks[0].to_in > beyond.detail.framing.blocks[0].from_in);
}

TEST_CASE("a block's end catches a rim and another block as well", "[unit]") {
    model::BaseDetail base = test::square_base();
    model::Block between = base.framing.blocks[0];
    between.id = "B3";
    between.along = model::PlanAxis::y;
    between.from_in = -1.0;
    between.to_in = 1.0;
    between.across_in = 0.0;
    base.framing.blocks.push_back(between);
    const Moved moved = dragged(base, in_plan, HandleId{HandleKind::block_end, parts::block("B3"), 1}, {0.0, 2.1});
    CHECK(moved.detail.framing.blocks[2].to_in == 2.25);  // B2 at 4, 3 1/2 wide
    CHECK(moved.detail.framing.blocks[2].to_end.joist == "B2");
}

TEST_CASE("a joist takes the block ends that stand against it along", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const Moved moved = dragged(base, in_plan, HandleId{HandleKind::joist, parts::joist("J2")}, {12.0, 0.0});
    CHECK(moved.detail.framing.joists->members[1].offset_in == 12.0);
    CHECK(moved.detail.framing.blocks[0].to_in == 11.25);
    CHECK(moved.detail.framing.blocks[1].to_in == 11.25);
    CHECK(moved.at.x == 12.0);
    const Moved through = dragged(base, in_plan, HandleId{HandleKind::joist, parts::joist("J2")}, {-20.0, 0.0});
    CHECK(through.detail.framing.blocks[0].to_in > through.detail.framing.blocks[0].from_in);
}

TEST_CASE("the section has handles on what its plane cuts", "[unit]") {
    const model::BaseDetail base = test::square_base();
    // Along y at x = -4: anchors A (y = -4) and D (y = 4), both blocks in end view. Blocks' tops at z = -1.
    CHECK(handle(base, in_section, HandleId{HandleKind::anchor_tip, parts::anchor("A")}).at ==
          drawing::Point{-4.0, 0.5 - 8.0});
    CHECK(handle(base, in_section, HandleId{HandleKind::anchor_tip, parts::anchor("D")}).at ==
          drawing::Point{4.0, 0.5 - 8.0});
    CHECK(handle(base, in_section, HandleId{HandleKind::block_width, parts::block("B1")}).at ==
          drawing::Point{-5.75, -1.0 - 3.625});
    CHECK(handle(base, in_section, HandleId{HandleKind::block_depth, parts::block("B2")}).at ==
          drawing::Point{4.0, -8.25});
    CHECK(handle(base, in_section, plate_thickness).at == drawing::Point{5.0, 0.5});
    CHECK(handle(base, in_section, decking_thickness).at == drawing::Point{-5.0, -1.0});
    for (const Handle& one : editing::handles(base, in_section))
        CHECK(one.id != HandleId{HandleKind::anchor_tip, parts::anchor("B")});
    // Along x at y = 0 the plane passes between the blocks.
    for (const Handle& one : editing::handles(base, {Sheet::section, {model::PlanAxis::x, 0.0}}))
        CHECK(one.id.kind != editing::HandleKind::block_depth);
}

TEST_CASE("drags in the section", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const model::BaseDetail deeper =
        dragged(base, in_section, HandleId{HandleKind::block_depth, parts::block("B1")}, {-4.0, -10.25}).detail;
    CHECK(deeper.framing.blocks[0].depth_in == 9.25);
    // The other side stays at -2.25.
    const model::BaseDetail wider =
        dragged(base, in_section, HandleId{HandleKind::block_width, parts::block("B1")}, {-7.75, -4.0}).detail;
    CHECK(wider.framing.blocks[0].width_in == 5.5);
    CHECK(wider.framing.blocks[0].across_in == -5.0);
    const model::BaseDetail longer =
        dragged(base, in_section, HandleId{HandleKind::anchor_tip, parts::anchor("A")}, {-4.0, -9.5}).detail;
    CHECK(std::get<model::LagScrew>(on_deck(longer).anchors[0].fastener).length_in == 10.0);
    CHECK(on_deck(dragged(base, in_section, plate_thickness, {5.0, 0.75}).detail).plate.thickness_in == 0.75);
    CHECK(on_deck(dragged(base, in_section, decking_thickness, {0.0, -1.5}).detail).layers.decking->thickness_in ==
          1.5);
    CHECK(on_deck(dragged(base, in_section, plate_thickness, {5.0, -3.0}).detail).plate.thickness_in > 0.0);
    CHECK(
        std::get<model::LagScrew>(
            on_deck(dragged(base, in_section, HandleId{HandleKind::anchor_tip, parts::anchor("A")}, {0.0, 40.0}).detail)
                .anchors[0]
                .fastener)
            .length_in > 0.0);
}

TEST_CASE("a doubled block keeps its plies when a side is moved", "[unit]") {
    model::BaseDetail base = test::square_base();
    base.framing.blocks[0].plies = 2;
    base.framing.blocks[0].width_in = 1.5;  // 3 in altogether, -5.5 to -2.5
    const model::BaseDetail wider =
        dragged(base, in_section, HandleId{HandleKind::block_width, parts::block("B1"), 1}, {-1.5, -4.0}).detail;
    CHECK(wider.framing.blocks[0].width_in == 2.0);
    CHECK(wider.framing.blocks[0].across_in == -3.5);
}

TEST_CASE("the post's face and the guard's top", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).plate_below_surface_in = 2.0;
    CHECK(handle(base, in_elevation, guard_height).at == drawing::Point{0.0, 44.0});
    CHECK(dragged(base, in_elevation, guard_height, {0.0, 38.0}).detail.guard.height_in == 36.0);
    CHECK(dragged(base, in_elevation, guard_height, {0.0, -5.0}).detail.guard.height_in > 0.0);
    const model::BaseDetail wider =
        dragged(base, in_elevation, HandleId{HandleKind::post_width, parts::post, 1}, {1.5, 20.0}).detail;
    CHECK(std::get<model::RectangularTube>(wider.post) == model::RectangularTube{3.0, 3.0, 0.1875, "steel-a500-b"});
    std::get<model::RectangularTube>(base.post).depth_in = 4.0;
    const model::BaseDetail oblong =
        dragged(base, in_plan, HandleId{HandleKind::post_width, parts::post, 0}, {1.5, 0.0}).detail;
    CHECK(std::get<model::RectangularTube>(oblong.post).width_in == 3.0);
    CHECK(std::get<model::RectangularTube>(oblong.post).depth_in == 4.0);
}

TEST_CASE("a plate that was changed is no longer the one its reference names", "[unit]") {
    const model::BaseDetail base = test::demo_detail("heron-landing-lags-in-deep-blocks");
    REQUIRE(on_deck(base).plate_reference);
    CHECK_FALSE(on_deck(dragged(base, in_plan, at_hole("A"), {-3.5, -3.5}).detail).plate_reference);
    CHECK(on_deck(dragged(base, in_plan, HandleId{HandleKind::block, parts::block("B1")}, {0.0, -3.5}).detail)
              .plate_reference);
}

TEST_CASE("handles have ids of their own and stand still when dragged to where they are", "[property]") {
    for (const model::BaseDetail& detail : test::demo_details()) {
        for (const SheetPlace& place : {in_plan, in_section, in_elevation}) {
            std::vector<HandleId> ids;
            for (const Handle& one : editing::handles(detail, place)) {
                INFO(detail.name << ", " << model::key(one.id.part));
                CHECK(std::count(ids.begin(), ids.end(), one.id) == 0);
                ids.push_back(one.id);
                const Moved moved = editing::drag(detail, place, one, one.at, free_hand);
                CHECK_CLOSE(moved.at.x, one.at.x, 0.0, 1e-9);
                CHECK_CLOSE(moved.at.y, one.at.y, 0.0, 1e-9);
                CHECK_FALSE(moved.step.empty());
            }
        }
    }
}

TEST_CASE("a drag to nowhere changes nothing", "[bad-input]") {
    const model::BaseDetail base = test::square_base();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinity = std::numeric_limits<double>::infinity();
    for (const SheetPlace& place : {in_plan, in_section, in_elevation}) {
        for (const Handle& one : editing::handles(base, place)) {
            CHECK(editing::drag(base, place, one, {nan, 0.0}, {}).detail == base);
            CHECK(editing::drag(base, place, one, {0.0, infinity}, {}).detail == base);
        }
    }
}
