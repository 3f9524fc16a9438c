// A post on a member's side, by hand: handles on the face, in the section and in the elevation, and what a drag makes.
#include "editing/edits.h"
#include "editing/hand_tools.h"
#include "editing/handles.h"
#include "editing/reach/reach.h"
#include "editing/samples.h"
#include "model/validate.h"
#include "support/compare.h"
#include "support/parts.h"
#include "support/problems.h"

#include <algorithm>
#include <limits>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Handle;
using editing::HandleId;
using editing::HandleKind;
using editing::Moved;
using editing::Sheet;
using editing::SheetPlace;
using editing::SnapRules;

namespace {

const SnapRules free_hand{false, 0.0, 0.0};
const SheetPlace on_face{Sheet::plan, {}};
const SheetPlace in_section{Sheet::section, {model::PlanAxis::y, 0.0}};
const SheetPlace in_elevation{Sheet::elevation, {}};
const HandleId post_bottom{HandleKind::post_bottom, parts::post};
const HandleId post_depth{HandleKind::post_width, parts::post, 1};

HandleId at(const std::string& id) { return {HandleKind::hole, parts::anchor(id)}; }
HandleId tip_of(const std::string& id) { return {HandleKind::anchor_tip, parts::anchor(id)}; }

std::optional<Handle> find(const model::BaseDetail& detail, const SheetPlace& place, const HandleId& id) {
    for (const Handle& one : editing::handles(detail, place)) {
        if (one.id == id) return one;
    }
    return std::nullopt;
}

Moved dragged(const model::BaseDetail& detail, const SheetPlace& place, const HandleId& id, drawing::Point to,
              const SnapRules& rules = free_hand) {
    const std::optional<Handle> handle = find(detail, place, id);
    REQUIRE(handle);
    return editing::drag(detail, place, *handle, to, rules);
}

const model::SidePlace& place(const model::BaseDetail& detail, const std::string& id) {
    const auto& places = on_side(detail).places;
    const auto found =
        std::find_if(places.begin(), places.end(), [&](const model::SidePlace& one) { return one.id == id; });
    REQUIRE(found != places.end());
    return *found;
}

/// Lag screws 6 in long in place of the bolts.
model::BaseDetail with_lags() {
    model::BaseDetail detail = test::post_on_side();
    on_side(detail).anchors.front().fastener = model::LagScrew{"lag-1/2", 6.0, std::nullopt};
    return detail;
}

}  // namespace

TEST_CASE("a fastener goes where it is taken on the face, x right and z up", "[unit]") {
    const Moved moved = dragged(test::post_on_side(), on_face, at("A"), {0.75, -3.3});
    CHECK(place(moved.detail, "A") == model::SidePlace{"A", 0.75, 3.3});
    CHECK(moved.at == drawing::Point{0.75, -3.3});
    CHECK(format::english(moved.step) == "Move fastener A");
}

TEST_CASE("nothing is fastened above the member's top edge", "[unit]") {
    const Moved moved = dragged(test::post_on_side(), on_face, at("A"), {0.0, 5.0});
    CHECK(place(moved.detail, "A").below_top_in == 1.0 / 16.0);
    CHECK(moved.at.y == -1.0 / 16.0);
    for (const double x : {std::numeric_limits<double>::infinity(), 1e300})
        CHECK(test::whats_broken(dragged(test::post_on_side(), on_face, at("A"), {x, x}).detail).empty());
}

TEST_CASE("a fastener catches on the post's axis, on another and on its distance from the bottom edge", "[unit]") {
    const SnapRules rules{true, 0.125, 0.1};
    model::BaseDetail detail = test::post_on_side();
    on_side(detail).places = {{"A", -1.0, 2.0}, {"B", 0.5, 6.0}};
    const Moved axis = dragged(detail, on_face, at("B"), {0.06, -5.06}, rules);
    CHECK(place(axis.detail, "B") == model::SidePlace{"B", 0.0, 5.0});
    REQUIRE(axis.caught.size() == 1);
    CHECK(format::english(axis.caught.front().why) == "post's axis");
    // The mirror of A, and as far from the bottom of a 9 1/4 in member as A is from the top: 7 1/4 in below the top.
    const Moved mirror = dragged(detail, on_face, at("B"), {1.04, -7.2}, rules);
    CHECK(place(mirror.detail, "B") == model::SidePlace{"B", 1.0, 7.25});
    REQUIRE(mirror.caught.size() == 2);
    CHECK(format::english(mirror.caught.back().why) == "2 in from the bottom edge");
    const Moved row = dragged(detail, on_face, at("B"), {0.5, -2.05}, rules);
    CHECK(place(row.detail, "B").below_top_in == 2.0);
    const editing::Snapped fresh = editing::snap({-0.97, -4.0}, detail, rules);
    CHECK(fresh.at == drawing::Point{-1.0, -4.0});
}

TEST_CASE("the post's lower end is taken on the face and in the section", "[unit]") {
    for (const SheetPlace& sheet : {on_face, in_section}) {
        const Moved moved = dragged(test::post_on_side(), sheet, post_bottom, {3.0, -11.0});
        CHECK(on_side(moved.detail).post_bottom_below_top_in == 11.0);
        CHECK(format::english(moved.step) == "Move the post's lower end");
        CHECK(on_side(dragged(test::post_on_side(), sheet, post_bottom, {0.0, 4.0}).detail).post_bottom_below_top_in >
              0.0);
    }
}

