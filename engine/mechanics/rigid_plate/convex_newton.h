#pragma once
// Newton's method on the rigid plate's energy (see scaled_plate.h), certain to go downhill at every step.
//
// The energy is convex with a continuous slope; its curvature jumps where an anchor comes tight. Each step takes the
// curvature at hand, with eigenvalues kept off zero so that the direction always descends, and goes along it to where
// the slope along the line, which never falls, comes to zero (convex/line_search.h).
#include "mechanics/rigid_plate/scaled_plate.h"

namespace toehold::mechanics {

struct Minimum {
    Eigen::Vector3d q = Eigen::Vector3d::Zero();
    double error = 0.0;     ///< largest part of the slope over the sum of all forces; the proof is in the residuals
    double furthest = 0.0;  ///< largest |q| tried: how far the plate ran in search of support
    int iterations = 0;
};

/// `start`: null for everything in contact and every anchor tight. A start is used only for its shape: it is scaled
/// to the lowest energy along its ray, and dropped if nothing acts there.
[[nodiscard]] Minimum minimize_energy(const ScaledPlate& plate, const Eigen::Vector3d* start);

}  // namespace toehold::mechanics
