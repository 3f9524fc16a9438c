#include "resistance/wood/combined_loading.h"

#include <cmath>

namespace toehold::resistance {
namespace {

/// Harmonic mean with the given weights; a resistance that is missing but needed leaves nothing.
double combined(double withdrawal_lb, double lateral_lb, double lateral_weight, double withdrawal_weight) {
    constexpr double nothing = 1e-12;
    if (withdrawal_weight < nothing) return lateral_lb;
    if (lateral_weight < nothing) return withdrawal_lb;
    if (!(withdrawal_lb > 0.0 && lateral_lb > 0.0)) return 0.0;
    return 1.0 / (lateral_weight / lateral_lb + withdrawal_weight / withdrawal_lb);
}

}  // namespace

double screw_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad) {
    const double cosine = std::cos(angle_rad);
    const double sine = std::sin(angle_rad);
    return combined(withdrawal_lb, lateral_lb, cosine * cosine, sine * sine);
}

double nail_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad) {
    return combined(withdrawal_lb, lateral_lb, std::abs(std::cos(angle_rad)), std::abs(std::sin(angle_rad)));
}

}  // namespace toehold::resistance
