#pragma once
// A rigid plate pressed on a bed that cannot pull and held by anchors that cannot push. Plain arrays; in, lb, rad.
//
// The plate's lift is w(x, y) = lift + tilt_x * y - tilt_y * x (z up; tilt_x, tilt_y: small rotations about x, y).
// An anchor pulls T = k max(0, w); the bed presses p = k_bed max(0, -w) over each patch. Equilibrium of the plate:
//   sum of bed forces - sum of anchor pulls + fz = 0, and the like for moments about x and y.
// The energy is convex and once differentiable, so there is one set of forces. Bed pressure is integrated exactly over
// the part of each outline below the line w = 0; Newton's method with a line search goes downhill at every step.
#include "mechanics/plane/geometry.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

struct AnchorSpring {
    Point at;
    double stiffness_lb_per_in = 0.0;  ///< > 0
};

/// Part of the plate's underside over one support, of uniform bed stiffness. Patches do not overlap.
struct BedPatch {
    Polygon outline;
    double stiffness_psi_per_in = 0.0;  ///< > 0
};

/// Acting on the plate at the origin of x, y.
struct PlateLoad {
    double fz_lb = 0.0;     ///< up positive
    double mx_lb_in = 0.0;  ///< about +x, right-hand rule: positive lifts +y
    double my_lb_in = 0.0;  ///< about +y, right-hand rule: positive lifts -x
};

struct PatchForce {
    double force_lb = 0.0;  ///< total bearing, >= 0, acting up on the plate
    Point at;               ///< its centroid; the patch's own centroid when there is no force
    double peak_psi = 0.0;  ///< >= 0
    Point peak_at;          ///< the patch's own centroid when there is no force
    double contact_area_in2 = 0.0;
};

/// Every residual is relative: forces to the largest single force in the solve, moments to the applied moment (or to
/// that force times the pattern's size when no moment, or less than a millionth of that, is applied). Worked from the
/// returned forces and their places, not from the solver's own integrals.
struct Residuals {
    double force = 0.0;
    double moment = 0.0;
    double complementarity = 0.0;  ///< largest pull of the bed or push of an anchor, relative to the largest force
};

enum class SolveStatus {
    solved,
    no_equilibrium,  ///< nothing can balance this load (the plate turns over or lifts off), or only a contact shrunk to
                     ///< nearly a line or a point could
    not_converged,   ///< a fault of the solver
};

struct RigidPlateSolution {
    SolveStatus status = SolveStatus::not_converged;
    double lift_in = 0.0, tilt_x_rad = 0.0, tilt_y_rad = 0.0;
    std::vector<double> tension_lb;   ///< one for every anchor, >= 0; empty unless solved
    std::vector<PatchForce> patches;  ///< one for every patch; empty unless solved
    Residuals residuals;
    int iterations = 0;
};

/// One load; a solve may start from another solution (a neighbouring direction's, of any size), which only saves steps.
/// `solved` means that every residual is at most 1e-9. A zero load is solved by zero lift. Where the supports leave a
/// motion free that the load does not drive (a plate on a row of anchors, pulled straight up), the forces are still
/// unique and the returned lift is one of many. A patch without area carries nothing. Throws std::invalid_argument for
/// a number that is not finite, a stiffness that is not positive or an outline that runs clockwise.
[[nodiscard]] RigidPlateSolution solve_rigid_plate(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                                                   const PlateLoad& load, const RigidPlateSolution* start = nullptr);

}  // namespace toehold::mechanics
