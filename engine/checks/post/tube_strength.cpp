#include "checks/post/tube_strength.h"

#include "checks/anchor/seating.h"
#include "resistance/aluminum/flexure.h"
#include "resistance/steel/compression.h"
#include "resistance/steel/flexure.h"
#include "resistance/steel/tube_section.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::checks {
namespace {

namespace steel = resistance::steel;
namespace aluminum = resistance::aluminum;
using catalog::MetalKind;

constexpr double flagpole_length_factor = 2.1;  // AISC 360-16 Commentary Table C-A-7.1, case (e)

/// One of the two axes of a tube.
struct Axis {
    char name = 'x';
    double section_in3 = 0.0;
    double plastic_in3 = 0.0;
    double other_radius_in = 0.0;
    double flange_in = 0.0;  ///< outside width of the wall in compression
    double web_in = 0.0;     ///< outside width of the walls along the load
};

Axis axis(const PostFoot& foot, const steel::TubeSection& section, char name) {
    const bool about_x = name == 'x';
    const double other_inertia = about_x ? section.inertia_y_in4 : section.inertia_x_in4;
    return {name,
            about_x ? section.section_x_in3 : section.section_y_in3,
            about_x ? section.plastic_x_in3 : section.plastic_y_in3,
            std::sqrt(other_inertia / section.area_in2),
            about_x ? foot.width_in : foot.depth_in,
            about_x ? foot.depth_in : foot.width_in};
}

double least_radius_in(const steel::TubeSection& section) {
    return std::sqrt(std::min(section.inertia_x_in4, section.inertia_y_in4) / section.area_in2);
}

/// A tube as one metal's standard sees it.
struct Tube {
    const PostFoot& foot;
    const catalog::Metal& metal;
    BesideWeld used;
    double wall_in = 0.0;
    steel::TubeSection section;
    double free_height_in = 0.0;
};

std::optional<double> steel_moment(const Tube& tube, const Axis& about) {
    const double yield = tube.metal.yield_psi;
    const double modulus = tube.metal.modulus_psi;
    if (tube.foot.round) {
        return steel::round_tube_moment_lb_in(tube.foot.width_in, tube.wall_in, about.section_in3, about.plastic_in3,
                                              yield, modulus);
    }
    // Flat widths less three walls: AISC 360-16 B4.1b(d), corner radius not known.
    const double corners_in = 3.0 * tube.wall_in;
    return steel::rectangular_tube_moment_lb_in(
        {about.flange_in - corners_in, about.web_in - corners_in, tube.wall_in, about.section_in3, about.plastic_in3,
         about.other_radius_in, tube.section.area_in2, tube.section.torsion_in4, about.web_in > about.flange_in,
         tube.free_height_in},
        yield, modulus);
}

/// Compact by the limits of carbon steel, and no more than first yield.
std::optional<double> stainless_moment(const Tube& tube, const Axis& about) {
    const std::optional<double> moment = steel_moment(tube, about);
    if (!moment || *moment < tube.metal.yield_psi * about.plastic_in3 * (1.0 - 1e-9)) return std::nullopt;
    return tube.metal.yield_psi * about.section_in3;
}

/// Usable moment about an axis with its worked lines.
Adjusted usable_in_steel(const Tube& tube, const Axis& about, double nominal, const model::Basis& basis) {
    const std::string clause = steel_clause(tube.metal, tube.foot.round ? "AISC 360-16 F8" : "AISC 360-16 F7");
    const std::string suffix = std::string("_") + about.name;
    const bool plastic = nominal >= tube.metal.yield_psi * about.plastic_in3 * (1.0 - 1e-9);
    Adjusted result = available(nominal, steel::flexure_safety, basis, "AISC 360-16 F1");
    result.steps.insert(
        result.steps.begin(),
        {{"S" + suffix, "elastic modulus", "of the tube", about.section_in3, "in3", ""},
         {"Z" + suffix, "plastic modulus", "of the tube", about.plastic_in3, "in3", ""},
         {"M_n" + suffix, "nominal moment", plastic ? "F_y Z: compact walls" : "reduced: first yield or buckling",
          nominal, "lb in", clause}});
    return result;
}

Adjusted usable_in_aluminum(const Tube& tube, const Axis& about, const model::Basis& basis) {
    const std::string clause = "Aluminum Design Manual 2020 F (from memory)";
    const std::string suffix = std::string("_") + about.name;
    const aluminum::Moment nominal =
        aluminum::tube_moment(about.section_in3, about.plastic_in3, {tube.used.yield_psi, tube.used.ultimate_psi});
    const Adjusted yielding = available(nominal.yield_lb_in, aluminum::yield_safety, basis, clause);
    const Adjusted rupture = available(nominal.rupture_lb_in, aluminum::rupture_safety, basis, clause);
    const bool yields = yielding.value <= rupture.value;
    Adjusted result = yields ? yielding : rupture;
    result.steps.insert(
        result.steps.begin(),
        {{"S" + suffix, "elastic modulus", "of the tube", about.section_in3, "in3", ""},
         {"Z" + suffix, "plastic modulus", "of the tube", about.plastic_in3, "in3", ""},
         {"M_n" + suffix, yields ? "nominal moment at yielding" : "nominal moment at rupture",
          yields ? "F_y S" : "F_u Z", yields ? nominal.yield_lb_in : nominal.rupture_lb_in, "lb in", clause}});
    return result;
}

bool stocky(const Tube& tube) {
    const double yield = tube.metal.yield_psi;
    const double modulus = tube.metal.modulus_psi;
    if (tube.foot.round)
        return 0.5 * (tube.foot.width_in - tube.wall_in) / tube.wall_in <= aluminum::round_wall_limit(yield, modulus);
    const double widest_in = std::max(tube.foot.width_in, tube.foot.depth_in) - 2.0 * tube.wall_in;
    return widest_in / tube.wall_in <= aluminum::flat_wall_limit(yield, modulus);
}

std::optional<Adjusted> usable_moment(const Tube& tube, const Axis& about, const model::Basis& basis) {
    if (tube.metal.kind == MetalKind::aluminum) {
        if (!stocky(tube)) return std::nullopt;
        return usable_in_aluminum(tube, about, basis);
    }
    const std::optional<double> nominal =
        tube.metal.kind == MetalKind::stainless_steel ? stainless_moment(tube, about) : steel_moment(tube, about);
    if (!nominal) return std::nullopt;
    return usable_in_steel(tube, about, *nominal, basis);
}

double usable_axial_lb(const Tube& tube, const model::Basis& basis) {
    const double slenderness =
        std::max(1.0, flagpole_length_factor * tube.free_height_in / least_radius_in(tube.section));
    const double stress_psi = steel::buckling_stress_psi(slenderness, tube.used.yield_psi, tube.metal.modulus_psi);
    const bool in_aluminum = tube.metal.kind == MetalKind::aluminum;
    // Aluminum: the same curve on the welded yield, with the 0.85 of E.2 for out-of-straightness (from memory).
    const double nominal_lb = (in_aluminum ? 0.85 : 1.0) * stress_psi * tube.section.area_in2;
    return available(nominal_lb, in_aluminum ? aluminum::yield_safety : steel::flexure_safety, basis, "").value;
}

Tube tube_of(const PostFoot& foot, const catalog::Metal& metal, double free_height_in) {
    const bool in_aluminum = metal.kind == MetalKind::aluminum;
    const double wall_in = in_aluminum ? foot.wall_in : steel::design_wall_in(foot.wall_in);
    const double corner_in = in_aluminum ? 0.0 : std::min(2.0 * wall_in, 0.5 * std::min(foot.width_in, foot.depth_in));
    return {foot,
            metal,
            strengths(metal, foot.welded),
            wall_in,
            foot.round ? steel::round_section(foot.width_in, wall_in)
                       : steel::rectangular_section(foot.width_in, foot.depth_in, wall_in, corner_in),
            free_height_in};
}

std::vector<Step> tube_steps(const Tube& tube) {
    std::vector<Step> steps = {{"t_w", "wall", "given", tube.foot.wall_in, "in", "input"}};
    if (tube.metal.kind == MetalKind::aluminum) {
        steps.push_back(ultimate_step(tube.metal, tube.used));
    } else {
        steps.push_back(
            {"t", "design wall; outside corners of 2 t", "0.93 t_w", tube.wall_in, "in", "AISC 360-16 B4.2"});
    }
    steps.push_back(yield_step(tube.metal, tube.used));
    return steps;
}

}  // namespace

