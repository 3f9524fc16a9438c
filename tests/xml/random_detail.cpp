#include "random_detail.h"

#include <random>

namespace toehold::test {
namespace {

using namespace toehold::model;

class Chance {
  public:
    explicit Chance(unsigned seed) : engine_(seed) {}
    /// A number with all its digits.
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(engine_); }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine_); }
    bool coin() { return whole(0, 1) == 1; }
    std::string words() {
        static const std::vector<std::string> all{
            "", "plain", "a \"b\" <c> & 'd'", "two\nlines\r\n", "\u00d8 50 \U000233B4", " blank "};
        return all[static_cast<std::size_t>(whole(0, static_cast<int>(all.size()) - 1))];
    }
    std::string id() { return "id-" + std::to_string(whole(1, 99)) + "/8"; }
    std::optional<double> perhaps(double low, double high) {
        return coin() ? std::optional(between(low, high)) : std::nullopt;
    }
    double given(double low, double high) { return coin() ? between(low, high) : 0.0; }

  private:
    std::mt19937 engine_;
};

Post post(Chance& chance) {
    switch (chance.whole(0, 3)) {
        case 0:
            return RectangularTube{2.1, 2.1, chance.between(0.05, 0.9), chance.id()};
        case 1:
            return RectangularTube{chance.between(2.0, 2.5), chance.between(2.6, 3.0), chance.between(0.05, 0.9),
                                   chance.id()};
        case 2:
            return RoundTube{chance.between(2.0, 3.0), chance.between(0.05, 0.9), chance.id()};
        default:
            break;
    }
    WoodPost wood{2.5, chance.between(2.4, 2.5), chance.id(), chance.id(), chance.coin(), {}};
    wood.shoe = {chance.coin() ? ShoeAttachment::welded : ShoeAttachment::bolted,
                 3.0,
                 3.0,
                 chance.between(0.1, 0.25),
                 chance.between(1.0, 9.0),
                 chance.id(),
                 chance.perhaps(10.0, 1e5),
                 chance.words()};
    return wood;
}

Outline outline(Chance& chance) {
    const double half = chance.between(4.0, 6.0);
    switch (chance.whole(0, 2)) {
        case 0:
            return RectangleOutline{2.0 * half, 2.0 * half, chance.given(0.1, 1.0), {chance.given(-0.1, 0.1), 0.0}};
        case 1:
            return CircleOutline{3.0 * half, {0.0, chance.given(-0.1, 0.1)}};
        default:
            return PolygonOutline{
                {{-half, -half}, {half, -half}, {half, half}, {chance.between(-0.1, 0.1), half + 1.0}, {-half, half}}};
    }
}

Plate plate(Chance& chance) {
    Plate result;
    if (chance.coin()) result.id = chance.id();
    result.name = chance.words();
    result.metal = chance.id();
    result.thickness_in = chance.between(0.1, 1.0);
    result.outline = outline(chance);
    const std::vector<Position> places{{-2.5, -2.5}, {2.5, -2.5}, {2.5, 2.5}, {-2.5, 2.5}};
    for (std::size_t index = 0; index < places.size(); ++index) {
        Hole hole{std::string(1, static_cast<char>('A' + index)), places[index], RoundHole{chance.between(0.3, 0.6)}};
        hole.center.x_in += chance.between(-0.1, 0.1);
        if (chance.coin())
            hole.shape = Slot{chance.between(0.8, 1.2), chance.between(0.3, 0.6), chance.given(-180.0, 180.0)};
        result.holes.push_back(hole);
    }
    return result;
}

Fastener fastener(Chance& chance) {
    const double length = chance.between(3.0, 9.0);
    switch (chance.whole(0, 4)) {
        case 0:
            return LagScrew{chance.id(), length, chance.perhaps(1.0, 3.0)};
        case 1:
            return WoodScrew{chance.id(), length, chance.perhaps(1.0, 3.0)};
        case 2:
            return ThroughBolt{chance.id(), chance.id(), Washer{chance.id()}};
        case 3: {
            ThroughBolt bolt{chance.id(), chance.id(), {}};
            if (chance.coin())
                bolt.below = BackingPlate{chance.between(1.0, 4.0), chance.between(1.0, 4.0), chance.between(0.1, 0.5),
                                          chance.id()};
            return bolt;
        }
        default:
            break;
    }
    return ReportedFastener{"a " + chance.words(),       chance.words(),
                            chance.between(0.1, 0.5),    length,
                            chance.between(1.0, 3.0),    chance.given(50.0, 500.0),
                            chance.given(100.0, 5000.0), chance.given(100.0, 900.0),
                            chance.given(1.0, 2.0),      chance.given(0.1, 2.0),
                            chance.given(0.1, 4.0),      chance.given(0.1, 2.0)};
}

