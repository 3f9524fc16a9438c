#include "demand/anchor_stiffness.h"

#include "catalog/fastened.h"

#include <algorithm>
#include <numbers>
#include <variant>

namespace toehold::demand {
namespace {

using format::Phrase;
using format::phrase;
using format::Quantity;

// Wood Handbook (FPL-GTR-190, 2010) Table 5-1 gives E_T/E_L of .050 for Douglas-fir; a twentieth is common practice.
constexpr double across_over_along = 0.05;
constexpr double steel_modulus_psi = 29e6;
constexpr double mm_per_in = 25.4;
constexpr double lb_per_in_of_newton_per_mm = 5.7101471627692;  // 25.4 / 4.4482216152605

double area_in2(double diameter_in) { return 0.25 * std::numbers::pi * diameter_in * diameter_in; }

/// Slip modulus of a screw in withdrawal across the grain: 25 d l in N/mm with d and l in mm, the form product
/// approvals of wood screws commonly give (common practice, from memory). Softer published forms exist; the stiffer
/// one gives the larger tension.
double thread_stiffness_lb_per_in(double diameter_in, double thread_in) {
    return 25.0 * (diameter_in * mm_per_in) * (thread_in * mm_per_in) * lb_per_in_of_newton_per_mm;
}

double wood_across_modulus_psi(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!anchor.seat) return 0.0;
    return across_over_along * catalog::wood(resolved, anchor.seat->member).grade.modulus_psi;
}

double bearing_area_below_in2(const catalog::Anchor& anchor) {
    const double hole = area_in2(anchor.diameter_in + 0.0625);
    if (anchor.backing) return anchor.backing->width_in * anchor.backing->depth_in - hole;
    const double width = anchor.washer_below ? anchor.washer_below->outside_diameter_in : anchor.head_width_in;
    return std::max(area_in2(width) - hole, 0.25 * hole);
}

double modulus_psi(const catalog::Metal& metal) {
    return metal.modulus_psi > 0.0 ? metal.modulus_psi : steel_modulus_psi;
}

Stiffness bolt_stiffness(const catalog::Resolved& resolved, const catalog::Anchor& anchor, double above_block_in) {
    const double wood_psi = wood_across_modulus_psi(resolved, anchor);
    const double depth_in = anchor.seat ? model::member(resolved.detail.framing, anchor.seat->member).depth_in : 0.0;
    double flexibility = (above_block_in + depth_in) / (modulus_psi(anchor.metal) * area_in2(anchor.diameter_in));
    if (wood_psi > 0.0) flexibility += depth_in / (wood_psi * bearing_area_below_in2(anchor));
    return {1.0 / flexibility,
            phrase("stretch of the bolt and the block's squeeze over what the nut bears on, in series")};
}

Stiffness screw_stiffness(const catalog::Anchor& anchor, double above_block_in) {
    const double least_thread_in = 4.0 * anchor.diameter_in;
    const bool holds = anchor.thread_in_block_in > 0.0;
    const double thread_in = holds ? anchor.thread_in_block_in : least_thread_in;
    const double slip = thread_stiffness_lb_per_in(anchor.diameter_in, thread_in);
    const double shank = modulus_psi(anchor.metal) * area_in2(anchor.root_diameter_in) / above_block_in;
    Phrase source = phrase(
        "thread slip 25 d l N/mm (common practice, from memory) and stretch of the shank above the block, in series");
    if (!holds)
        source =
            phrase("{}; it holds in no block, so 4 D of thread is taken for its stiffness only", std::move(source));
    return {1.0 / (1.0 / slip + 1.0 / shank), std::move(source)};
}

}  // namespace

Stiffness bed_stiffness(const catalog::Resolved& resolved, double below_modulus_psi, double below_depth_in) {
    double flexibility = 0.0;
    format::Listed of;
    const model::Layers& layers = on_deck(resolved.detail).layers;
    if (layers.decking && on_deck(resolved).decking) {
        flexibility += layers.decking->thickness_in / on_deck(resolved).decking->modulus_perp_psi;
        of.items.push_back(phrase("decking {} at {}", Quantity{layers.decking->thickness_in, "in"},
                                  Quantity{on_deck(resolved).decking->modulus_perp_psi, "psi"}));
    }
    for (std::size_t index = 0; index < layers.shims.size(); ++index) {
        flexibility += layers.shims[index].thickness_in / on_deck(resolved).shims.at(index).modulus_perp_psi;
        of.items.push_back(phrase("shim {} at {}", Quantity{layers.shims[index].thickness_in, "in"},
                                  Quantity{on_deck(resolved).shims.at(index).modulus_perp_psi, "psi"}));
    }
    if (below_depth_in > 0.0) {
        const double across_psi = across_over_along * below_modulus_psi;
        flexibility += below_depth_in / across_psi;
        of.items.push_back(
            phrase("framing {} at E/20 = {}", Quantity{below_depth_in, "in"}, Quantity{across_psi, "psi"}));
    }
    if (!(flexibility > 0.0)) return {0.0, phrase("nothing to bear on")};
    return {1.0 / flexibility, phrase("{}, in series, no spread", std::move(of))};
}

Stiffness anchor_stiffness(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const double above_block_in = catalog::above_member_in(resolved, anchor);
    // A bolt that no block is under has nothing for its nut to bear on: like any anchor that misses, it gets a nominal
    // hold.
    if (anchor.kind == catalog::FastenerKind::through_bolt && anchor.seat)
        return bolt_stiffness(resolved, anchor, above_block_in);
    return screw_stiffness(anchor, above_block_in);
}

}  // namespace toehold::demand
