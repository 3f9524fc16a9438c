#include "checks/post/weld_strength.h"

#include "checks/post/filler.h"
#include "resistance/aluminum/connection.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/connecting_element.h"
#include "resistance/steel/tube.h"
#include "resistance/steel/weld.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

namespace aluminum = resistance::aluminum;
namespace steel = resistance::steel;
using catalog::MetalKind;
using model::WeldKind;

// Fillet welds in austenitic stainless steel, AISC Design Guide 27, 2013, from memory, to be confirmed.
constexpr resistance::Safety stainless_weld_safety{2.70, 0.55};

/// A nominal strength with its step made usable, and the line that says so.
double use(WeldStrength& strength, Step nominal, const resistance::Safety& safety, const model::Basis& basis) {
    const double value = nominal.value;
    Adjusted usable = available(value, safety, basis, nominal.clause);
    usable.steps.front().meaning = phrase("{}, for {}", usable.steps.front().meaning, nominal.symbol);
    strength.steps.push_back(std::move(nominal));
    append(strength.steps, usable.steps);
    return usable.value;
}

double faces(const model::Weld& weld) { return weld.faces == model::WeldFaces::both ? 2.0 : 1.0; }

void add_both_faces(WeldStrength& strength, const model::Weld& weld) {
    if (weld.faces == model::WeldFaces::top) return;
    strength.steps.push_back(from_file("n", phrase("welds along each line, above and below the plate"), 2.0, ""));
}

std::string times_faces(const model::Weld& weld, std::string formula) {
    return weld.faces == model::WeldFaces::both ? std::move(formula) + " x 2" : formula;
}

/// The weld's own metal; a complete penetration groove of matching filler is as strong as what it joins (Table J2.5).
void add_steel_metal(WeldStrength& strength, const model::Weld& weld, const catalog::Filler& filler,
                     const model::Basis& basis) {
    const bool stainless = filler.kind == MetalKind::stainless_steel;
    const resistance::Safety safety = stainless ? stainless_weld_safety : steel::weld_safety;
    strength.clause_of_metal = stainless ? "AISC Design Guide 27 (from memory)" : "AISC 360-16 J2.4";
    if (weld.kind == WeldKind::complete_penetration) return;
    const bool fillet = weld.kind == WeldKind::fillet;
    const double nominal = faces(weld) * (fillet ? steel::weld_metal_lb_per_in(weld.leg_in, filler.strength_psi)
                                                 : steel::groove_metal_lb_per_in(weld.throat_in, filler.strength_psi));
    strength.metal = use(strength,
                         {"r_w", phrase("nominal strength, weld metal"),
                          times_faces(weld, fillet ? "0.60 F_EXX x 0.707 l" : "0.60 F_EXX E"), nominal, "lb/in",
                          strength.clause_of_metal},
                         safety, basis);
}

/// The post's wall by direction: a force along the post pulls it, one along the plate shears it.
void add_steel_wall(WeldStrength& strength, const WeldParts& parts, const model::Basis& basis) {
    const bool as_drawn = parts.solid || parts.post.full_wall;
    const double wall_in = as_drawn ? parts.post_wall_in : steel::design_wall_in(parts.post_wall_in);
    strength.steps.push_back(from_file("t_w", phrase("post wall thickness"), parts.post_wall_in, "in"));
    strength.steps.push_back(
        {"t", phrase("design wall thickness"), as_drawn ? "t_w" : "0.93 t_w", wall_in, "in", "AISC 360-16 B4.2"});
    const std::string tension = steel_clause(parts.post, "AISC 360-16 J4.1");
    const std::string shear = steel_clause(parts.post, "AISC 360-16 J4.2");
    const double yield = parts.post.yield_psi, ultimate = parts.post.ultimate_psi;
    strength.wall_normal = std::min(use(strength,
                                        {"r_ty", phrase("nominal tension yielding, post wall"), "F_y t",
                                         steel::tension_yield_lb_per_in(wall_in, yield), "lb/in", tension},
                                        steel::tension_yield_safety, basis),
                                    use(strength,
                                        {"r_tu", phrase("nominal tension rupture, post wall"), "F_u t",
                                         steel::tension_rupture_lb_per_in(wall_in, ultimate), "lb/in", tension},
                                        steel::element_rupture_safety, basis));
    strength.wall_shear = std::min(use(strength,
                                       {"r_vy", phrase("nominal shear yielding, post wall"), "0.60 F_y t",
                                        steel::shear_yield_lb_per_in(wall_in, yield), "lb/in", shear},
                                       steel::shear_yield_safety, basis),
                                   use(strength,
                                       {"r_vu", phrase("nominal shear rupture, post wall"), "0.60 F_u t",
                                        steel::shear_rupture_lb_per_in(wall_in, ultimate), "lb/in", shear},
                                       steel::element_rupture_safety, basis));
}

