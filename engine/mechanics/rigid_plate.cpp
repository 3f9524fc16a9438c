#include "mechanics/rigid_plate.h"

#include "mechanics/cone.h"
#include "mechanics/convex_newton.h"
#include "mechanics/plate_forces.h"
#include "mechanics/scaled_plate.h"

#include <algorithm>

namespace toehold::mechanics {
namespace {

/// Largest residual of a solution that may be called one.
constexpr double largest_residual = 1e-9;
/// At the very rim of what can be balanced, contact shrinks towards a line or a point and the plate moves without
/// bounds. Beyond this many times what the supports' total stiffness would let it move, doubles cannot hold a lift
/// precise enough to balance; a minimum there that misses the residuals is called what it is in practice: no
/// equilibrium.
constexpr double rim = 1e5;

void set_lift(RigidPlateSolution& solution, const Plane& lift) {
    solution.lift_in = lift.at_origin;
    solution.tilt_x_rad = lift.slope_y;
    solution.tilt_y_rad = -lift.slope_x;
}

bool balances(const Residuals& residuals) {
    return residuals.force <= largest_residual && residuals.moment <= largest_residual &&
           residuals.complementarity <= largest_residual;
}

SolveStatus status_of(const Minimum& minimum, const Residuals& residuals) {
    if (balances(residuals)) return SolveStatus::solved;
    return minimum.furthest > rim ? SolveStatus::no_equilibrium : SolveStatus::not_converged;
}

RigidPlateSolution solve_from(const Eigen::Vector3d* start, const ScaledPlate& plate,
                              std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                              const PlateLoad& load) {
    RigidPlateSolution solution;
    const Minimum minimum = minimise_energy(plate, start);
    set_lift(solution, to_inches(plate, minimum.q));
    solution.iterations = minimum.iterations;
    find_forces(solution, anchors, bed, load);
    solution.status = status_of(minimum, solution.residuals);
    if (solution.status == SolveStatus::solved) return solution;
    solution.tension_lb.clear();
    solution.patches.clear();
    return solution;
}

}  // namespace

RigidPlateSolution solve_rigid_plate(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                                     const PlateLoad& load, const RigidPlateSolution* start) {
    const ScaledPlate plate = scale_plate(anchors, bed, load);
    RigidPlateSolution solution;
    if (plate.load.isZero(0.0)) {
        find_forces(solution, anchors, bed, load);
        solution.status = SolveStatus::solved;
        return solution;
    }
    if (runaway_motion(plate)) {
        solution.status = SolveStatus::no_equilibrium;
        return solution;
    }
    if (start != nullptr && start->status == SolveStatus::solved) {
        const Eigen::Vector3d warm = to_scaled(plate, {start->lift_in, -start->tilt_y_rad, start->tilt_x_rad});
        solution = solve_from(&warm, plate, anchors, bed, load);
        if (solution.status == SolveStatus::solved) return solution;
    }
    return solve_from(nullptr, plate, anchors, bed, load);
}

}  // namespace toehold::mechanics
