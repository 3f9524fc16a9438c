#include "session/governing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::session {
namespace {

double turn_between(double one_rad, double other_rad) {
    return std::abs(std::remainder(one_rad - other_rad, 2.0 * std::numbers::pi));
}

}  // namespace

bool same_direction(double one_rad, double other_rad) {
    constexpr double half_a_degree = 0.5 * std::numbers::pi / 180.0;
    return turn_between(one_rad, other_rad) < half_a_degree;
}

std::optional<double> governing_direction(const review::Review& review, double shown_rad) {
    if (!review.demand || review.demand->anchors.empty()) return std::nullopt;
    // A mesh of a symmetric plate is not itself symmetric: its error is of this order.
    constexpr double as_large = 0.995;
    double largest = 0.0;
    for (const demand::AnchorEnvelope& anchor : review.demand->anchors) largest = std::max(largest, anchor.tension_lb);
    std::optional<double> nearest;
    for (const demand::AnchorEnvelope& anchor : review.demand->anchors) {
        if (anchor.tension_lb < as_large * largest) continue;
        if (!nearest || turn_between(anchor.direction_rad, shown_rad) < turn_between(*nearest, shown_rad))
            nearest = anchor.direction_rad;
    }
    if (nearest && same_direction(*nearest, shown_rad)) return shown_rad;
    return nearest;
}

}  // namespace toehold::session
