#pragma once
// A rigid plate pressed on a bed that cannot pull and held by anchors that cannot push. Plain arrays; in, lb, rad.
//
// The plate's lift is w(x, y) = lift + tilt_x * y - tilt_y * x (z up; tilt_x, tilt_y: small rotations about x, y).
// An anchor pulls T = k max(0, w); the bed presses p = k_bed max(0, -w) over each patch. Equilibrium of the plate:
//   sum of bed forces - sum of anchor pulls + fz = 0, and the like for moments about x and y.
// The energy is convex and once differentiable, so there is one set of forces; Newton with an exact line search on
// the piecewise quadratic ends in a finite number of steps.
#include "mechanics/geometry.h"

#include <span>
#include <string>
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
    double fz_lb = 0.0;      ///< up positive
    double mx_lb_in = 0.0;   ///< about +x, right-hand rule: positive lifts +y
    double my_lb_in = 0.0;   ///< about +y, right-hand rule: positive lifts -x
};

struct PatchForce {
    double force_lb = 0.0;   ///< total bearing, >= 0, acting up on the plate
    Point at;                ///< its centroid; the patch's own centroid when there is no force
    double peak_psi = 0.0;   ///< >= 0
    Point peak_at;
    double contact_area_in2 = 0.0;
};

/// Every residual is relative: forces to the largest single force in the solve, moments to the applied moment (or to
/// that force times the pattern's size when no moment is applied).
struct Residuals {
    double force = 0.0;
    double moment = 0.0;
    double complementarity = 0.0;  ///< largest pull of the bed or push of an anchor, relative to the largest force
};

enum class SolveStatus {
    solved,
    no_equilibrium,  ///< nothing can balance this load: the plate turns over or lifts off
    not_converged,
};

struct RigidPlateSolution {
    SolveStatus status = SolveStatus::not_converged;
    double lift_in = 0.0, tilt_x_rad = 0.0, tilt_y_rad = 0.0;
    std::vector<double> tension_lb;   ///< one for every anchor, >= 0
    std::vector<PatchForce> patches;  ///< one for every patch
    Residuals residuals;
    int iterations = 0;
};

/// Prepared once, solved for many loads; a solve may start from another solution (a neighbouring direction's).
[[nodiscard]] RigidPlateSolution solve_rigid_plate(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                                                   const PlateLoad& load, const RigidPlateSolution* start = nullptr);

}  // namespace toehold::mechanics