AnchorGroup group(Chance& chance, std::vector<std::string> holes) {
    AnchorGroup result{std::move(holes), fastener(chance), {}, chance.words(), chance.perhaps(1.0, 1e4)};
    if (chance.coin()) result.washer = Washer{chance.id()};
    return result;
}

SideAngles angles(Chance& chance, double depth_in) {
    using Kind = SideAngles::Kind;
    SideAngles result;
    result.sides = chance.whole(1, 2);
    result.thickness_in = chance.between(0.05, 0.5);
    result.metal = chance.id();
    result.kind = static_cast<Kind>(chance.whole(0, 2));
    result.diameter_in = chance.between(0.1, 0.6);
    if (result.kind != Kind::bolt) result.length_in = chance.between(1.0, 4.0);
    result.per_leg = chance.whole(1, 5);
    if (result.per_leg > 1) result.spacing_in = chance.between(0.05, 0.19) * depth_in;
    result.gauge_in = chance.between(0.5, 2.0);
    return result;
}

ReportedConnector connector(Chance& chance) {
    return {"c " + chance.words(),  chance.words(),         chance.given(1.0, 2e3),
            chance.given(1.0, 2e3), chance.given(1.0, 2e3), chance.given(1.0, 4.0),
            chance.given(1.0, 2e3), chance.given(1.0, 9.0), chance.perhaps(1e2, 1e6)};
}

/// At the end of a member this deep.
EndConnection connection(Chance& chance, double depth_in) {
    using Kind = EndGrainFasteners::Kind;
    switch (chance.whole(0, 4)) {
        case 0:
            return {};
        case 1:
            return EndGrainFasteners{chance.coin() ? Kind::nail : Kind::wood_screw, chance.between(0.1, 0.3),
                                     chance.between(2.0, 5.0), chance.whole(2, 9), chance.between(0.5, 6.0)};
        case 2: {
            const int count = chance.whole(1, 6);
            return ToeNails{chance.between(0.1, 0.3), chance.between(2.0, 5.0), count,
                            count > 2 ? chance.between(0.1, 0.9) * depth_in : 0.0};
        }
        case 3:
            return angles(chance, depth_in);
        default:
            return connector(chance);
    }
}

Rim rim(Chance& chance, const Joists& joists, bool upper) {
    Rim result;
    result.id = upper ? "R2" : "R1";
    result.width_in = chance.between(1.0, 2.0);
    result.plies = chance.whole(1, 4);
    const double half = 0.5 * result.width_in * result.plies;
    result.at_in = upper ? *joists.to_in + half : *joists.from_in - half;
    result.from_in = chance.between(-20.0, -8.0);
    result.to_in = chance.between(8.0, 20.0);
    result.depth_in = chance.between(7.0, 12.0);
    result.species = chance.id();
    result.grade = chance.id();
    result.connection = connection(chance, joists.depth_in);
    return result;
}

/// Ends, supports and perhaps rims of the joists.
void describe_joists(Chance& chance, Framing& framing) {
    Joists& joists = *framing.joists;
    joists.from_in = chance.between(-120.0, -60.0);
    joists.to_in = chance.between(12.0, 24.0);
    framing.supports = {{"S1", JoistSupport::Kind::ledger, *joists.from_in, 0.0, connection(chance, joists.depth_in)},
                        {"S2", JoistSupport::Kind::beam, chance.between(-40.0, 12.0), chance.between(1.5, 6.0),
                         connection(chance, joists.depth_in)}};
    if (chance.coin()) framing.rims.push_back(rim(chance, joists, false));
    if (chance.coin()) framing.rims.push_back(rim(chance, joists, true));
}

Block block(Chance& chance, std::string id, PlanAxis along, double across_in) {
    Block result;
    result.id = std::move(id);
    result.along = along;
    result.across_in = across_in;
    result.plies = chance.whole(1, 4);
    result.width_in = chance.between(1.0, 5.5) / result.plies;
    result.depth_in = chance.between(1.5, 9.0);
    result.species = chance.id();
    result.grade = chance.id();
    return result;
}

/// Two blocks from joist to joist.
void add_blocks(Chance& chance, Framing& framing) {
    const std::vector<Joist>& joists = framing.joists->members;
    for (const double across : {-3.5, 3.5}) {
        Block one = block(chance, across < 0.0 ? "B1" : "B2", PlanAxis::x, across);
        one.from_in = joists[0].offset_in + 0.5 * framing.joists->width_in * joists[0].plies;
        one.to_in = joists[1].offset_in - 0.5 * framing.joists->width_in * joists[1].plies;
        one.from_end = {"J1", connection(chance, one.depth_in)};
        if (chance.coin()) one.to_end = {chance.coin() ? "J2" : "", connection(chance, one.depth_in)};
        framing.blocks.push_back(one);
    }
}

