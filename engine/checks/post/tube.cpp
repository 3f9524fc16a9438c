#include "checks/post/tube.h"

#include "catalog/resolve.h"
#include "checks/basis/metal_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/post/filler.h"
#include "demand/governing_state.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/tube.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;
namespace aluminum = resistance::aluminum;
using catalog::MetalKind;

/// Usable moments about x and y, lb in, and usable axial force, lb. Both moments are the same for a round tube.
struct TubeStrength {
    double about_x_lb_in = 0.0;
    double about_y_lb_in = 0.0;
    double axial_lb = 0.0;
    std::string clause;
    std::vector<Step> steps;
    format::Phrase missing;  ///< empty when there are values
};

/// A tube as one metal's standard sees it.
struct Tube {
    const catalog::Metal& metal;
    BesideWeld used;
    steel::TubeMember member;    ///< with the metal's own yield strength, away from the weld
    steel::TubeSection section;  ///< of the wall to design with
};

/// `free_height_in`: from the plate to the guard's top, without sideways support; a flagpole column (K = 2.1).
Tube tube_of(const PostFoot& foot, const catalog::Metal& metal, const catalog::Filler* filler, double free_height_in) {
    return {metal,
            strengths(metal, {foot.welded, filler, foot.tube.wall_in}),
            {foot.tube, metal.yield_psi, metal.modulus_psi, free_height_in},
            metal.kind == MetalKind::aluminum ? steel::section_as_drawn(foot.tube) : steel::design_section(foot.tube)};
}

std::string suffix(steel::BentAbout axis) { return axis == steel::BentAbout::x ? "_x" : "_y"; }

/// Usable moment about an axis with its worked lines.
Adjusted usable_in_steel(const Tube& tube, steel::BentAbout axis, double nominal, const model::Basis& basis) {
    const std::string clause = steel_clause(tube.metal, tube.member.shape.round ? "AISC 360-16 F8" : "AISC 360-16 F7");
    const steel::Moduli about = steel::moduli(tube.section, axis);
    const bool plastic = nominal >= tube.metal.yield_psi * about.plastic_in3 * (1.0 - 1e-9);
    Adjusted result = available(nominal, steel::flexure_safety, basis, "AISC 360-16 F1");
    result.steps.insert(
        result.steps.begin(),
        {{"S" + suffix(axis), phrase("elastic section modulus"), "of the tube", about.section_in3, "in3", ""},
         {"Z" + suffix(axis), phrase("plastic section modulus"), "of the tube", about.plastic_in3, "in3", ""},
         {"M_n" + suffix(axis), phrase("nominal moment"),
          plastic ? "F_y Z (compact walls)" : "reduced (first yield or buckling)", nominal, "lb in", clause}});
    return result;
}

Adjusted usable_in_aluminum(const Tube& tube, steel::BentAbout axis, const model::Basis& basis) {
    const std::string clause = "Aluminum Design Manual 2020 F (from memory)";
    const steel::Moduli about = steel::moduli(tube.section, axis);
    const aluminum::Moment nominal =
        aluminum::tube_moment(about.section_in3, about.plastic_in3, {tube.used.yield_psi, tube.used.ultimate_psi});
    const Adjusted yielding = available(nominal.yield_lb_in, aluminum::yield_safety, basis, clause);
    const Adjusted rupture = available(nominal.rupture_lb_in, aluminum::rupture_safety, basis, clause);
    const bool yields = yielding.value <= rupture.value;
    Adjusted result = yields ? yielding : rupture;
    result.steps.insert(
        result.steps.begin(),
        {{"S" + suffix(axis), phrase("elastic section modulus"), "of the tube", about.section_in3, "in3", ""},
         {"Z" + suffix(axis), phrase("plastic section modulus"), "of the tube", about.plastic_in3, "in3", ""},
         {"M_n" + suffix(axis), yields ? phrase("nominal moment, yielding") : phrase("nominal moment, rupture"),
          yields ? "F_y S" : "F_u Z", yields ? nominal.yield_lb_in : nominal.rupture_lb_in, "lb in", clause}});
    return result;
}

