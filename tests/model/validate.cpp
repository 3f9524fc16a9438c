#include "model/validate.h"

#include "support/problems.h"

#include <limits>

namespace {

using namespace toehold::model;
using toehold::test::tells_at;

Plate sound_plate() {
    Plate plate;
    plate.id = "P1";
    plate.metal = "steel-a36";
    plate.thickness_in = 0.375;
    plate.outline = RectangleOutline{5.0, 7.0, 0.25, {}};
    plate.holes = {{"A", {-1.75, -2.75}, RoundHole{0.4375}}, {"B", {1.75, -2.75}, Slot{1.0, 0.4375, 90.0}}};
    return plate;
}

BaseDetail sound_detail() {
    BaseDetail detail;
    detail.guard.height_in = 42.0;
    detail.post = RectangularTube{2.0, 2.0, 0.125, "steel-a500-b"};
    on_deck(detail).plate = sound_plate();
    on_deck(detail).weld = Weld{0.1875, "e70"};
    on_deck(detail).anchors = {AnchorGroup{{}, LagScrew{"lag-3/8", 6.0, {}}, {}, ""}};
    on_deck(detail).layers.decking = Decking{"wood-southern-pine", 1.0, ""};
    detail.framing.joists = Joists{PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0}, {"J2", 8.0}}};
    Block block;
    block.id = "B1";
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.width_in = 5.5;
    block.depth_in = 1.5;
    block.from_end.joist = "J1";
    block.to_end.joist = "J2";
    detail.framing.blocks = {block};
    return detail;
}

}  // namespace

TEST_CASE("a sound detail has no problems", "[unit]") { CHECK(validate(sound_detail()).empty()); }

TEST_CASE("holes that overlap, cut the edge or lie outside are named", "[bad-input]") {
    Plate plate = sound_plate();
    plate.holes.push_back({"C", {-1.5, -2.75}, RoundHole{0.4375}});
    plate.holes.push_back({"D", {2.4, 0.0}, RoundHole{0.4375}});
    plate.holes.push_back({"E", {9.0, 0.0}, RoundHole{0.4375}});
    const Problems problems = validate(plate);
    CHECK(problems.size() == 3);
    CHECK(tells_at(problems, "plate/hole[C]", "overlaps hole A"));
    CHECK(tells_at(problems, "plate/hole[D]", "cuts the plate's edge"));
    CHECK(tells_at(problems, "plate/hole[E]", "outside the plate"));
}

TEST_CASE("a slot across a notch of the outline is found though both its ends are inside", "[bad-input]") {
    Plate plate = sound_plate();
    plate.outline = PolygonOutline{{{0, 0}, {6, 0}, {6, 4}, {4, 4}, {4, 1}, {2, 1}, {2, 4}, {0, 4}}};
    plate.holes = {{"A", {3.0, 2.5}, Slot{4.5, 0.25, 0.0}}};
    CHECK(tells_at(validate(plate), "plate/slot[A]", "cuts the plate's edge"));
}

TEST_CASE("numbers out of range, NaN among them, are refused one by one", "[bad-input]") {
    BaseDetail detail = sound_detail();
    detail.guard.height_in = -36.0;
    on_deck(detail).plate.thickness_in = std::numeric_limits<double>::quiet_NaN();
    std::get<RectangularTube>(detail.post).wall_in = 1.5;
    detail.basis.load_duration = 2.0;
    const Problems problems = validate(detail);
    CHECK(problems.size() == 4);
    CHECK(tells_at(problems, "guard", "height"));
    CHECK(tells_at(problems, "plate", "thickness"));
    CHECK(tells_at(problems, "post", "wall"));
    CHECK(tells_at(problems, "basis", "load duration"));
}

TEST_CASE("an outline that crosses itself or encloses nothing is refused", "[bad-input]") {
    Plate plate = sound_plate();
    plate.outline = PolygonOutline{{{-3, -3}, {3, 3}, {3, -3}, {-3, 3}}};
    CHECK(tells_at(validate(plate), "plate/polygon", "crosses"));
    plate.outline = PolygonOutline{{{0, 0}, {1, 1}}};
    CHECK(tells_at(validate(plate), "plate/polygon", "number of corners"));
}