/// One more, along the joists from the second block to the rim beyond it.
void add_block_to_rim(Chance& chance, Framing& framing) {
    if (framing.rims.empty() || framing.rims.back().id != "R2") return;
    const Block& behind = framing.blocks[1];
    Block one = block(chance, "B3", PlanAxis::y, 0.0);
    one.from_in = behind.across_in + 0.5 * behind.width_in * behind.plies;
    one.to_in = *framing.joists->to_in;
    one.from_end = {"B2", connection(chance, one.depth_in)};
    one.to_end = {"R2", connection(chance, one.depth_in)};
    framing.blocks.push_back(one);
}

Framing framing(Chance& chance) {
    Framing result;
    result.preservative_treated = chance.coin();
    if (chance.coin()) return result;
    result.joists =
        Joists{PlanAxis::y, 1.5,         chance.between(7.0, 12.0),
               chance.id(), chance.id(), {{"J1", -8.0, chance.whole(1, 4)}, {"J2", 8.0, chance.whole(1, 4)}}};
    if (chance.coin()) describe_joists(chance, result);
    add_blocks(chance, result);
    add_block_to_rim(chance, result);
    return result;
}

Decking decking(Chance& chance) {
    Decking result{chance.id(), chance.between(0.5, 2.0), chance.words()};
    if (chance.coin())
        result.fastening = DeckingFastening{chance.between(0.1, 0.3), chance.between(2.0, 4.0),  chance.whole(1, 4),
                                            chance.between(2.0, 8.0), chance.given(10.0, 300.0), chance.words()};
    return result;
}

Loads loads(Chance& chance) {
    Loads result;
    result.directions = chance.coin() ? Directions::all_round : Directions::outward;
    if (chance.coin()) result.concentrated = ConcentratedLoad{chance.between(50.0, 500.0), chance.given(-100.0, 100.0)};
    if (chance.coin())
        result.line = LineLoad{chance.between(10.0, 99.0), chance.between(1.0, 9.0), chance.given(-9.0, 900.0)};
    if (chance.coin())
        result.user = {{"u " + chance.words(), chance.between(0.0, 99.0), chance.given(-9.0, 9.0),
                        chance.perhaps(1.0, 42.0), chance.words()}};
    result.stated = result.concentrated || result.line || !result.user.empty();
    return result;
}

Basis basis(Chance& chance) {
    Basis result;
    result.method = chance.coin() ? Method::asd : Method::lrfd;
    result.load_duration = chance.perhaps(0.9, 1.6);
    result.time_effect = chance.perhaps(0.6, 1.0);
    if (chance.coin()) result.moisture = static_cast<Moisture>(chance.whole(0, 2));
    if (chance.coin()) result.temperature = static_cast<Temperature>(chance.whole(0, 2));
    if (chance.coin()) result.incised = chance.coin();
    if (chance.coin()) result.decking_in_shear = static_cast<DeckingInShear>(chance.whole(0, 1));
    if (chance.coin()) result.plate = static_cast<PlateBehaviour>(chance.whole(0, 1));
    if (chance.coin()) result.code = static_cast<BuildingCode>(chance.whole(0, 1));
    if (chance.coin())
        result.stiffness = FixedStiffness{chance.between(1e-3, 1e6), chance.between(1e-3, 1e6), "r " + chance.words()};
    return result;
}

Remark remark(Chance& chance) {
    Remark result{{}, chance.words(), "w " + chance.words(), chance.words(), {}, Remark::State::open};
    if (chance.coin()) result.about = chance.id();
    if (chance.coin()) result.date = "2024-02-29";
    if (chance.coin()) result.state = Remark::State::settled;
    return result;
}

}  // namespace

model::BaseDetail random_detail(unsigned seed) {
    Chance chance(seed);
    BaseDetail detail;
    detail.name = chance.words();
    detail.note = chance.words();
    detail.guard.height_in = chance.between(30.0, 48.0);
    on_deck(detail).plate_below_surface_in = chance.given(0.1, 2.0);
    detail.guard.occupancy = chance.coin() ? Occupancy::other : Occupancy::one_and_two_family;
    detail.post = post(chance);
    on_deck(detail).plate = plate(chance);
    if (chance.coin()) on_deck(detail).weld = Weld{chance.between(0.1, 0.5), chance.id()};
    if (chance.coin()) on_deck(detail).anchors.push_back(group(chance, {"A", "C"}));
    on_deck(detail).anchors.push_back(group(chance, {}));
    if (chance.coin()) on_deck(detail).layers.decking = decking(chance);
    for (int shim = chance.whole(0, 2); shim > 0; --shim)
        on_deck(detail).layers.shims.push_back({chance.id(), chance.between(0.1, 0.5)});
    detail.framing = framing(chance);
    detail.loads = loads(chance);
    detail.basis = basis(chance);
    detail.project = chance.words();
    for (int count = chance.whole(0, 2); count > 0; --count) detail.remarks.push_back(remark(chance));
    return detail;
}

}  // namespace toehold::test