std::optional<Adjusted> usable_moment(const Tube& tube, steel::BentAbout axis, const model::Basis& basis) {
    if (tube.metal.kind == MetalKind::aluminum) {
        if (!aluminum::walls_reach_yield(tube.member.shape, tube.metal.yield_psi, tube.metal.modulus_psi))
            return std::nullopt;
        return usable_in_aluminum(tube, axis, basis);
    }
    // The limits of carbon steel are only read across to stainless steel: compact walls alone, and first yield.
    const std::optional<double> nominal = tube.metal.kind == MetalKind::stainless_steel
                                              ? steel::compact_tube_moment_lb_in(tube.member, axis)
                                              : steel::tube_moment_lb_in(tube.member, axis);
    if (!nominal) return std::nullopt;
    return usable_in_steel(tube, axis, *nominal, basis);
}

double usable_axial_lb(const Tube& tube, const model::Basis& basis) {
    const bool in_aluminum = tube.metal.kind == MetalKind::aluminum;
    const auto nominal_lb = in_aluminum ? aluminum::flagpole_axial_lb : steel::flagpole_axial_lb;
    return available(nominal_lb(tube.section, tube.member.unbraced_in, tube.used.yield_psi, tube.metal.modulus_psi),
                     in_aluminum ? aluminum::yield_safety : steel::flexure_safety, basis, "")
        .value;
}

std::vector<Step> tube_steps(const Tube& tube) {
    std::vector<Step> steps = {from_file("t_w", phrase("wall thickness"), tube.member.shape.wall_in, "in")};
    if (tube.metal.kind == MetalKind::aluminum) {
        steps.push_back(ultimate_step(tube.metal, tube.used));
    } else {
        steps.push_back({"t", phrase("design wall thickness; outside corner radius 2 t"), "0.93 t_w",
                         steel::design_wall_in(tube.member.shape.wall_in), "in", "AISC 360-16 B4.2"});
    }
    steps.push_back(yield_step(tube.metal, tube.used));
    return steps;
}

/// Carbon steel: AISC 360-16 F7, F8, E3, with the design wall of B4.2 and corners of twice that wall. Stainless steel:
/// compact walls only, and no more than first yield (assumption). Aluminum: Aluminum Design Manual 2020 (from memory)
/// with welded strengths and the full wall, corners square as extruded; stocky walls only.
TubeStrength tube_strength(const PostFoot& foot, const Tube& tube, const model::Basis& basis) {
    const catalog::Metal& metal = tube.metal;
    TubeStrength strength;
    strength.clause = metal.kind == MetalKind::aluminum
                          ? "Aluminum Design Manual 2020 F (from memory)"
                          : steel_clause(metal, foot.tube.round ? "AISC 360-16 F8" : "AISC 360-16 F7");
    strength.missing = tube.used.missing;
    if (!strength.missing.empty()) return strength;
    strength.steps = tube_steps(tube);
    const std::optional<Adjusted> about_x = usable_moment(tube, steel::BentAbout::x, basis);
    const std::optional<Adjusted> about_y = usable_moment(tube, steel::BentAbout::y, basis);
    if (!about_x || !about_y) {
        strength.missing = phrase("The tube wall is too slender for the clauses this check uses.");
        return strength;
    }
    strength.about_x_lb_in = about_x->value;
    strength.about_y_lb_in = about_y->value;
    append(strength.steps, about_x->steps);
    if (!foot.tube.round && foot.tube.width_in != foot.tube.depth_in) append(strength.steps, about_y->steps);
    strength.axial_lb = usable_axial_lb(tube, basis);
    return strength;
}

