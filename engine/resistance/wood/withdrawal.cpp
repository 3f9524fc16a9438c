#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <cmath>

namespace toehold::resistance {
namespace {

/// Length common to [from, to] along the fastener and the block; both measured from the head's underside.
double inside_block_in(double from_in, double to_in, double above_block_in, double block_depth_in) {
    const double begin = std::max(from_in, above_block_in);
    const double end = std::min(to_in, above_block_in + block_depth_in);
    return std::max(end - begin, 0.0);
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

}  // namespace toehold::resistance
