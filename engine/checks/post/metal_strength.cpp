#include "checks/post/metal_strength.h"

#include "resistance/aluminum/bar.h"
#include "resistance/aluminum/local_buckling.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/bar.h"
#include "resistance/steel/stainless.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;
namespace aluminum = resistance::aluminum;
using catalog::MetalKind;
using steel::BentAbout;

/// The section as its metal's standard sees it.
struct Work {
    const MetalSection& of;
    BesideWeld used;
    steel::TubeSection section;  ///< of one piece, to design with
    const model::Basis& basis;
    std::string clause;
};

/// One way a section gives way in bending.
struct Limit {
    double nominal_lb_in = 0.0;
    resistance::Safety safety;
    format::Phrase meaning;
    std::string formula;
};

std::string suffix(BentAbout axis) { return axis == BentAbout::x ? "_x" : "_y"; }

bool in_aluminum(const MetalSection& section) { return section.metal.kind == MetalKind::aluminum; }
bool in_stainless(const MetalSection& section) { return section.metal.kind == MetalKind::stainless_steel; }

steel::TubeSection designed(const MetalSection& section) {
    return section_to_design(section.shape, section.solid, section.metal);
}

std::string clause_of(const MetalSection& section) {
    if (in_aluminum(section)) return "Aluminum Design Manual 2020 F (from memory)";
    if (in_stainless(section)) return "AISC 370-21 F (from memory)";
    if (section.solid) return "AISC 360-16 F11";
    return section.shape.round ? "AISC 360-16 F8" : "AISC 360-16 F7";
}

/// Width across the load and depth along it, for bending about this axis.
std::pair<double, double> across_and_along(const steel::TubeShape& shape, BentAbout axis) {
    if (axis == BentAbout::x) return {shape.width_in, shape.depth_in};
    return {shape.depth_in, shape.width_in};
}

double bar_nominal_lb_in(const Work& work, BentAbout axis) {
    const steel::Moduli about = steel::moduli(work.section, axis);
    const auto [across, along] = across_and_along(work.of.shape, axis);
    if (work.of.shape.round || along <= across)
        return steel::stocky_bar_moment_lb_in(about.section_in3, about.plastic_in3, work.used.yield_psi);
    return steel::flat_bar_moment_lb_in(across, along, work.of.free_in, work.used.yield_psi, work.of.metal.modulus_psi);
}

steel::TubeMember tube_member(const MetalSection& of) {
    return {of.shape, of.metal.yield_psi, of.metal.modulus_psi, of.free_in, of.metal.full_wall};
}

/// Absent for walls the clauses do not cover.
std::optional<double> tube_nominal_lb_in(const Work& work, BentAbout axis) {
    const MetalSection& of = work.of;
    const std::optional<double> moment = steel::tube_moment_lb_in(tube_member(of), axis);
    if (!moment || !in_stainless(of)) return moment;
    const double first_yield = of.metal.yield_psi * steel::moduli(work.section, axis).section_in3;
    switch (steel::stainless_walls(of.shape, steel::design_wall_in(of.shape.wall_in, of.metal.full_wall),
                                   of.metal.yield_psi, of.metal.modulus_psi)) {
        case steel::StainlessWalls::compact:
            return moment;
        case steel::StainlessWalls::reach_yield:
            return std::min(*moment, first_yield);
        case steel::StainlessWalls::slender:
            return std::nullopt;
    }
    return std::nullopt;
}