/// Moment the tube takes in the direction of this push, lb in, beside the vertical force of the same case.
double capacity_lb_in(const TubeStrength& strength, const PostFoot& foot, const PushMoment& moment, double down_lb) {
    if (!(moment.total_lb_in > 0.0)) return std::min(strength.about_x_lb_in, strength.about_y_lb_in);
    const double left = steel::moment_share_beside_axial(std::abs(down_lb) / strength.axial_lb);
    if (foot.tube.round) return left * strength.about_x_lb_in;
    const double used = moment.about_x_lb_in / strength.about_x_lb_in + moment.about_y_lb_in / strength.about_y_lb_in;
    return left * moment.total_lb_in / used;
}

void add_demand_steps(CheckResult& result, const PostFoot& foot, const TubeStrength& strength,
                      const demand::LoadCase& load, const PushMoment& moment) {
    append(result.steps,
           {demanded("H", phrase("push"), std::abs(load.push_lb), "lb"),
            demanded("h", phrase("height of the push above the underside of the plate"), load.height_in, "in"),
            {"M", phrase("moment at the plate"), "H h", moment.total_lb_in, "lb in", "demand"}});
    if (!foot.tube.round) {
        append(result.steps,
               {{"M_cx", phrase("available moment about x"), "M_n_x, ASD or LRFD", strength.about_x_lb_in, "lb in", ""},
                {"M_cy", phrase("available moment about y"), "M_n_y, ASD or LRFD", strength.about_y_lb_in, "lb in", ""},
                {"M_x", phrase("moment about x"), "component of H along y", moment.about_x_lb_in, "lb in", ""},
                {"M_y", phrase("moment about y"), "component of H along x", moment.about_y_lb_in, "lb in", ""}});
    }
    if (load.down_lb != 0.0) {
        append(result.steps, {demanded("P", phrase("vertical load"), std::abs(load.down_lb), "lb"),
                              {"P_c", phrase("available axial strength, column free at its top"), "K = 2.1",
                               strength.axial_lb, "lb", "AISC 360-16 E3"}});
    }
    result.steps.push_back(
        {"M_c", phrase("available moment in the direction of the push"),
         std::string(foot.tube.round ? "M_n, ASD or LRFD" : "M / (M_x/M_cx + M_y/M_cy)") +
             (load.down_lb != 0.0 ? ", times 1 - P/(2 P_c), or 9/8 (1 - P/P_c) from P = 0.2 P_c" : ""),
         result.capacity, "lb in", "AISC 360-16 Eq. H1-1a, H1-1b"});
}

}  // namespace

CheckResult tube_bending(const CheckInput& input, const PostFoot& foot, const catalog::Metal& metal,
                         double free_height_in) {
    const Tube tube = tube_of(foot, metal, weld_filler(input.resolved), free_height_in);
    const TubeStrength strength = tube_strength(foot, tube, input.resolved.detail.basis);
    CheckResult result;
    result.clause = strength.clause;
    result.unit = "lb in";
    result.steps = strength.steps;
    const auto moment_of = [&](const demand::State& state) { return push_moment(input.demand, state); };
    const bool known = strength.missing.empty();
    const demand::GoverningState worst = demand::governing_state(input.demand, [&](const demand::State& state) {
        const PushMoment moment = moment_of(state);
        if (!known) return moment.total_lb_in;
        return ratio(moment.total_lb_in,
                     capacity_lb_in(strength, foot, moment, load_case(input.demand, state).down_lb));
    });
    const demand::State& state = input.demand.states.at(worst.state);
    const PushMoment moment = moment_of(state);
    result.demand = moment.total_lb_in;
    result.direction_deg = degrees(state.direction_rad);
    if (!known) {
        lacks_evidence(result, strength.missing);
        return result;
    }
    const demand::LoadCase& load = load_case(input.demand, state);
    result.capacity = capacity_lb_in(strength, foot, moment, load.down_lb);
    add_demand_steps(result, foot, strength, load, moment);
    conclude(result);
    return result;
}

}  // namespace toehold::checks
