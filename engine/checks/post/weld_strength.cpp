#include "checks/post/weld_strength.h"

#include "checks/anchor/seating.h"
#include "resistance/aluminum/connection.h"
#include "resistance/aluminum/flexure.h"
#include "resistance/steel/fillet_weld.h"

#include <algorithm>
#include <array>

namespace toehold::checks {
namespace {

using catalog::MetalKind;

// Fillet welds in austenitic stainless steel, AISC Design Guide 27, 2013, from memory, to be confirmed.
constexpr resistance::Safety stainless_weld_safety{2.70, 0.55};

/// One way the weld can break.
struct Line {
    Step step;  ///< nominal, lb/in
    resistance::Safety safety;
};

bool belong_together(MetalKind filler, const WeldParts& parts) {
    const bool any_aluminum = filler == MetalKind::aluminum || parts.post.kind == MetalKind::aluminum ||
                              parts.plate.kind == MetalKind::aluminum;
    const bool all_aluminum = filler == MetalKind::aluminum && parts.post.kind == MetalKind::aluminum &&
                              parts.plate.kind == MetalKind::aluminum;
    if (any_aluminum) return all_aluminum;
    const bool any_stainless =
        parts.post.kind == MetalKind::stainless_steel || parts.plate.kind == MetalKind::stainless_steel;
    return !any_stainless || filler == MetalKind::stainless_steel;
}

std::array<Line, 3> steel_lines(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts) {
    namespace steel = resistance::steel;
    const bool stainless = filler.kind == MetalKind::stainless_steel;
    const resistance::Safety safety = stainless ? stainless_weld_safety : steel::weld_safety;
    const std::string clause = stainless ? "AISC Design Guide 27 (from memory)" : "AISC 360-16 J2.4";
    return {
        {{{"r_w", "nominal strength of the weld metal", "0.60 F_EXX x 0.707 l",
           steel::weld_metal_lb_per_in(weld.leg_in, filler.strength_psi), "lb/in", clause},
          safety},
         {{"r_post", "nominal shear rupture of the post's wall", "0.60 F_u t",
           steel::base_metal_lb_per_in(parts.post_wall_in, parts.post.ultimate_psi), "lb/in", "AISC 360-16 J2.4, J4.2"},
          steel::weld_safety},
         {{"r_plate", "nominal shear rupture of the plate", "0.60 F_u t",
           steel::base_metal_lb_per_in(parts.plate_in, parts.plate.ultimate_psi), "lb/in", "AISC 360-16 J2.4, J4.2"},
          steel::weld_safety}}};
}

std::array<Line, 3> aluminum_lines(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts,
                                   double post_ultimate_psi, double plate_ultimate_psi) {
    namespace aluminum = resistance::aluminum;
    const std::string clause = "Aluminum Design Manual 2020 J.2.2 (from memory)";
    return {
        {{{"r_w", "nominal strength of the filler in shear", "F_sw x 0.707 l",
           aluminum::weld_filler_lb_per_in(weld.leg_in, filler.strength_psi), "lb/in", clause},
          aluminum::rupture_safety},
         {{"r_post", "nominal shear of the post beside the weld", "0.6 F_tuw l, l at most the wall",
           aluminum::weld_base_metal_lb_per_in(weld.leg_in, parts.post_wall_in, post_ultimate_psi), "lb/in", clause},
          aluminum::rupture_safety},
         {{"r_plate", "nominal shear of the plate beside the weld", "0.6 F_tuw l, l at most the plate",
           aluminum::weld_base_metal_lb_per_in(weld.leg_in, parts.plate_in, plate_ultimate_psi), "lb/in", clause},
          aluminum::rupture_safety}}};
}

void add_governing(Capacity& capacity, const std::array<Line, 3>& lines, const model::Basis& basis) {
    bool first = true;
    Adjusted least;
    for (const Line& line : lines) {
        capacity.steps.push_back(line.step);
        const Adjusted usable = available(line.step.value, line.safety, basis, line.step.clause);
        if (first || usable.value < least.value) {
            least = usable;
            capacity.clause = line.step.clause;
            least.steps.front().meaning += ", for " + line.step.symbol + ", which governs";
        }
        first = false;
    }
    append(capacity.steps, least.steps);
    capacity.value = least.value;
    capacity.steps.push_back(
        {"r_c", "usable force per inch of weld", "the least of the three, made usable", capacity.value, "lb/in", ""});
}

}  // namespace

Capacity weld_strength(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts,
                       const model::Basis& basis) {
    Capacity capacity;
    capacity.clause = "AISC 360-16 J2.4";
    if (!belong_together(filler.kind, parts)) {
        capacity.missing =
            filler.name + " is no filler for a weld between " + parts.post.name + " and " + parts.plate.name + ".";
        return capacity;
    }
    const bool in_aluminum = filler.kind == MetalKind::aluminum;
    const BesideWeld post = strengths(parts.post, true);
    const BesideWeld plate = strengths(parts.plate, true);
    capacity.missing = post.missing.empty() ? plate.missing : post.missing;
    if (!capacity.missing.empty()) return capacity;
    capacity.steps = {
        {"l", "leg of the fillet", "given", weld.leg_in, "in", "input"},
        {in_aluminum ? "F_sw" : "F_EXX", filler.name, "given", filler.strength_psi, "psi", filler.source.text},
        {"t", "post's wall", "given", parts.post_wall_in, "in", "input"}};
    add_governing(capacity,
                  in_aluminum ? aluminum_lines(weld, filler, parts, post.ultimate_psi, plate.ultimate_psi)
                              : steel_lines(weld, filler, parts),
                  basis);
    return capacity;
}

}  // namespace toehold::checks