std::optional<std::vector<Limit>> steel_limits(const Work& work, BentAbout axis) {
    std::optional<double> nominal =
        work.of.solid ? std::optional<double>(bar_nominal_lb_in(work, axis)) : tube_nominal_lb_in(work, axis);
    if (!nominal) return std::nullopt;
    if (in_stainless(work.of) && model::stainless_bending(work.basis) == model::StainlessBending::first_yield)
        nominal = std::min(*nominal, work.used.yield_psi * steel::moduli(work.section, axis).section_in3);
    const double plastic = work.used.yield_psi * steel::moduli(work.section, axis).plastic_in3;
    const bool whole = *nominal >= plastic * (1.0 - 1e-9);
    return std::vector<Limit>{{*nominal, steel::flexure_safety, phrase("nominal moment"),
                               whole           ? "F_y Z"
                               : work.of.solid ? "no more than 1.6 F_y S, or lateral-torsional buckling"
                                               : "reduced (first yield or buckling of the walls)"}};
}

double aluminum_local_lb_in(const Work& work, BentAbout axis) {
    const MetalSection& of = work.of;
    const double base = aluminum::tube_local_moment_lb_in(of.shape, axis, of.metal.yield_psi, of.metal.modulus_psi,
                                                          aluminum::Temper::aged);
    if (!work.used.reduced) return base;
    return std::min(base, aluminum::tube_local_moment_lb_in(of.shape, axis, work.used.yield_psi, of.metal.modulus_psi,
                                                            aluminum::Temper::softened));
}

std::vector<Limit> aluminum_limits(const Work& work, BentAbout axis) {
    const MetalSection& of = work.of;
    const steel::Moduli about = steel::moduli(work.section, axis);
    const aluminum::Moment whole =
        aluminum::section_moment(about.section_in3, about.plastic_in3, {work.used.yield_psi, work.used.ultimate_psi});
    std::vector<Limit> limits = {
        {whole.yield_lb_in, aluminum::yield_safety, phrase("nominal moment, yielding"),
         "F_y Z, no more than 1.5 F_y S"},
        {whole.rupture_lb_in, aluminum::rupture_safety, phrase("nominal moment, rupture"), "F_u Z/k_t, k_t = 1"}};
    if (!of.solid) {
        const double local = aluminum_local_lb_in(work, axis);
        if (std::isfinite(local))
            limits.push_back({local, aluminum::yield_safety, phrase("nominal moment, local buckling of the walls"),
                              "F_c I_f/c_f + F_b I_w/c_w, round F_c S"});
        return limits;
    }
    const auto [across, along] = across_and_along(of.shape, axis);
    if (of.shape.round || along <= across) return limits;
    const double plastic = of.metal.yield_psi * std::min(about.plastic_in3, 1.5 * about.section_in3);
    limits.push_back({aluminum::bar_lateral_moment_lb_in(across, along, of.free_in, plastic, of.metal.yield_psi,
                                                         of.metal.modulus_psi),
                      aluminum::yield_safety, phrase("nominal moment, lateral-torsional buckling"), "F.4, C_b = 1"});
    return limits;
}

/// The limit that governs once usable, with its worked lines; of all pieces together.
Adjusted usable(const Work& work, BentAbout axis, const std::vector<Limit>& limits) {
    const steel::Moduli about = steel::moduli(work.section, axis);
    Adjusted result;
    const Limit* least = nullptr;
    for (const Limit& limit : limits) {
        const Adjusted one = available(limit.nominal_lb_in, limit.safety, work.basis, work.clause);
        if (least != nullptr && one.value >= result.value) continue;
        least = &limit;
        result = one;
    }
    if (least == nullptr) return result;
    result.steps.insert(
        result.steps.begin(),
        {{"S" + suffix(axis), phrase("elastic section modulus"), "of the section", about.section_in3, "in3", ""},
         {"Z" + suffix(axis), phrase("plastic section modulus"), "of the section", about.plastic_in3, "in3", ""},
         {"M_n" + suffix(axis), least->meaning, least->formula, least->nominal_lb_in, "lb in", work.clause}});
    result.value *= work.of.pieces;
    return result;
}

