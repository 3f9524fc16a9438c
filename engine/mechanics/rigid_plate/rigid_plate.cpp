#include "mechanics/rigid_plate/rigid_plate.h"

#include "mechanics/rigid_plate/convex_newton.h"
#include "mechanics/rigid_plate/load_feasibility.h"
#include "mechanics/rigid_plate/scaled_plate.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::mechanics {
namespace {

/// Largest residual of a solution that may be called one.
constexpr double largest_residual = 1e-9;
/// At the very rim of what can be balanced, contact shrinks towards a line or a point and the plate moves without
/// bounds. Beyond this many times what the supports' total stiffness would let it move, doubles cannot hold a lift
/// precise enough to balance; a minimum there that misses the residuals is called what it is in practice: no
/// equilibrium.
constexpr double rim = 1e5;
/// A moment below this part of the largest force times the pattern's size counts as none applied.
constexpr double no_moment = 1e-6;

/// The volume under a linear pressure over a polygon, and its first moments: one prism for each triangle of a fan.
struct Prism {
    double force_lb = 0.0;
    double force_x_lb_in = 0.0;
    double force_y_lb_in = 0.0;
    double area_in2 = 0.0;
};

void add_triangle(Prism& prism, const std::array<Point, 3>& corners, const std::array<double, 3>& pressure) {
    const auto& [a, b, c] = corners;
    const double area = 0.5 * ((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
    const double pressure_sum = pressure[0] + pressure[1] + pressure[2];
    prism.area_in2 += area;
    prism.force_lb += area * pressure_sum / 3.0;
    for (std::size_t index = 0; index < 3; ++index) {
        const double weight = area * (pressure_sum + pressure[index]) / 12.0;
        prism.force_x_lb_in += weight * corners[index].x;
        prism.force_y_lb_in += weight * corners[index].y;
    }
}

Prism pressure_prism(const Polygon& pressed, const LinearField& lift, double stiffness) {
    Prism prism;
    const auto pressure = [&](Point point) { return -stiffness * lift.at(point); };
    for (std::size_t index = 2; index < pressed.size(); ++index) {
        const std::array<Point, 3> corners{pressed[0], pressed[index - 1], pressed[index]};
        add_triangle(prism, corners, {pressure(corners[0]), pressure(corners[1]), pressure(corners[2])});
    }
    return prism;
}

Point centroid(const Polygon& outline) {
    const Moments whole = moments(outline);
    if (whole.area > 0.0) return {whole.x / whole.area, whole.y / whole.area};
    return outline.empty() ? Point{} : outline.front();
}

struct BedReaction {
    PatchForce force;
    double pull_lb = 0.0;  ///< what round-off at the cut would let the bed pull
};

BedReaction bed_reaction(const BedPatch& patch, const LinearField& lift) {
    BedReaction reaction;
    PatchForce& force = reaction.force;
    force.at = force.peak_at = centroid(patch.outline);
    const Polygon pressed = clip_half_plane(patch.outline, lift.at_origin, lift.slope_x, lift.slope_y);
    const Prism prism = pressure_prism(pressed, lift, patch.stiffness_psi_per_in);
    if (!(prism.force_lb > 0.0)) return reaction;
    force.force_lb = prism.force_lb;
    force.at = {prism.force_x_lb_in / prism.force_lb, prism.force_y_lb_in / prism.force_lb};
    force.contact_area_in2 = prism.area_in2;
    for (const Point& corner : pressed) {
        const double pressure_psi = -patch.stiffness_psi_per_in * lift.at(corner);
        reaction.pull_lb = std::max(reaction.pull_lb, -pressure_psi * prism.area_in2);
        if (pressure_psi <= force.peak_psi) continue;
        force.peak_psi = pressure_psi;
        force.peak_at = corner;
    }
    return reaction;
}

double ratio(double part, double whole) { return whole > 0.0 ? std::abs(part) / whole : std::abs(part); }

struct Balance {
    PlateLoad left;  ///< load less what the supports return
    double largest_lb = 0.0;

    void add(double force_up_lb, Point at) {
        left.fz_lb += force_up_lb;
        left.mx_lb_in += force_up_lb * at.y;
        left.my_lb_in -= force_up_lb * at.x;
        largest_lb = std::max(largest_lb, std::abs(force_up_lb));
    }
};

/// Fills tensions, patches and residuals of `solution` from its lift and tilts. Worked from the returned lift in inches
/// by clipping each outline and summing pressure prisms, not from the solver's own integrals.
void find_forces(RigidPlateSolution& solution, std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                 const PlateLoad& load) {
    const LinearField lift{solution.lift_in, -solution.tilt_y_rad, solution.tilt_x_rad};
    Balance balance{load, std::abs(load.fz_lb)};
    double wrong_way_lb = 0.0;
    for (const AnchorSpring& anchor : anchors) {
        const double tension_lb = std::max(0.0, anchor.stiffness_lb_per_in * lift.at(anchor.at));
        solution.tension_lb.push_back(tension_lb);
        balance.add(-tension_lb, anchor.at);
    }
    for (const BedPatch& patch : bed) {
        const BedReaction reaction = bed_reaction(patch, lift);
        wrong_way_lb = std::max(wrong_way_lb, reaction.pull_lb);
        solution.patches.push_back(reaction.force);
        balance.add(reaction.force.force_lb, reaction.force.at);
    }
    for (const double tension_lb : solution.tension_lb) wrong_way_lb = std::max(wrong_way_lb, -tension_lb);

    const double couple_lb_in = balance.largest_lb * pattern_size_in(anchors, bed);
    const double applied_lb_in = std::hypot(load.mx_lb_in, load.my_lb_in);
    const double moment_scale = applied_lb_in > no_moment * couple_lb_in ? applied_lb_in : couple_lb_in;
    solution.residuals.force = ratio(balance.left.fz_lb, balance.largest_lb);
    solution.residuals.moment = ratio(std::hypot(balance.left.mx_lb_in, balance.left.my_lb_in), moment_scale);
    solution.residuals.complementarity = ratio(wrong_way_lb, balance.largest_lb);
}

void set_lift(RigidPlateSolution& solution, const LinearField& lift) {
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
    const Minimum minimum = minimize_energy(plate, start);
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
    if (unresisted_motion(plate)) {
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