TEST_CASE("in the section a fastener moves up and down, and its length ends at its tip", "[unit]") {
    const model::BaseDetail lags = with_lags();
    // Outside: driven inward from the post's far face at y = 1.75.
    CHECK(find(lags, in_section, tip_of("A"))->at == drawing::Point{-4.25, -2.0});
    const Moved longer = dragged(lags, in_section, tip_of("A"), {-6.25, 9.0});
    CHECK(std::get<model::LagScrew>(on_side(longer.detail).anchors.front().fastener).length_in == 8.0);
    CHECK(longer.at == drawing::Point{-6.25, -2.0});
    const Moved lower = dragged(lags, in_section, at("A"), {7.0, -3.0});
    CHECK(place(lower.detail, "A") == model::SidePlace{"A", 0.0, 3.0});
    CHECK(lower.at == drawing::Point{1.75, -3.0});
    // A bolt as long as it must be has no tip to take, one of a stated length has.
    model::BaseDetail bolts = test::post_on_side();
    CHECK_FALSE(find(bolts, in_section, tip_of("A")));
    std::get<model::ThroughBolt>(on_side(bolts).anchors.front().fastener).length_in = 9.0;
    const Moved shorter = dragged(bolts, in_section, tip_of("B"), {-6.25, 0.0});
    CHECK(std::get<model::ThroughBolt>(on_side(shorter.detail).anchors.front().fastener).length_in == 8.0);
}

TEST_CASE("inside the deck fasteners are driven outward, through a bracket from its own face", "[unit]") {
    model::BaseDetail inside = with_lags();
    on_side(inside).face = model::MemberFace::inside;
    CHECK(find(inside, in_section, tip_of("A"))->at == drawing::Point{4.25, -2.0});
    model::BaseDetail bracket = test::tube_on_side();
    on_side(bracket).anchors.front().fastener = model::LagScrew{"lag-1/2", 3.0, std::nullopt};
    // A 2 in tube: its face at -1, on which the bracket plate lies.
    CHECK(find(bracket, in_section, tip_of("A"))->at == drawing::Point{-4.0, -2.0});
}

TEST_CASE("a post made deeper by hand keeps the member against it", "[unit]") {
    const Moved moved = dragged(test::post_on_side(), in_elevation, post_depth, {2.75, 10.0});
    CHECK(std::get<model::WoodPost>(moved.detail.post).depth_in == 5.5);
    CHECK_FALSE(model::is_described(std::get<model::WoodPost>(moved.detail.post).shoe));
    INFO(test::sentences(model::validate(moved.detail)));
    CHECK(model::validate(moved.detail).empty());
    CHECK(moved.detail.framing.rims.front().at_in == -4.25);
}

TEST_CASE("framing has no handle on the face, and no region is looked over there", "[unit]") {
    const model::BaseDetail detail = test::post_on_side();
    for (const Handle& handle : editing::handles(detail, on_face)) {
        CHECK(handle.id.part.kind != model::PartKind::block);
        CHECK(handle.id.part.kind != model::PartKind::joist);
        CHECK_FALSE(editing::dragged_by(detail, handle));
    }
    CHECK_FALSE(editing::dragged_whole(detail, parts::anchor("A")));
    // The section cuts the block across, 9 1/4 in deep below the member's top edge.
    const std::optional<Handle> under = find(detail, in_section, {HandleKind::block_depth, parts::block("B3")});
    REQUIRE(under);
    CHECK(under->at == drawing::Point{-15.75, -9.25});
    const Moved cut = dragged(detail, in_section, under->id, {0.0, -7.25});
    CHECK(cut.detail.framing.blocks.back().depth_in == 7.25);
    CHECK(editing::handles(detail, {Sheet::section, {model::PlanAxis::x, 0.0}}).empty());
}

TEST_CASE("sheets and steps are those of the mount", "[unit]") {
    const model::BaseDetail side = test::post_on_side(), plate = test::square_base();
    CHECK(format::english(editing::sheet_title(side, Sheet::plan)) == "OUTSIDE FACE OF R1");
    CHECK(format::english(editing::sheet_title(plate, Sheet::plan)) == "PLAN");
    CHECK(editing::step_in(side, on_face, {1.0, 2.0}) == model::Place{1.0, 0.0, 2.0});
    CHECK(editing::step_in(side, in_section, {1.0, 2.0}) == model::Place{0.0, 1.0, 2.0});
    CHECK(editing::step_in(plate, on_face, {1.0, 2.0}) == model::Place{1.0, 2.0, 0.0});
    CHECK(editing::step_in(plate, in_section, {1.0, 2.0}) == model::Place{0.0, 1.0, 0.0});
    CHECK(format::english(editing::coordinates_of(side, parts::anchor("A")).second) == "z");
    CHECK(format::english(editing::coordinates_of(side, parts::block("B1")).second) == "y");
    CHECK(editing::typed_step(side, {parts::anchor("A")}, {1.0, 2.0}) == model::Place{1.0, 0.0, 2.0});
    CHECK(editing::typed_step(side, {parts::block("B1")}, {1.0, 2.0}) == model::Place{1.0, 2.0, 0.0});
}