double usable_axial_lb(const Work& work) {
    const bool aluminum = in_aluminum(work.of);
    const auto nominal_lb = aluminum ? aluminum::flagpole_axial_lb : steel::flagpole_axial_lb;
    const double share = aluminum || work.of.solid ? 1.0 : steel::compressed_share(tube_member(work.of));
    return share * work.of.pieces *
           available(nominal_lb(work.section, work.of.free_in, work.used.yield_psi, work.of.metal.modulus_psi),
                     aluminum ? aluminum::yield_safety : steel::flexure_safety, work.basis, "")
               .value;
}

/// Steel whose whole section yields about both axes and which nothing makes buckle first carries its plastic moment
/// between them too: a closed tube or a stocky bar has no lateral-torsional buckling (F7.4, F11.2), and between the
/// axes no wall is more compressed than when it is the flange. H1-1 would add the two shares, as for sections whose
/// parts each serve one axis; EN 1993-1-1 6.2.9.1(6) gives hollow sections the exponent 1.66 instead, 0.93 of the
/// plastic moment on a square's diagonal.
bool plastic_between(const Work& work, const std::array<const std::vector<Limit>*, 2>& limits) {
    if (work.of.shape.round || work.of.metal.kind != MetalKind::carbon_steel) return false;
    if (model::tube_diagonal(work.basis) == model::TubeDiagonal::linear) return false;
    const double yield_psi = work.used.yield_psi;
    for (const BentAbout axis : {BentAbout::x, BentAbout::y}) {
        const steel::Moduli about = steel::moduli(work.section, axis);
        const double whole = work.of.solid
                                 ? steel::stocky_bar_moment_lb_in(about.section_in3, about.plastic_in3, yield_psi)
                                 : yield_psi * about.plastic_in3;
        const double nominal = limits[axis == BentAbout::x ? 0 : 1]->front().nominal_lb_in;
        if (nominal < whole * (1.0 - 1e-9)) return false;
    }
    return true;
}

void add_between(MetalStrength& strength, const Work& work) {
    const MetalSection& of = work.of;
    const steel::HollowRectangle shape =
        of.solid ? steel::HollowRectangle{of.shape.width_in, of.shape.depth_in, of.shape.wall_in, 0.0}
                 : steel::design_shape(of.shape, of.metal.full_wall);
    const double psi = of.pieces * available(work.used.yield_psi, steel::flexure_safety, work.basis, work.clause).value;
    strength.between.emplace(MetalStrength::Between{steel::PlasticSection(shape), psi, 0.0, 0.0});
    if (of.solid) {
        constexpr double most = 1.6;
        strength.between->most_x_lb_in = most * psi * work.section.section_x_in3;
        strength.between->most_y_lb_in = most * psi * work.section.section_y_in3;
    }
    const double equal = std::sqrt(0.5);
    append(strength.steps, {{"M_c45", phrase("available moment about an axis at 45 degrees"),
                             of.solid ? "F_y Z about that axis, no more than 1.6 F_y S, ASD or LRFD"
                                      : "F_y Z about that axis, ASD or LRFD",
                             moment_capacity_lb_in(strength, equal, equal), "lb in", work.clause}});
}

/// Of a steel tube: the widest wall, where it is slender, and how much of it works.
void add_slender_wall(std::vector<Step>& steps, const MetalSection& of) {
    const double wall_in = steel::design_wall_in(of.shape.wall_in, of.metal.full_wall);
    const double flat_in = std::max(of.shape.width_in, of.shape.depth_in) - 3.0 * wall_in;
    const double works_in = steel::effective_wall_in(flat_in, wall_in, of.metal.yield_psi, of.metal.modulus_psi);
    if (!of.shape.round && works_in < flat_in) {
        append(steps, {{"b", phrase("flat width of the widest wall, which is slender"), "outside less 3 t", flat_in,
                        "in", "AISC 360-16 B4.1b"},
                       {"b_e", phrase("what works of it in compression"),
                        "1.92 t sqrt(E/F_y) (1 - 0.38 sqrt(E/F_y)/(b/t))", works_in, "in", "AISC 360-16 Eq. F7-4"}});
    }
    const double share = steel::compressed_share(tube_member(of));
    if (share < 1.0)
        steps.push_back({"A_e/A", phrase("share of the area that counts in axial compression"), "slender walls", share,
                         "", "AISC 360-16 E7"});
}

