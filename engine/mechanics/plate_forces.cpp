#include "mechanics/plate_forces.h"

#include "mechanics/scaled_plate.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::mechanics {
namespace {

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

Prism pressure_prism(const Polygon& pressed, const Plane& lift, double stiffness) {
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

BedReaction bed_reaction(const BedPatch& patch, const Plane& lift) {
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

}  // namespace

void find_forces(RigidPlateSolution& solution, std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed,
                 const PlateLoad& load) {
    const Plane lift{solution.lift_in, -solution.tilt_y_rad, solution.tilt_x_rad};
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

}  // namespace toehold::mechanics
