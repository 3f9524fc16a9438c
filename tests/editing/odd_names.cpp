// A hole may have any name, another part's too: it is found, taken, moved and erased as itself, and so is the other
// part.
#include "drawing/drawings.h"
#include "drawing/render/painter.h"
#include "editing/edits.h"
#include "editing/fields.h"
#include "editing/handles.h"
#include "editing/picked.h"
#include "editing/samples.h"
#include "support/compare.h"
#include "support/parts.h"
#include "support/shipped.h"

#include <algorithm>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

const std::vector<std::string> odd_names = {"plate", "anchor A", "B1, upper end", "block B1"};

/// Holes A to D of the sample are called by these, and keep their anchors; an anchor A is beside them.
model::BaseDetail oddly_named() {
    model::BaseDetail detail = test::square_base();
    REQUIRE(on_deck(detail).plate.holes.size() == odd_names.size());
    for (std::size_t i = 0; i < odd_names.size(); ++i) on_deck(detail).plate.holes[i].id = odd_names[i];
    on_deck(detail).anchors[0].holes = odd_names;
    on_deck(detail).plate.holes.push_back({"A", {0.0, 4.5}, model::RoundHole{0.5}});
    return detail;
}

model::Position center(const model::BaseDetail& detail, const std::string& id) {
    const auto hole = editing::hole_at(detail, parts::anchor(id));
    REQUIRE(hole);
    return hole->center;
}

}  // namespace

TEST_CASE("a hole with another part's name is picked where it is drawn, and no other part is", "[unit]") {
    const model::BaseDetail detail = oddly_named();
    const drawing::Scene scene = drawing::plan({detail}, {});
    const drawing::View view{{}, {500.0, 500.0}, 40.0, 4.0};
    const std::vector<model::PartId> all = model::parts(detail);
    for (const std::string& name : odd_names) {
        INFO(name);
        const model::Position at = center(detail, name);
        const drawing::Point on_surface = drawing::to_surface(view, drawing::Point{at.x_in, at.y_in});
        CHECK(drawing::part_at(scene, view, on_surface, 1.0) == parts::anchor(name));
        CHECK(model::find_part(all, model::key(parts::anchor(name))) == parts::anchor(name));
    }
    CHECK(editing::anchors_within(detail, {-9.0, -9.0}, {9.0, 9.0}) == editing::all_anchors(detail));
    CHECK(editing::all_anchors(detail).size() == odd_names.size() + 1);
}

TEST_CASE("a hole with another part's name is dragged and nudged alone", "[unit]") {
    const model::BaseDetail detail = oddly_named();
    const editing::SheetPlace in_plan{editing::Sheet::plan, {}};
    const std::vector<editing::Handle> handles = editing::handles(detail, in_plan);
    for (const std::string& name : odd_names) {
        INFO(name);
        const editing::HandleId wanted{editing::HandleKind::hole, parts::anchor(name)};
        const auto handle =
            std::find_if(handles.begin(), handles.end(), [&](const editing::Handle& one) { return one.id == wanted; });
        REQUIRE(handle != handles.end());
        const editing::Moved moved = editing::drag(detail, in_plan, *handle, {1.25, 2.5}, {false, 0.0, 0.0});
        model::BaseDetail expected = detail;
        for (model::Hole& hole : on_deck(expected).plate.holes) {
            if (hole.id == name) hole.center = {1.25, 2.5};
        }
        on_deck(expected).plate_reference.reset();
        CHECK(moved.detail == expected);
        const editing::Edit nudged = editing::nudge(detail, {parts::anchor(name)}, 1.25 - center(detail, name).x_in,
                                                    2.5 - center(detail, name).y_in);
        CHECK(nudged.detail == expected);
    }
}

TEST_CASE("a hole with another part's name is erased alone, and never in that part's place", "[unit]") {
    const model::BaseDetail detail = oddly_named();
    for (const std::string& name : odd_names) {
        INFO(name);
        const editing::Edit erased = editing::erase(detail, {parts::anchor(name)});
        CHECK(on_deck(erased.detail).plate.holes.size() == odd_names.size());
        CHECK_FALSE(editing::hole_at(erased.detail, parts::anchor(name)));
        CHECK(erased.detail.framing == detail.framing);
    }
    CHECK_FALSE(editing::erase(detail, {parts::plate}).refusal.empty());
    const editing::Edit without_a = editing::erase(detail, {parts::anchor("A")});
    CHECK_FALSE(editing::hole_at(without_a.detail, parts::anchor("A")));
    CHECK(editing::hole_at(without_a.detail, parts::anchor("anchor A")));
    const editing::Edit without_block = editing::erase(detail, {parts::block("B1")});
    CHECK(on_deck(without_block.detail).plate == on_deck(detail).plate);
    CHECK(without_block.detail.framing.blocks.size() + 1 == detail.framing.blocks.size());
}

TEST_CASE("the fields of a hole with another part's name are its own", "[unit]") {
    const model::BaseDetail detail = oddly_named();
    const auto fields = editing::fields(detail, test::shipped_catalog(), units::System::us);
    for (const std::string& name : odd_names) {
        INFO(name);
        const std::string path = "plate/hole[" + name + "]/x";
        const auto field =
            std::find_if(fields.begin(), fields.end(), [&](const editing::Field& one) { return one.path == path; });
        REQUIRE(field != fields.end());
        CHECK(field->part == parts::anchor(name));
    }
}
