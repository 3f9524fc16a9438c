#include "demand/anchor_stiffness.h"

#include "catalog/anchor_view.h"
#include "catalog/fastened.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

namespace toehold::demand {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;

constexpr double steel_modulus_psi = 29e6;
constexpr double mm_per_in = 25.4;
constexpr double lb_per_in_of_newton_per_mm = 5.710147154732646;  // 25.4 / 4.4482216152605

double area_in2(double diameter_in) { return 0.25 * std::numbers::pi * diameter_in * diameter_in; }

/// What one bolt of those on a common lower plate presses on.
double lower_plate_share_in2(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const auto bolts = std::count_if(resolved.anchors.begin(), resolved.anchors.end(),
                                     [&](const catalog::Anchor& one) { return one.group == anchor.group; });
    return anchor.lower->width_in * anchor.lower->depth_in / static_cast<double>(bolts);
}

double bearing_area_below_in2(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const double hole = area_in2(anchor.diameter_in + 0.0625);
    if (anchor.lower) return std::max(lower_plate_share_in2(resolved, anchor) - hole, 0.25 * hole);
    if (anchor.backing) return anchor.backing->width_in * anchor.backing->depth_in - hole;
    const double width = anchor.washer_below ? anchor.washer_below->outside_diameter_in : anchor.head_width_in;
    return std::max(area_in2(width) - hole, 0.25 * hole);
}

double modulus_psi(const catalog::Metal& metal) {
    return metal.modulus_psi > 0.0 ? metal.modulus_psi : steel_modulus_psi;
}

/// Of two ends, or their geometric mean.
double between(double soft, double stiff, RangeEnd end) {
    if (end == RangeEnd::central) return std::sqrt(soft * stiff);
    return end == RangeEnd::soft ? soft : stiff;
}

double in_series(double one, double other) { return 1.0 / (1.0 / one + 1.0 / other); }

double bolt_lb_per_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor, RangeEnd hold,
                      RangeEnd across) {
    const std::size_t member = anchor.seat.value().member;
    const model::Member block = catalog::seen_member(resolved, anchor);
    Squeezed wood;
    wood.modulus_psi = across_over_along(across) * catalog::wood(resolved, member).grade.modulus_psi;
    wood.depth_in = block.depth_in;
    wood.width_in = block.width_in;
    wood.bears_in2 = bearing_area_below_in2(resolved, anchor);
    const double length_in = catalog::above_member_in(resolved, anchor) + block.depth_in;
    const double stretch = modulus_psi(anchor.metal) * area_in2(anchor.diameter_in) / length_in;
    return in_series(stretch, squeeze_stiffness_lb_per_in(wood, hold));
}

double screw_lb_per_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor, RangeEnd hold) {
    const double least_thread_in = 4.0 * anchor.diameter_in;
    const double thread_in = anchor.thread_in_block_in > 0.0 ? anchor.thread_in_block_in : least_thread_in;
    const double shank =
        modulus_psi(anchor.metal) * area_in2(anchor.root_diameter_in) / catalog::above_member_in(resolved, anchor);
    return in_series(thread_stiffness_lb_per_in(anchor.diameter_in, thread_in, hold), shank);
}

/// Squeeze of a wood post between its axis, where its bending gathers, and what the anchor's head bears on; absent
/// where the side member is of metal.
std::optional<double> wood_under_head_lb_per_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor,
                                                RangeEnd hold, RangeEnd across) {
    const catalog::SideMember side = catalog::fastened_by(resolved, anchor).side;
    if (!side.wood) return std::nullopt;
    const double hole = area_in2(anchor.diameter_in + 0.0625);
    const double round_in = anchor.washer ? anchor.washer->outside_diameter_in : anchor.head_width_in;
    const double bears_in2 =
        anchor.head_plate ? anchor.head_plate->width_in * anchor.head_plate->depth_in : area_in2(round_in);
    Squeezed post{across_over_along(across) * side.wood->grade.modulus_psi, 0.5 * side.thickness_in, side.width_x_in,
                  std::max(bears_in2 - hole, 0.25 * hole)};
    return squeeze_stiffness_lb_per_in(post, hold);
}

/// A bolt that no block is under has nothing for its nut to bear on: like any anchor that misses, it gets a nominal
/// hold.
bool squeezes_wood(const catalog::Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt && anchor.seat;
}