void add_steel_plate(WeldStrength& strength, const WeldParts& parts, const model::Basis& basis) {
    strength.steps.push_back(from_file("t_p", phrase("plate thickness"), parts.plate_in, "in"));
    strength.plate = use(strength,
                         {"r_plate", phrase("nominal shear rupture, plate"), "0.60 F_u t_p",
                          steel::shear_rupture_lb_per_in(parts.plate_in, parts.plate.ultimate_psi), "lb/in",
                          steel_clause(parts.plate, "AISC 360-16 J4.2")},
                         steel::element_rupture_safety, basis);
}

/// A groove's filler is counted in shear on its throat; a complete one has the wall's thickness.
void add_aluminum(WeldStrength& strength, const model::Weld& weld, const catalog::Filler& filler,
                  const WeldParts& parts, const std::array<double, 2>& ultimate_psi, const model::Basis& basis) {
    const std::string clause = "Aluminum Design Manual 2020 J.2.2 (from memory)";
    strength.clause_of_metal = clause;
    const bool fillet = weld.kind == WeldKind::fillet;
    const double throat_in = weld.kind == WeldKind::complete_penetration ? parts.post_wall_in : weld.throat_in;
    const double filler_lb_per_in =
        fillet ? aluminum::weld_filler_lb_per_in(weld.leg_in, filler.strength_psi) : throat_in * filler.strength_psi;
    strength.metal =
        use(strength,
            {"r_w", phrase("nominal shear strength, filler"), times_faces(weld, fillet ? "F_sw x 0.707 l" : "F_sw E"),
             faces(weld) * filler_lb_per_in, "lb/in", clause},
            aluminum::rupture_safety, basis);
    const double along_in = fillet ? faces(weld) * weld.leg_in : throat_in;
    strength.steps.push_back(from_file("t", phrase("post wall thickness"), parts.post_wall_in, "in"));
    strength.wall_normal = strength.wall_shear =
        use(strength,
            {"r_post", phrase("nominal shear strength, post beside the weld"), "0.6 F_tuw min(l, t)",
             aluminum::weld_base_metal_lb_per_in(along_in, parts.post_wall_in, ultimate_psi[0]), "lb/in", clause},
            aluminum::rupture_safety, basis);
    strength.plate =
        use(strength,
            {"r_plate", phrase("nominal shear strength, plate beside the weld"), "0.6 F_tuw min(l, t)",
             aluminum::weld_base_metal_lb_per_in(along_in, parts.plate_in, ultimate_psi[1]), "lb/in", clause},
            aluminum::rupture_safety, basis);
}

void add_sizes(WeldStrength& strength, const model::Weld& weld, const catalog::Filler& filler) {
    if (weld.kind == WeldKind::fillet)
        strength.steps.push_back(from_file("l", phrase("fillet leg size"), weld.leg_in, "in"));
    if (weld.kind == WeldKind::partial_penetration)
        strength.steps.push_back(from_file("E", phrase("effective throat of the groove"), weld.throat_in, "in"));
    add_both_faces(strength, weld);
    strength.steps.push_back(given(filler.kind == MetalKind::aluminum ? "F_sw" : "F_EXX", format::verbatim(filler.name),
                                   filler.strength_psi, "psi", filler.source.text));
}

}  // namespace

WeldStrength weld_strength(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts,
                           const model::Basis& basis) {
    WeldStrength strength;
    if (match(filler.kind, parts.post.kind, parts.plate.kind) != FillerMatch::matches) {
        strength.missing = phrase("{} is not a filler metal for a weld between {} and {}.", filler.name,
                                  parts.post.name, parts.plate.name);
        return strength;
    }
    const BesideWeld post = strengths(parts.post, {true, &filler, parts.post_wall_in});
    const BesideWeld plate = strengths(parts.plate, {true, &filler, parts.plate_in});
    strength.missing = post.missing.empty() ? plate.missing : post.missing;
    if (!strength.missing.empty()) return strength;
    add_sizes(strength, weld, filler);
    if (weld.kind == WeldKind::partial_penetration) strength.peak = steel::groove_peak;
    if (filler.kind == MetalKind::aluminum) {
        add_aluminum(strength, weld, filler, parts, {post.ultimate_psi, plate.ultimate_psi}, basis);
    } else {
        add_steel_metal(strength, weld, filler, basis);
        add_steel_wall(strength, parts, basis);
        add_steel_plate(strength, parts, basis);
    }
    return strength;
}

double WeldUse::most() const { return std::max({metal, wall, plate}); }

WeldGoverns WeldUse::governs() const {
    if (metal >= wall && metal >= plate) return WeldGoverns::metal;
    return wall >= plate ? WeldGoverns::wall : WeldGoverns::plate;
}

WeldUse weld_use(const WeldStrength& strength, const steel::WeldIntensity& force) {
    const double raised = std::hypot(strength.peak * force.bending + force.axial, force.shear);
    return {raised / strength.metal,
            std::hypot(force.normal() / strength.wall_normal, force.shear / strength.wall_shear),
            force.resultant() / strength.plate};
}

}  // namespace toehold::checks