TEST_CASE("anchors must have holes, and holes one anchor", "[bad-input]") {
    BaseDetail detail = sound_detail();
    on_deck(detail).anchors = {AnchorGroup{{"A", "Z"}, LagScrew{"lag-3/8", 6.0, {}}, {}, ""},
                               AnchorGroup{{"A"}, LagScrew{"lag-3/8", 6.0, {}}, {}, ""}};
    const Problems problems = validate(detail);
    CHECK(tells_at(problems, "anchors[1]", "without a hole"));
    CHECK(tells_at(problems, "anchors[2]", "two anchors in one hole"));
    on_deck(detail).anchors.clear();
    CHECK(tells_at(validate(detail), "anchors", "no anchors"));
}

TEST_CASE("a block that no joist holds is refused", "[bad-input]") {
    BaseDetail detail = sound_detail();
    detail.framing.blocks[0].from_end.joist = "J9";
    detail.framing.blocks[0].to_in = 5.0;
    Problems problems = validate(detail);
    CHECK(tells_at(problems, "framing/block[B1]/end[from]", "no joist, rim or block has this id"));
    CHECK(tells_at(problems, "framing/block[B1]/end[to]", "does not hold the block"));
    detail = sound_detail();
    detail.framing.blocks[0].from_end.joist.clear();
    detail.framing.blocks[0].to_end.joist.clear();
    CHECK(tells_at(validate(detail), "framing/block[B1]", "no joist holds this block"));
}

TEST_CASE("blocks that overlap in plan are refused, blocks side by side are not", "[bad-input]") {
    BaseDetail detail = sound_detail();
    Block second = detail.framing.blocks[0];
    second.id = "B2";
    second.across_in = 5.5;
    detail.framing.blocks.push_back(second);
    CHECK(validate(detail).empty());
    detail.framing.blocks[1].across_in = 5.0;
    CHECK(tells_at(validate(detail), "framing/block[B2]", "overlaps block B1"));
}

TEST_CASE("a post whose foot hangs over the plate is refused", "[bad-input]") {
    BaseDetail detail = sound_detail();
    on_deck(detail).plate.outline = RectangleOutline{5.0, 7.0, 0.0, {3.0, 0.0}};
    on_deck(detail).plate.holes = {{"A", {3.0, -2.75}, RoundHole{0.4375}}};
    CHECK(tells_at(validate(detail), "post", "hangs over"));
}

TEST_CASE("a sentence names file, line, element, what was found and what is accepted", "[unit]") {
    const Problem problem{"post.xml",
                          12,
                          "guard",
                          toehold::format::verbatim("42"),
                          toehold::format::phrase("a length with its unit"),
                          toehold::format::phrase("the height has no unit")};
    CHECK(sentence(problem) ==
          "post.xml:12: guard: the height has no unit (found \"42\"; accepted: a length with its unit)");
}

TEST_CASE("welds that cannot be are named", "[bad-input]") {
    BaseDetail detail = sound_detail();
    Weld& weld = on_deck(detail).weld.value();
    weld.sides = {true, false, false, false};
    CHECK(tells_at(validate(detail), "weld", "fewer than two sides"));
    weld.sides = {true, true, false, false};
    CHECK(validate(detail).empty());
    detail.post = RoundTube{2.0, 0.125, "steel-a500-b-round"};
    CHECK(tells_at(validate(detail), "weld", "a round foot has no sides"));
    weld.sides = {};
    weld.kind = WeldKind::partial_penetration;
    CHECK(tells_at(validate(detail), "weld", "throat"));
    weld.throat_in = 0.1;
    weld.leg_in = 0.0;
    CHECK(validate(detail).empty());
    weld.kind = WeldKind::fillet;
    CHECK(tells_at(validate(detail), "weld", "leg"));
    weld.leg_in = 0.125;
    weld.gussets = Gussets{{false, false, false, false}, 2.0, 1.0, 0.25, 0.0};
    CHECK(tells_at(validate(detail), "weld/gussets", "on no side"));
    CHECK(tells_at(validate(detail), "weld/gussets", "leg"));
}