Phrase anchor_source(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (catalog::fastened_by(resolved, anchor).side.wood) {
        return squeezes_wood(anchor)
                   ? phrase(
                         "stretch of the bolt and the squeeze of post and member under head and nut, in series: "
                         "between load straight in and load spread 1:1")
                   : phrase(
                         "thread slip between {} and {}, stretch of the shank and the post's squeeze under the head, "
                         "in series",
                         "780 d^0.2 l^0.4", "25 d l N/mm");
    }
    if (squeezes_wood(anchor))
        return phrase(
            "stretch of the bolt and the block's squeeze over what the nut bears on, in series: between load straight "
            "down and load spread 1:1");
    Phrase source = phrase("thread slip between {} and {} and stretch of the shank above the block, in series",
                           "780 d^0.2 l^0.4", "25 d l N/mm");
    if (anchor.thread_in_block_in > 0.0) return source;
    return phrase("{}; it holds in no block, so 4 D of thread is taken for its stiffness only", std::move(source));
}

}  // namespace

Stiffness bed_stiffness(const catalog::Resolved& resolved, double below_modulus_psi, double below_depth_in) {
    double flexibility = 0.0;
    format::Listed of;
    const model::Layers& layers = on_deck(resolved.detail).layers;
    if (layers.decking && layers.packing && on_deck(resolved).packing) {
        const double packing_psi = on_deck(resolved).packing->modulus_perp_psi;
        flexibility += layers.decking->thickness_in / packing_psi;
        of.items.push_back(
            phrase("packing {} at {}", Dimension{layers.decking->thickness_in}, Quantity{packing_psi, "psi"}));
    } else if (layers.decking && on_deck(resolved).decking) {
        flexibility += layers.decking->thickness_in / on_deck(resolved).decking->modulus_perp_psi;
        of.items.push_back(phrase("decking {} at {}", Dimension{layers.decking->thickness_in},
                                  Quantity{on_deck(resolved).decking->modulus_perp_psi, "psi"}));
    }
    for (std::size_t index = 0; index < layers.shims.size(); ++index) {
        flexibility += layers.shims[index].thickness_in / on_deck(resolved).shims.at(index).modulus_perp_psi;
        of.items.push_back(phrase("shim {} at {}", Dimension{layers.shims[index].thickness_in},
                                  Quantity{on_deck(resolved).shims.at(index).modulus_perp_psi, "psi"}));
    }
    if (below_depth_in > 0.0) {
        const double across_psi = across_over_along(RangeEnd::central) * below_modulus_psi;
        flexibility += below_depth_in / across_psi;
        of.items.push_back(phrase("framing {} at E/20 = {}", Dimension{below_depth_in}, Quantity{across_psi, "psi"}));
    }
    if (!(flexibility > 0.0)) return {0.0, phrase("nothing to bear on")};
    return {1.0 / flexibility, phrase("{}, in series, no spread", std::move(of))};
}

double across_over_along(RangeEnd end) {
    switch (end) {
        case RangeEnd::soft:
            return 1.0 / 30.0;
        case RangeEnd::stiff:
            return 1.0 / 10.0;
        case RangeEnd::central:
            break;
    }
    return 1.0 / 20.0;
}

double thread_stiffness_lb_per_in(double diameter_in, double thread_in, RangeEnd end) {
    const double d_mm = diameter_in * mm_per_in, l_mm = thread_in * mm_per_in;
    const double by_area = 25.0 * d_mm * l_mm, by_power = 780.0 * std::pow(d_mm, 0.2) * std::pow(l_mm, 0.4);
    return lb_per_in_of_newton_per_mm * between(std::min(by_area, by_power), std::max(by_area, by_power), end);
}

double squeeze_stiffness_lb_per_in(const Squeezed& wood, RangeEnd end) {
    const double straight = wood.modulus_psi * wood.bears_in2 / wood.depth_in;
    // The area that bears as a square of side a, grown to (a + 2 z) x (a + 2 z) at depth z and no wider than the
    // member: 1/k is the integral of dz over E times that area.
    const double side_in = std::sqrt(wood.bears_in2), width_in = std::max(wood.width_in, side_in);
    const double free_in = std::min(0.5 * (width_in - side_in), wood.depth_in);
    const double spread_in = side_in + 2.0 * free_in;
    const double within = 0.5 * (1.0 / side_in - 1.0 / spread_in);
    const double beyond = std::log((side_in + 2.0 * wood.depth_in) / spread_in) / (2.0 * width_in);
    return between(straight, wood.modulus_psi / (within + beyond), end);
}

double anchor_stiffness_lb_per_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor, RangeEnd hold,
                                  RangeEnd across) {
    const double held = squeezes_wood(anchor) ? bolt_lb_per_in(resolved, anchor, hold, across)
                                              : screw_lb_per_in(resolved, anchor, hold);
    const std::optional<double> head = wood_under_head_lb_per_in(resolved, anchor, hold, across);
    return head ? in_series(held, *head) : held;
}

Stiffness anchor_stiffness(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    return {anchor_stiffness_lb_per_in(resolved, anchor, RangeEnd::central, RangeEnd::central),
            anchor_source(resolved, anchor)};
}

}  // namespace toehold::demand
