#pragma once
// The rigid plate's problem without units: lengths from the pattern's middle over its half size, stiffness over the
// total, load over its largest component. The unknowns q = (q0, q1, q2) are the lift q0 + q1 x + q2 y there, so all
// three are of one size and the answer to a load s times as large is s times the answer.
//
// With phi = (1, x, y), the energy is
//   E(q) = 1/2 sum k max(0, phi.q)^2 + 1/2 sum k_bed (integral of min(0, phi.q)^2) - load.q
// and, being of second degree along every ray without the load term, its gradient is hessian(q) q - load.
#include "mechanics/plane/area_moments.h"
#include "mechanics/rigid_plate/rigid_plate.h"

#include <Eigen/Core>

#include <span>
#include <vector>

namespace toehold::mechanics {

struct ScaledAnchor {
    Eigen::Vector3d phi;
    double stiffness = 0.0;
};

struct ScaledPatch {
    Polygon outline;
    AreaMoments whole;  ///< about the patch's centroid
    double stiffness = 0.0;
};

struct ScaledPlate {
    Point center_in;
    double length_in = 1.0;     ///< half the diagonal of the box round everything
    double lift_unit_in = 1.0;  ///< what a scaled lift of 1 is
    std::vector<ScaledAnchor> anchors;
    std::vector<ScaledPatch> patches;  ///< those with an area
    Eigen::Vector3d load;              ///< zero, or its largest component is 1 or -1
};

/// Throws std::invalid_argument for a number that is not finite, a stiffness that is not positive or an outline that
/// runs clockwise.
[[nodiscard]] ScaledPlate scale_plate(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                                      const PlateLoad& load);

/// Half the diagonal of the box round every anchor and bed corner: the "pattern's size".
[[nodiscard]] double pattern_size_in(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed);

[[nodiscard]] Eigen::Vector3d to_scaled(const ScaledPlate& plate, const LinearField& lift_in);
[[nodiscard]] LinearField to_inches(const ScaledPlate& plate, const Eigen::Vector3d& q);

/// The energy's slope and curvature at q.
struct EnergyAt {
    Eigen::Vector3d gradient = Eigen::Vector3d::Zero();
    Eigen::Matrix3d hessian = Eigen::Matrix3d::Zero();
    double total_force = 0.0;  ///< every pull, every bearing and the load's largest component, added up
};
[[nodiscard]] EnergyAt energy_at(const ScaledPlate& plate, const Eigen::Vector3d& q);

/// The curvature with every anchor pulling and the whole bed pressed.
[[nodiscard]] Eigen::Matrix3d full_hessian(const ScaledPlate& plate);

}  // namespace toehold::mechanics
