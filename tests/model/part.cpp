// Identity: every part of a detail has a key of its own, whatever its names are.
#include "model/part.h"
#include "format/phrase.h"

#include "model/base_detail.h"

#include <catch2/catch.hpp>

#include <set>

using namespace toehold;
using model::PartId;
using model::PartKind;
using model::PartPiece;

namespace {

/// Holes and members with names that are words of other kinds, or hold blanks and each other's keys.
model::BaseDetail oddly_named() {
    model::BaseDetail detail;
    model::PlateOnDeck mount;
    for (const char* id : {"plate", "weld", "boards", "post", "A", "A at joist J1", "J1"})
        mount.plate.holes.push_back({id, {}, model::RoundHole{0.5}});
    mount.weld = model::Weld{};
    mount.layers.decking = model::Decking{};
    mount.layers.shims.resize(2);
    detail.mount = mount;
    detail.framing.joists = model::Joists{};
    detail.framing.joists->members = {{"J1"}, {"A"}};
    detail.framing.blocks.resize(2);
    detail.framing.blocks[0].id = "A";
    detail.framing.blocks[1].id = "at joist J1";
    detail.framing.supports.resize(2);
    detail.framing.supports[0].id = "S1";
    detail.framing.supports[1].id = "S2";
    detail.framing.supports[1].kind = model::JoistSupport::Kind::ledger;
    return detail;
}

}  // namespace

TEST_CASE("Every part of a detail is found by its key and by no other's", "[unit]") {
    const std::vector<PartId> parts = model::parts(oddly_named());
    std::set<std::string> keys;
    for (const PartId& part : parts) {
        INFO(model::key(part));
        CHECK(keys.insert(model::key(part)).second);
        CHECK(model::find_part(parts, model::key(part)) == part);
    }
    CHECK(parts.size() == 3 + 1 + 1 + 7 + 1 + 2 + 2 + 2 + 2);
    CHECK_FALSE(model::find_part(parts, "anchor B"));
    CHECK_FALSE(model::find_part(parts, ""));
}

TEST_CASE("Packing and the plate below a group of bolts are parts too", "[unit]") {
    model::BaseDetail detail;
    model::PlateOnDeck mount;
    for (const char* id : {"A", "B", "C"}) mount.plate.holes.push_back({id, {}, model::RoundHole{0.5}});
    mount.layers.decking = model::Decking{};
    mount.layers.packing = model::Packing{};
    mount.anchors = {{{"C"}, model::LagScrew{}, {}, ""},
                     {{}, model::ThroughBolt{"bolt-1/2", "a307", model::LowerPlate{}}, {}, ""}};
    detail.mount = mount;
    const std::vector<PartId> parts = model::parts(detail);
    CHECK(model::find_part(parts, "packing") == PartId{PartKind::packing});
    CHECK(model::find_part(parts, "lower plate A B") == model::lower_plate_part(detail, 1));
    CHECK(format::english(model::part_name(model::lower_plate_part(detail, 1))) == "lower plate at A B");
}

TEST_CASE("A part's key says its piece and what holds it", "[unit]") {
    const PartId block{PartKind::block, "B1"};
    CHECK(model::key(block) == "block B1");
    CHECK(model::key(model::held_at(block, {PartKind::joist, "J2"})) == "block B1 at joist J2");
    CHECK(model::key({PartKind::block, "B1", PartPiece::upper_end}) == "block B1, upper end");
    CHECK(model::key({PartKind::block, "B1", PartPiece::supports}) == "ends of block B1");
    CHECK(model::key({PartKind::joist, "J1", PartPiece::supports}) == "supports of joist J1");
    CHECK(model::key({PartKind::rim, "R1", PartPiece::supports}) == "joists at rim R1");
    CHECK(model::key({PartKind::joist}) == "joists");
    CHECK(model::key({PartKind::plate, "", PartPiece::at_toe}) == "plate at its toe");
    CHECK(model::whole(model::held_at(block, {PartKind::joist, "J2"})) == block);
    CHECK(format::english(model::part_name(model::held_at(block, {PartKind::joist, "J2"}))) == "block B1 at joist J2");
}

TEST_CASE("A part's name keeps a name with braces as it is", "[unit]") {
    CHECK(format::english(model::part_name(model::anchor_part("{0}"))) == "anchor {0}");
}
