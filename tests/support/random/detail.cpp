#include "support/random/detail.h"

#include "support/random/framing.h"
#include "support/random/mount_parts.h"
#include "support/random/side_mount.h"
#include "xml/detail/detail_file.h"

#include <ostream>

namespace toehold::test {
namespace {

using namespace toehold::model;

std::optional<Certificate> certificate(const Chance& chance) {
    if (chance.coin()) return std::nullopt;
    return Certificate{chance.between(3e4, 4e4), chance.between(5e4, 6e4), "heat 12 & 13"};
}

/// A tube over a stub that fits it, where sizes have to fit.
RectangularTube over_stub(const Chance& chance) {
    RectangularTube tube{chance.about(2.5), chance.about(3.0), chance.about(0.25), chance.id(), certificate(chance)};
    tube.stub = Stub{chance.between(1.6, 1.9),
                     chance.between(2.0, 2.4),
                     chance.given(0.1, 0.3),
                     chance.between(2.0, 9.0),
                     chance.id(),
                     chance.one_of<StubFixing>({StubFixing::none, StubFixing::set_screws, StubFixing::through_bolt})};
    return tube;
}

RoundTube round_over_stub(const Chance& chance) {
    RoundTube tube{chance.about(3.0), chance.about(0.25), chance.id(), certificate(chance)};
    const double diameter_in = chance.between(2.0, 2.4);
    tube.stub = Stub{diameter_in, diameter_in,           chance.given(0.1, 0.3), chance.between(2.0, 9.0),
                     chance.id(), StubFixing::set_screws};
    return tube;
}

SolidBar round_bar(const Chance& chance) {
    const double diameter_in = chance.between(1.0, 2.5);
    return {diameter_in, diameter_in, true, chance.id()};
}

Post post(const Chance& chance) {
    const auto wall = [&] { return chance.between(0.05, 0.9); };
    switch (chance.whole(0, 8)) {
        case 0: {
            const double width = chance.about(2.1);
            return RectangularTube{width, width, wall(), chance.id()};
        }
        case 1:
            return RectangularTube{chance.between(2.0, 2.5), chance.between(2.6, 3.0), wall(), chance.id()};
        case 2:
            return RoundTube{chance.between(2.0, 3.0), wall(), chance.id()};
        case 3:
            return over_stub(chance);
        case 4:
            return round_over_stub(chance);
        case 5:
            return SolidBar{chance.between(1.0, 2.0), chance.between(1.0, 3.0), false, chance.id()};
        case 6:
            return round_bar(chance);
        case 7:
            return TwinBars{chance.between(0.4, 0.6), chance.between(2.0, 3.0), chance.between(0.5, 1.0),
                            chance.one_of<PlanAxis>({PlanAxis::x, PlanAxis::y}), chance.id()};
        default:
            break;
    }
    WoodPost wood{chance.about(2.5), chance.between(2.4, 2.5), chance.id(), chance.id(), chance.coin(), {}};
    wood.shoe = {chance.one_of<ShoeAttachment>({ShoeAttachment::welded, ShoeAttachment::bolted}),
                 chance.about(3.0),
                 chance.about(3.0),
                 chance.between(0.1, 0.25),
                 chance.between(1.0, 9.0),
                 chance.id(),
                 chance.perhaps(10.0, 1e5),
                 chance.words(),
                 chance.one_of<ShoeForm>({ShoeForm::not_stated, ShoeForm::closed})};
    return wood;
}

Outline outline(const Chance& chance) {
    const double half = chance.between(4.0, 6.0);
    switch (chance.whole(0, 2)) {
        case 0:
            return RectangleOutline{2.0 * half, 2.0 * half, chance.given(0.1, 1.0), {chance.given(-0.1, 0.1), 0.0}};
        case 1:
            return CircleOutline{3.0 * half, {0.0, chance.given(-0.1, 0.1)}};
        default:
            break;
    }
    PolygonOutline polygon{
        {{-half, -half}, {half, -half}, {half, half}, {chance.between(-0.1, 0.1), half + 1.0}, {-half, half}}};
    if (!chance.fits()) polygon.corners.resize(static_cast<std::size_t>(chance.whole(0, 5)));
    return polygon;
}

Plate plate(const Chance& chance) {
    Plate result;
    if (chance.coin()) result.id = chance.id();
    result.name = chance.words();
    result.metal = chance.id();
    result.thickness_in = chance.between(0.1, 1.0);
    result.outline = outline(chance);
    for (const Position place : {Position{-2.5, -2.5}, {2.5, -2.5}, {2.5, 2.5}, {-2.5, 2.5}}) {
        const std::string stem(1, static_cast<char>('A' + result.holes.size()));
        Hole hole{chance.own_id(stem), place, RoundHole{chance.between(0.3, 0.6)}};
        hole.center.x_in += chance.between(-0.1, 0.1);
        if (chance.coin())
            hole.shape = Slot{chance.between(0.8, 1.2), chance.between(0.3, 0.6), chance.given(-180.0, 180.0)};
        result.holes.push_back(hole);
    }
    if (!chance.fits()) result.holes.resize(static_cast<std::size_t>(chance.whole(0, 4)));
    return result;
}

std::vector<AnchorGroup> anchors(const Chance& chance, const std::vector<Hole>& holes) {
    std::vector<AnchorGroup> result;
    if (chance.fits()) {
        if (chance.coin()) result.push_back(random_group(chance, {holes[0].id, holes[2].id}));
        result.push_back(random_group(chance, {}));
        return result;
    }
    for (int left = chance.whole(0, 3); left > 0; --left) {
        result.push_back(random_group(
            chance, chance.coin() ? std::vector<std::string>{"A", "nowhere"} : std::vector<std::string>{}));
    }
    return result;
}

Packing packing(const Chance& chance) {
    Packing result;
    result.shape = chance.one_of<PackingShape>({PackingShape::rectangle, PackingShape::round});
    result.width_in = chance.between(1.0, 3.0);
    if (result.shape == PackingShape::rectangle) result.depth_in = chance.between(1.0, 3.0);
    result.material = chance.id();
    result.hole_in = chance.given(0.3, 0.8);
    for (int left = chance.whole(0, 2); left > 0; --left)
        result.places.push_back({chance.between(-3.0, 3.0), chance.between(-3.0, 3.0)});
    return result;
}

Layers layers(const Chance& chance) {
    Layers result;
    if (chance.coin()) {
        result.decking = random_decking(chance);
        if (chance.coin()) result.packing = packing(chance);
    }
    for (int left = chance.whole(0, 2); left > 0; --left)
        result.shims.push_back({chance.id(), chance.between(0.1, 0.5)});
    return result;
}

Loads loads(const Chance& chance) {
    Loads result;
    result.directions = chance.one_of<Directions>({Directions::all_round, Directions::outward});
    if (chance.coin()) result.concentrated = ConcentratedLoad{chance.between(50.0, 500.0), chance.given(-100.0, 100.0)};
    if (chance.coin())
        result.line = LineLoad{chance.between(10.0, 99.0), chance.between(1.0, 9.0), chance.given(-9.0, 900.0)};
    for (int left = chance.whole(0, 2); left > 0; --left)
        result.user.push_back({"u " + chance.words(), chance.between(0.0, 99.0), chance.given(-9.0, 9.0),
                               chance.perhaps(1.0, 42.0), chance.words()});
    result.stated = result.concentrated || result.line || !result.user.empty();
    return result;
}

Basis basis(const Chance& chance) {
    Basis result;
    result.method = chance.one_of<Method>({Method::asd, Method::lrfd});
    result.load_duration = chance.perhaps(0.9, 1.6);
    result.time_effect = chance.perhaps(0.6, 1.0);
    if (chance.coin())
        result.moisture = chance.one_of<Moisture>({Moisture::wet, Moisture::dry, Moisture::dried_in_service});
    if (chance.coin())
        result.temperature =
            chance.one_of<Temperature>({Temperature::to_100F, Temperature::to_125F, Temperature::to_150F});
    if (chance.coin()) result.incised = chance.coin();
    if (chance.coin())
        result.decking_in_shear = chance.one_of<DeckingInShear>({DeckingInShear::gap, DeckingInShear::bearing});
    if (chance.coin()) result.plate = chance.one_of<PlateBehaviour>({PlateBehaviour::flexible, PlateBehaviour::rigid});
    if (chance.coin()) result.code = chance.one_of<BuildingCode>({BuildingCode::irc_2021, BuildingCode::ibc_2021});
    if (chance.coin()) result.movement_limit = MovementLimit::astm_e985;
    if (chance.coin())
        result.torsion =
            chance.one_of<TorsionWithShear>({TorsionWithShear::parabolic, TorsionWithShear::linear_two_thirds});
    if (chance.coin()) result.shrinkage_detailed = chance.coin();
    if (chance.coin()) result.bearing = chance.one_of<BearingStress>({BearingStress::block, BearingStress::peak});
    if (chance.coin())
        result.stiffness = FixedStiffness{chance.between(1e-3, 1e6), chance.between(1e-3, 1e6), "r " + chance.words()};
    return result;
}

Remark remark(const Chance& chance) {
    using State = Remark::State;
    Remark result{{}, chance.words(), "w " + chance.words(), chance.words(), {}, State::open};
    if (chance.coin()) result.about = chance.id();
    if (chance.coin()) result.date = "2024-02-29";
    result.state = chance.one_of<State>({State::open, State::settled});
    return result;
}

Gussets gussets(const Chance& chance) {
    return {{true, chance.coin(), chance.coin(), chance.coin()},
            chance.between(1.0, 4.0),
            chance.between(1.0, 4.0),
            chance.between(0.1, 0.5),
            chance.between(0.1, 0.3)};
}

Weld weld(const Chance& chance) {
    Weld result{chance.between(0.1, 0.5), chance.id()};
    result.kind =
        chance.one_of<WeldKind>({WeldKind::fillet, WeldKind::complete_penetration, WeldKind::partial_penetration});
    if (result.kind == WeldKind::partial_penetration) result.throat_in = chance.between(0.05, 0.2);
    result.faces = chance.one_of<WeldFaces>({WeldFaces::top, WeldFaces::both});
    if (chance.coin()) result.gussets = gussets(chance);
    return result;
}

PlateOnDeck plate_on_deck(const Chance& chance) {
    PlateOnDeck result;
    result.plate = plate(chance);
    result.plate_below_surface_in = chance.given(0.1, 2.0);
    if (chance.coin()) result.weld = weld(chance);
    result.anchors = anchors(chance, result.plate.holes);
    result.layers = layers(chance);
    return result;
}

BaseDetail detail(const Chance& chance, MountKind kind) {
    BaseDetail result;
    result.name = chance.words();
    result.note = chance.words();
    result.project = chance.words();
    result.guard = {chance.between(30.0, 48.0),
                    chance.one_of<Occupancy>({Occupancy::other, Occupancy::one_and_two_family})};
    result.post = post(chance);
    if (kind == MountKind::plate_on_deck) {
        result.mount = plate_on_deck(chance);
    } else {
        result.mount = random_side_mount(chance);
        if (auto* const wood = std::get_if<WoodPost>(&result.post); wood != nullptr && chance.coin()) wood->shoe = {};
    }
    result.framing = random_framing(chance);
    result.loads = loads(chance);
    result.basis = basis(chance);
    for (int left = chance.whole(0, 2); left > 0; --left) result.remarks.push_back(remark(chance));
    return result;
}

}  // namespace

rc::Gen<model::BaseDetail> any_detail() {
    return rc::gen::exec([] { return detail(Chance(false), MountKind::plate_on_deck); });
}

rc::Gen<model::BaseDetail> any_side_detail() {
    return rc::gen::exec([] { return detail(Chance(false), MountKind::side_fastened); });
}

rc::Gen<model::BaseDetail> sound_detail() {
    return rc::gen::exec([] { return detail(Chance(true), MountKind::plate_on_deck); });
}

model::BaseDetail random_detail(unsigned seed) { return sound_detail()(rc::Random(seed), rc::kNominalSize).value(); }

}  // namespace toehold::test

namespace toehold::model {

void showValue(const BaseDetail& detail, std::ostream& stream) { stream << xml::write_detail(detail); }

}  // namespace toehold::model
