#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::resistance {
namespace {

/// Length common to [from, to] along the fastener and the block; both measured from the head's underside.
double inside_block_in(double from_in, double to_in, double above_block_in, double block_depth_in) {
    const double begin = std::max(from_in, above_block_in);
    const double end = std::min(to_in, above_block_in + block_depth_in);
    return std::max(end - begin, 0.0);
}

/// Harmonic mean with the given weights; a resistance that is missing but needed leaves nothing.
double combined(double withdrawal_lb, double lateral_lb, double lateral_weight, double withdrawal_weight) {
    constexpr double nothing = 1e-12;
    if (withdrawal_weight < nothing) return lateral_lb;
    if (lateral_weight < nothing) return withdrawal_lb;
    if (!(withdrawal_lb > 0.0 && lateral_lb > 0.0)) return 0.0;
    return 1.0 / (lateral_weight / lateral_lb + withdrawal_weight / withdrawal_lb);
}

}  // namespace

double lag_withdrawal_lb_per_in(double specific_gravity, double diameter_in) {
    return 1800.0 * std::pow(specific_gravity, 1.5) * std::pow(diameter_in, 0.75);
}

double wood_screw_withdrawal_lb_per_in(double specific_gravity, double diameter_in) {
    return 2850.0 * specific_gravity * specific_gravity * diameter_in;
}

double nail_withdrawal_lb_per_in(double specific_gravity, double diameter_in) {
    return 1380.0 * std::pow(specific_gravity, 2.5) * diameter_in;
}

double lag_thread_length_in(double length_in) {
    constexpr double unthreaded_in = 0.25;
    return std::max(std::min({0.5 * length_in + 0.5, 6.0, length_in - unthreaded_in}), 0.0);
}

double embedment_in(double length_in, double above_block_in, double block_depth_in) {
    return inside_block_in(0.0, length_in, above_block_in, block_depth_in);
}

double tip_in_block_in(double length_in, double tip_length_in, double above_block_in, double block_depth_in) {
    return inside_block_in(std::max(length_in - tip_length_in, 0.0), length_in, above_block_in, block_depth_in);
}

double effective_thread_in(double length_in, double thread_length_in, double tip_length_in, double above_block_in,
                           double block_depth_in) {
    const double thread_begins = std::max(length_in - thread_length_in, 0.0);
    return inside_block_in(thread_begins, length_in - tip_length_in, above_block_in, block_depth_in);
}

double lag_minimum_penetration_in(double diameter_in) { return 4.0 * diameter_in; }

double wood_screw_minimum_penetration_in(double diameter_in) { return 6.0 * diameter_in; }

double head_pull_through_lb(double specific_gravity, double head_diameter_in, double net_thickness_in) {
    const double thickness_in = std::min(net_thickness_in, 2.5 * head_diameter_in);
    return 690.0 * std::numbers::pi * head_diameter_in * specific_gravity * specific_gravity * thickness_in;
}

double screw_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad) {
    const double cosine = std::cos(angle_rad);
    const double sine = std::sin(angle_rad);
    return combined(withdrawal_lb, lateral_lb, cosine * cosine, sine * sine);
}

double nail_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad) {
    return combined(withdrawal_lb, lateral_lb, std::abs(std::cos(angle_rad)), std::abs(std::sin(angle_rad)));
}

}  // namespace toehold::resistance
