// Edits of the outline and the framing, erasing, another plate, and where a new detail begins.
#include "support/parts.h"
#include "catalog/resolve.h"
#include "editing/edits.h"
#include "editing/samples.h"
#include "model/member.h"
#include "model/validate.h"
#include "support/compare.h"
#include "support/problems.h"
#include "xml/detail/detail_file.h"

#include <cmath>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Edit;

namespace {

const model::PolygonOutline& polygon(const model::BaseDetail& detail) {
    return std::get<model::PolygonOutline>(on_deck(detail).plate.outline);
}

}  // namespace

TEST_CASE("the corners of a rectangle become free", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const Edit edit = editing::to_polygon(base);
    CHECK(polygon(edit.detail).corners ==
          std::vector<model::Position>{{-5.0, -5.0}, {5.0, -5.0}, {5.0, 5.0}, {-5.0, 5.0}});
    CHECK_FALSE(editing::to_polygon(edit.detail).refusal.empty());
}

TEST_CASE("a circle's polygon lies inside it", "[closed-form]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).plate.outline = model::CircleOutline{14.0, {0.5, 0.25}};
    const Edit edit = editing::to_polygon(base);
    for (const model::Position corner : polygon(edit.detail).corners)
        CHECK_CLOSE(std::hypot(corner.x_in - 0.5, corner.y_in - 0.25), 7.0, 0.0, 1e-12);
    CHECK(model::validate(on_deck(edit.detail).plate).empty());
}

TEST_CASE("a corner goes into the nearest side, and can be taken out again", "[unit]") {
    const model::BaseDetail base = test::square_base();
    const Edit edit = editing::add_corner(base, {6.0, 0.0});
    CHECK(polygon(edit.detail).corners ==
          std::vector<model::Position>{{-5.0, -5.0}, {5.0, -5.0}, {6.0, 0.0}, {5.0, 5.0}, {-5.0, 5.0}});
    const Edit erased = editing::erase(edit.detail, {parts::corner(3)});
    CHECK(polygon(erased.detail).corners.size() == 4);
    CHECK(format::english(erased.step) == "Erase corner 3");
    CHECK_FALSE(editing::erase(base, {parts::corner(3)}).refusal.empty());
    model::BaseDetail triangle = base;
    on_deck(triangle).plate.outline = model::PolygonOutline{{{-5.0, -5.0}, {5.0, -5.0}, {0.0, 5.0}}};
    CHECK_FALSE(editing::erase(triangle, {parts::corner(1)}).refusal.empty());
}

TEST_CASE("a block is added between the joists there, like the nearest", "[unit]") {
    model::BaseDetail base = test::square_base();
    base.framing.joists->members.push_back({"J3", 24.0, 2});
    base.framing.blocks[1].depth_in = 5.5;
    base.framing.blocks[1].to_end.connection = model::ToeNails{0.162, 3.5, 4, 3.0};
    const Edit edit = editing::add_block(base, {12.0, 3.0});
    REQUIRE(edit.detail.framing.blocks.size() == 3);
    const model::Block& block = edit.detail.framing.blocks[2];
    CHECK(block.id == "B3");
    CHECK(block.from_in == 8.75);  // face of J2 at 8
    CHECK(block.to_in == 22.5);    // face of the doubled J3 at 24
    CHECK(block.across_in == 3.0);
    CHECK(block.depth_in == 5.5);
    CHECK(block.from_end.joist == "J2");
    CHECK(block.to_end.joist == "J3");
    CHECK(block.to_end.connection == base.framing.blocks[1].to_end.connection);
    CHECK(model::validate(edit.detail).empty());
}

TEST_CASE("a first block is a 4x8 of the joists' wood", "[unit]") {
    model::BaseDetail base = test::square_base();
    base.framing.blocks.clear();
    const model::Block block = editing::add_block(base, {0.0, 1.0}).detail.framing.blocks.at(0);
    CHECK(block.width_in == 3.5);
    CHECK(block.depth_in == 7.25);
    CHECK(block.species == "southern-pine");
    CHECK(block.from_end == model::BlockEnd{"J1", {}});
}

TEST_CASE("no block without joists on both sides", "[bad-input]") {
    model::BaseDetail base = test::square_base();
    CHECK_FALSE(editing::add_block(base, {9.0, 0.0}).refusal.empty());
    base.framing.joists.reset();
    CHECK_FALSE(editing::add_block(base, {0.0, 0.0}).refusal.empty());
}

TEST_CASE("a mirrored block names the joists it comes to", "[unit]") {
    model::BaseDetail base = test::square_base();
    base.framing.joists->members.insert(base.framing.joists->members.begin(), {"J0", -24.0});
    base.framing.joists->members.push_back({"J3", 24.0});
    model::Block next = base.framing.blocks[0];
    next.id = "B3";
    next.from_in = 8.75;
    next.to_in = 23.25;
    next.from_end = {"J2", model::ToeNails{0.162, 3.5, 4, 3.0}};
    next.to_end = {"J3", {}};
    base.framing.blocks.push_back(next);
    const Edit edit = editing::mirror(base, {parts::block("B3")}, editing::MirrorLine::y_axis, true);
    const model::Block& image = edit.detail.framing.blocks.at(3);
    CHECK(image.id == "B4");
    CHECK(image.from_in == -23.25);
    CHECK(image.to_in == -8.75);
    CHECK(image.from_end == model::BlockEnd{"J0", {}});
    CHECK(image.to_end == model::BlockEnd{"J1", next.from_end.connection});
    CHECK(model::validate(edit.detail).empty());
}

