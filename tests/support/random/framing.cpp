#include "support/random/framing.h"

#include <algorithm>

namespace toehold::test {

using namespace toehold::model;

namespace {

SideAngles angles(const Chance& chance, double depth_in) {
    using Kind = SideAngles::Kind;
    SideAngles result;
    result.sides = chance.count(1, 2);
    result.thickness_in = chance.between(0.05, 0.5);
    result.metal = chance.id();
    result.kind = chance.one_of<Kind>({Kind::wood_screw, Kind::lag_screw, Kind::bolt});
    result.diameter_in = chance.between(0.1, 0.6);
    if (result.kind != Kind::bolt) result.length_in = chance.between(1.0, 4.0);
    result.per_leg = chance.count(1, 5);
    if (result.per_leg > 1) result.spacing_in = chance.between(0.05, 0.19) * depth_in;
    result.gauge_in = chance.between(0.5, 2.0);
    if (result.kind != Kind::wood_screw && chance.coin())
        result.threads = chance.one_of<Threads>({Threads::included, Threads::excluded});
    return result;
}

ReportedConnector connector(const Chance& chance) {
    return {"c " + chance.words(),    chance.words(),           chance.given(1.0, 2e3),   chance.given(1.0, 2e3),
            chance.given(1.0, 2e3),   chance.given(1.0, 4.0),   chance.given(1.0, 2e3),   chance.given(1.0, 9.0),
            chance.perhaps(1e2, 1e6), chance.perhaps(0.0, 1.0), chance.perhaps(0.0, 1.0), chance.coin()};
}

EndGrainFasteners structural_screws(const Chance& chance) {
    EndGrainFasteners result{EndGrainFasteners::Kind::structural_screw, chance.between(0.25, 0.4),
                             chance.between(4.0, 8.0), chance.count(2, 4), chance.between(0.5, 1.2)};
    result.reported = {chance.given(50.0, 500.0), chance.given(50.0, 500.0), "r " + chance.words(),
                       "c " + chance.words()};
    return result;
}

OwnWood own_wood(const Chance& chance) {
    OwnWood result;
    result.id = "W1";
    result.name = "n " + chance.words();
    result.source = "s " + chance.words();
    for (double* const stress : {&result.bending_psi, &result.bending_flat_psi, &result.tension_psi, &result.shear_psi,
                                 &result.compression_perp_psi, &result.compression_psi})
        *stress = chance.between(100.0, 3000.0);
    result.modulus_psi = chance.between(1e6, 2e6);
    result.modulus_min_psi = std::min(result.modulus_psi, chance.between(4e5, 9e5));
    result.specific_gravity = chance.between(0.35, 0.6);
    result.volume = chance.one_of<OwnWood::Volume>({OwnWood::Volume::none, OwnWood::Volume::depth,
                                                    OwnWood::Volume::glulam, OwnWood::Volume::glulam_southern_pine});
    if (result.volume == OwnWood::Volume::depth) result.volume_exponent = chance.between(0.05, 0.3);
    result.wet_service =
        chance.one_of<OwnWood::WetService>({OwnWood::WetService::dry_only, OwnWood::WetService::included,
                                            OwnWood::WetService::glulam, OwnWood::WetService::sawn});
    return result;
}

/// At the end of a member this deep.
EndConnection connection(const Chance& chance, double depth_in) {
    using Kind = EndGrainFasteners::Kind;
    switch (chance.whole(0, 5)) {
        case 0:
            return {};
        case 1:
            return EndGrainFasteners{chance.one_of<Kind>({Kind::nail, Kind::wood_screw}), chance.between(0.1, 0.3),
                                     chance.between(2.0, 5.0), chance.count(2, 9), chance.between(0.5, 6.0)};
        case 2: {
            const int count = chance.count(1, 6);
            return ToeNails{chance.between(0.1, 0.3), chance.between(2.0, 5.0), count,
                            count > 2 ? chance.between(0.1, 0.9) * depth_in : 0.0};
        }
        case 3:
            return angles(chance, depth_in);
        case 4:
            return structural_screws(chance);
        default:
            return connector(chance);
    }
}

Rim rim(const Chance& chance, const Joists& joists, bool upper) {
    Rim result;
    result.id = chance.own_id(upper ? "R2" : "R1");
    result.width_in = chance.between(1.0, 2.0);
    result.plies = chance.count(1, 4);
    const double half = 0.5 * result.width_in * result.plies;
    result.at_in = upper ? joists.to_in.value_or(0.0) + half : joists.from_in.value_or(0.0) - half;
    result.from_in = chance.between(-20.0, -8.0);
    result.to_in = chance.between(8.0, 20.0);
    result.depth_in = chance.between(7.0, 12.0);
    result.species = chance.id();
    result.grade = chance.id();
    result.connection = connection(chance, joists.depth_in);
    return result;
}

Joists joists(const Chance& chance) {
    Joists result;
    if (!chance.fits()) result.along = chance.one_of<PlanAxis>({PlanAxis::x, PlanAxis::y});
    result.width_in = chance.about(1.5);
    result.depth_in = chance.between(7.0, 12.0);
    result.species = chance.id();
    result.grade = chance.id();
    result.members = {{chance.own_id("J1"), chance.about(-8.0), chance.count(1, 4)},
                      {chance.own_id("J2"), chance.about(8.0), chance.count(1, 4)}};
    const bool from = chance.coin();
    const bool to = chance.fits() ? from : chance.coin();
    if (from) result.from_in = chance.between(-120.0, -60.0);
    if (to) result.to_in = chance.between(12.0, 24.0);
    return result;
}

/// Of joists whose ends are described.
std::vector<JoistSupport> supports(const Chance& chance, const Joists& joists) {
    using Kind = JoistSupport::Kind;
    std::vector<JoistSupport> result{
        {chance.own_id("S1"), Kind::ledger, joists.from_in.value_or(0.0), 0.0, connection(chance, joists.depth_in)},
        {chance.own_id("S2"), Kind::beam, chance.between(-40.0, 12.0), chance.between(1.5, 6.0),
         connection(chance, joists.depth_in)}};
    if (!chance.fits()) std::swap(result[0].kind, result[1].kind);
    return result;
}

Block block(const Chance& chance, const std::string& stem, PlanAxis along, double across_in) {
    Block result;
    result.id = chance.own_id(stem);
    result.along = along;
    result.across_in = across_in;
    result.plies = chance.count(1, 4);
    result.width_in = chance.between(1.0, 5.5) / result.plies;
    result.depth_in = chance.between(1.5, 9.0);
    result.species = chance.id();
    result.grade = chance.id();
    if (chance.coin()) {
        result.size = chance.coin() ? "2x8" : "2 x 10";
        result.width_in = 1.5;
        result.depth_in = result.size == "2x8" ? 7.25 : 9.25;
    }
    if (chance.coin()) {
        result.stack = chance.count(2, 4);
        result.stack_fastened = chance.coin();
    }
    return result;
}

/// Two blocks from joist to joist, and perhaps one more from the second to the rim beyond it.
std::vector<Block> blocks(const Chance& chance, const Joists& joists, const Rim* beyond) {
    std::vector<Block> result;
    const std::vector<Joist>& members = joists.members;
    for (const double across : {-3.5, 3.5}) {
        Block one = block(chance, across < 0.0 ? "B1" : "B2", PlanAxis::x, across);
        one.from_in = members[0].offset_in + 0.5 * joists.width_in * members[0].plies;
        one.to_in = members[1].offset_in - 0.5 * joists.width_in * members[1].plies;
        one.from_end = {members[0].id, connection(chance, one.depth_in)};
        if (chance.coin()) one.to_end = {chance.coin() ? members[1].id : "", connection(chance, one.depth_in)};
        result.push_back(one);
    }
    if (beyond == nullptr) return result;
    Block last = block(chance, "B3", PlanAxis::y, 0.0);
    last.from_in = result[1].across_in + 0.5 * result[1].width_in * result[1].plies;
    last.to_in = joists.to_in.value_or(0.0);
    last.from_end = {result[1].id, connection(chance, last.depth_in)};
    last.to_end = {beyond->id, connection(chance, last.depth_in)};
    result.push_back(last);
    return result;
}

}  // namespace

Framing random_framing(const Chance& chance) {
    Framing result;
    result.preservative_treated = chance.coin();
    if (chance.coin()) return result;
    const Joists described = joists(chance);
    const bool ends_described = described.to_in.has_value() || !chance.fits();
    const Rim* beyond = nullptr;
    if (ends_described) {
        result.supports = supports(chance, described);
        if (chance.coin()) result.rims.push_back(rim(chance, described, false));
        if (chance.coin()) beyond = &result.rims.emplace_back(rim(chance, described, true));
    }
    result.blocks = blocks(chance, described, beyond);
    if (chance.coin()) {
        result.materials = {own_wood(chance)};
        result.blocks.front().species = "W1";
        result.blocks.front().grade.clear();
    }
    // What is said of other parts may stand though the joists do not.
    if (chance.fits() || chance.coin()) result.joists = described;
    return result;
}

}  // namespace toehold::test