TubeStrength tube_strength(const PostFoot& foot, const catalog::Metal& metal, double free_height_in,
                           const model::Basis& basis) {
    const Tube tube = tube_of(foot, metal, free_height_in);
    TubeStrength strength;
    strength.clause = metal.kind == MetalKind::aluminum
                          ? "Aluminum Design Manual 2020 F (from memory)"
                          : steel_clause(metal, foot.round ? "AISC 360-16 F8" : "AISC 360-16 F7");
    strength.missing = tube.used.missing;
    if (!strength.missing.empty()) return strength;
    strength.steps = tube_steps(tube);
    const std::optional<Adjusted> about_x = usable_moment(tube, axis(foot, tube.section, 'x'), basis);
    const std::optional<Adjusted> about_y = usable_moment(tube, axis(foot, tube.section, 'y'), basis);
    if (!about_x || !about_y) {
        strength.missing = "The tube's wall is too slender for the rules this check stands on.";
        return strength;
    }
    strength.about_x_lb_in = about_x->value;
    strength.about_y_lb_in = about_y->value;
    append(strength.steps, about_x->steps);
    if (!foot.round && foot.width_in != foot.depth_in) append(strength.steps, about_y->steps);
    strength.axial_lb = usable_axial_lb(tube, basis);
    return strength;
}

}  // namespace toehold::checks
