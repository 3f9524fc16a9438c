#include "mechanics/rigid_plate/load_feasibility.h"

#include "mechanics/convex/load_cone.h"

#include <algorithm>
#include <cmath>

namespace toehold::mechanics {
namespace {

/// Calls visit(g) for every edge of the cone of loads that can be balanced; |g| >= 1.
template <typename Visit>
void for_each_generator(const ScaledPlate& plate, Visit visit) {
    for (const ScaledAnchor& anchor : plate.anchors) visit(anchor.phi);
    for (const ScaledPatch& patch : plate.patches) {
        for (const Point& corner : patch.outline) visit(Eigen::Vector3d(-1.0, -corner.x, -corner.y));
    }
}

/// The furthest a motion of unit length raises an anchor or presses a bed corner.
double resistance_to(const ScaledPlate& plate, const Eigen::Vector3d& motion) {
    double worst = 0.0;
    for_each_generator(plate,
                       [&](const Eigen::Vector3d& generator) { worst = std::max(worst, generator.dot(motion)); });
    return worst;
}

}  // namespace

std::optional<Eigen::Vector3d> unresisted_motion(const ScaledPlate& plate) {
    constexpr double outside = 1e-9;
    constexpr double round_off = 1e-6;
    const Eigen::Vector3d remainder = remainder_outside_cone<3>(
        plate.load, [&plate](const auto& visit) { for_each_generator(plate, visit); },
        ConeSearch{.most_rounds = 200, .round_off = 1e-14});
    if (remainder.norm() <= outside) return std::nullopt;
    const Eigen::Vector3d motion = remainder.normalized();
    if (plate.load.dot(motion) <= 0.0 || resistance_to(plate, motion) > round_off) return std::nullopt;
    return motion;
}

}  // namespace toehold::mechanics