std::vector<Step> first_steps(const Work& work) {
    const MetalSection& of = work.of;
    std::vector<Step> steps;
    if (!of.solid) steps.push_back(from_file("t_w", phrase("wall thickness"), of.shape.wall_in, "in"));
    if (in_aluminum(of)) {
        steps.push_back(ultimate_step(of.metal, work.used));
    } else if (!of.solid) {
        steps.push_back({"t", phrase("design wall thickness; outside corner radius 2 t"),
                         of.metal.full_wall ? "t_w" : "0.93 t_w",
                         steel::design_wall_in(of.shape.wall_in, of.metal.full_wall), "in", "AISC 360-16 B4.2"});
        add_slender_wall(steps, of);
    }
    steps.push_back(yield_step(of.metal, work.used));
    if (of.pieces > 1) steps.push_back(from_file("n", phrase("bars side by side, each bent alone"), of.pieces, ""));
    return steps;
}

}  // namespace

steel::TubeSection section_to_design(const steel::TubeShape& shape, bool solid, const catalog::Metal& metal) {
    if (solid || metal.kind == MetalKind::aluminum) return steel::section_as_drawn(shape);
    return steel::design_section(shape, metal.full_wall);
}

MetalStrength metal_strength(const MetalSection& section, const model::Basis& basis) {
    const Work work{section, strengths(section.metal, section.welding), designed(section), basis, clause_of(section)};
    MetalStrength strength;
    strength.round = section.shape.round;
    strength.clause = work.clause;
    strength.missing = work.used.missing;
    if (!strength.missing.empty()) return strength;
    strength.steps = first_steps(work);
    const auto limits_about = [&](BentAbout axis) -> std::optional<std::vector<Limit>> {
        if (in_aluminum(section)) return aluminum_limits(work, axis);
        return steel_limits(work, axis);
    };
    const std::optional<std::vector<Limit>> limits_x = limits_about(BentAbout::x);
    const std::optional<std::vector<Limit>> limits_y = limits_about(BentAbout::y);
    if (!limits_x || !limits_y) {
        strength.missing = phrase("The tube wall is too slender for the clauses this check uses.");
        return strength;
    }
    const Adjusted about_x = usable(work, BentAbout::x, *limits_x);
    const Adjusted about_y = usable(work, BentAbout::y, *limits_y);
    strength.about_x_lb_in = about_x.value;
    strength.about_y_lb_in = about_y.value;
    append(strength.steps, about_x.steps);
    if (!section.shape.round && section.shape.width_in != section.shape.depth_in) append(strength.steps, about_y.steps);
    strength.axial_lb = usable_axial_lb(work);
    if (plastic_between(work, {&*limits_x, &*limits_y})) add_between(strength, work);
    return strength;
}

double moment_capacity_lb_in(const MetalStrength& strength, double about_x, double about_y) {
    const double total = std::hypot(about_x, about_y);
    if (!(total > 0.0)) return std::min(strength.about_x_lb_in, strength.about_y_lb_in);
    if (strength.round) return strength.about_x_lb_in;
    const auto linear = [&](double most_x, double most_y) { return total / (about_x / most_x + about_y / most_y); };
    if (!strength.between) return linear(strength.about_x_lb_in, strength.about_y_lb_in);
    const double plastic = strength.between->psi * strength.between->section.about(std::atan2(about_y, about_x));
    if (!(strength.between->most_x_lb_in > 0.0)) return plastic;
    return std::min(plastic, linear(strength.between->most_x_lb_in, strength.between->most_y_lb_in));
}

}  // namespace toehold::checks
