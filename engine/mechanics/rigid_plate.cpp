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
/// At the very rim of what can be balanced, contact shrinks towards a line or a point that no computation in doubles
/// can place. A minimum that misses the residuals and whose motion is resisted by less than this part of itself lies
/// there, and is called what it is in practice: no equilibrium.
constexpr double rim = 0.05;

void set_lift(RigidPlateSolution& solution, const Plane& lift) {
    solution.lift_in = lift.at_origin;
    solution.tilt_x_rad = lift.slope_y;
    solution.tilt_y_rad = -lift.slope_x;
}

bool balances(const Residuals& residuals) {
    return residuals.force <= largest_residual && residuals.moment <= largest_residual &&
           residuals.complementarity <= largest_residual;
}

Minimum minimise(const ScaledPlate& plate, const RigidPlateSolution* start) {
    if (start == nullptr || start->status != SolveStatus::solved) return minimise_energy(plate, nullptr);
    const Eigen::Vector3d warm = to_scaled(plate, {start->lift_in, -start->tilt_y_rad, start->tilt_x_rad});
    return minimise_energy(plate, &warm);
}

SolveStatus status_of(const ScaledPlate& plate, const Minimum& minimum, const Residuals& residuals) {
    if (minimum.converged && balances(residuals)) return SolveStatus::solved;
    const bool runs_away = minimum.q.allFinite() && resistance_to(plate, minimum.q.normalized()) < rim;
    return runs_away ? SolveStatus::no_equilibrium : SolveStatus::not_converged;
}

}  // namespace

RigidPlateSolution solve_rigid_plate(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                                     const PlateLoad& load, const RigidPlateSolution* start) {
    RigidPlateSolution solution;
    const ScaledPlate plate = scale_plate(anchors, bed, load);
    if (plate.load.isZero(0.0)) {
        find_forces(solution, anchors, bed, load);
        solution.status = SolveStatus::solved;
        return solution;
    }
    if (runaway_motion(plate)) {
        solution.status = SolveStatus::no_equilibrium;
        return solution;
    }
    const Minimum minimum = minimise(plate, start);
    set_lift(solution, to_inches(plate, minimum.q));
    solution.iterations = minimum.iterations;
    find_forces(solution, anchors, bed, load);
    solution.status = status_of(plate, minimum, solution.residuals);
    return solution;
}

}  // namespace toehold::mechanics