TEST_CASE("an erased hole leaves no trace in the anchors", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).anchors.push_back(on_deck(base).anchors[0]);
    on_deck(base).anchors[0].holes = {"A"};
    on_deck(base).anchors[1].holes = {"B", "C", "D"};
    const Edit edit = editing::erase(base, {parts::anchor("A"), parts::anchor("B")});
    CHECK(format::english(edit.step) == "Erase 2 holes");
    REQUIRE(on_deck(edit.detail).plate.holes.size() == 2);
    REQUIRE(on_deck(edit.detail).anchors.size() == 1);
    CHECK(on_deck(edit.detail).anchors[0].holes == std::vector<std::string>{"C", "D"});
}

TEST_CASE("an erased joist is named by no block any more", "[unit]") {
    const Edit edit = editing::erase(test::square_base(), {parts::joist("J1")});
    CHECK(edit.detail.framing.joists->members.size() == 1);
    for (const model::Block& block : edit.detail.framing.blocks) {
        CHECK(block.from_end.joist.empty());
        CHECK(block.to_end.joist == "J2");
    }
}

TEST_CASE("framing and shims can be erased, the rest of the base cannot", "[unit]") {
    model::BaseDetail base = test::demo_detail("heron-landing-lags-in-deep-blocks");
    on_deck(base).layers.shims = {{"shim-hardwood", 0.25}, {"shim-hdpe", 0.5}};
    const Edit edit =
        editing::erase(base, {parts::shim(1), parts::rim("R1"), parts::beam("S2"), parts::block("B1"), parts::post});
    CHECK(on_deck(edit.detail).layers.shims == std::vector<model::Shim>{{"shim-hdpe", 0.5}});
    CHECK(edit.detail.framing.rims.empty());
    CHECK(edit.detail.framing.supports.size() == 1);
    CHECK(edit.detail.framing.blocks.size() == 1);
    CHECK(edit.detail.post == base.post);
    for (const model::PartId& part : {parts::plate, parts::post, parts::weld, parts::guard, parts::push, parts::decking,
                                      parts::anchor("nobody"), model::PartId{}}) {
        const Edit refused = editing::erase(base, {part});
        CHECK_FALSE(refused.refusal.empty());
        CHECK(refused.detail == base);
    }
    CHECK_FALSE(editing::erase(base, {}).refusal.empty());
}

TEST_CASE("another plate: anchors follow the holes' ids", "[unit]") {
    model::BaseDetail base = test::square_base();
    on_deck(base).anchors.push_back(on_deck(base).anchors[0]);
    on_deck(base).anchors[0].holes = {"A", "B"};
    on_deck(base).anchors[1].holes = {"C", "D"};
    model::Plate stock = on_deck(base).plate;
    stock.name = "other";
    stock.holes = {{"A", {1.0, 1.0}, model::RoundHole{0.5}}, {"E", {-1.0, 1.0}, model::RoundHole{0.5}}};
    const Edit edit = editing::use_plate(base, stock);
    CHECK(on_deck(edit.detail).plate == stock);
    CHECK(format::english(edit.step) == "Use plate other");
    REQUIRE(on_deck(edit.detail).anchors.size() == 1);
    CHECK(on_deck(edit.detail).anchors[0].holes == std::vector<std::string>{"A", "E"});
    stock.holes = {{"X", {1.0, 1.0}, model::RoundHole{0.5}}};
    const Edit all_new = editing::use_plate(base, stock);
    REQUIRE(on_deck(all_new.detail).anchors.size() == 1);
    CHECK(model::anchor_group(all_new.detail, "X") != nullptr);
    CHECK_FALSE(editing::use_plate(edit.detail, on_deck(edit.detail).plate).refusal.empty());
}

TEST_CASE("a new detail on every stock plate is sound and known to the catalogs", "[unit]") {
    const catalog::Catalog& catalog = test::shipped_catalog();
    REQUIRE(catalog.stock_plates.size() > 10);
    for (const model::Plate& plate : catalog.stock_plates) {
        const model::BaseDetail detail = editing::starting_detail(plate, catalog);
        INFO(plate.id);
        CHECK(test::sentences(model::validate(detail)).empty());
        const catalog::Resolution resolution = catalog::resolve(detail, catalog);
        CHECK(test::sentences(resolution.problems).empty());
        REQUIRE(resolution.resolved);
        CHECK(resolution.resolved->anchors.size() == plate.holes.size());
        for (const catalog::Anchor& anchor : resolution.resolved->anchors) {
            CHECK(anchor.seat);
            CHECK_CLOSE(anchor.hole_diameter_in - anchor.diameter_in, 1.0 / 16.0, 0.0, 1e-9);
        }
        CHECK(detail.basis == model::Basis{});
        CHECK(xml::read_detail_text(xml::write_detail(detail), "new.xml").detail == detail);
        // What is welded is of one kind of metal.
        CHECK(resolution.resolved->post_metal.kind == on_deck(*resolution.resolved).plate_metal.kind);
        CHECK(on_deck(*resolution.resolved).filler->kind == on_deck(*resolution.resolved).plate_metal.kind);
    }
}

TEST_CASE("a new detail without a catalog or holes is no accident", "[bad-input]") {
    model::Plate bare = on_deck(test::square_base()).plate;
    bare.holes.clear();
    const model::BaseDetail detail = editing::starting_detail(bare, {});
    CHECK(on_deck(detail).plate == bare);
    CHECK(test::whats_broken(detail).empty());
}
