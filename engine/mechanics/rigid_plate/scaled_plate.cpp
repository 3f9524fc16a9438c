#include "mechanics/rigid_plate/scaled_plate.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

struct Box {
    double x_min = std::numeric_limits<double>::infinity(), x_max = -x_min;
    double y_min = x_min, y_max = -x_min;

    void include(Point point) {
        x_min = std::min(x_min, point.x);
        x_max = std::max(x_max, point.x);
        y_min = std::min(y_min, point.y);
        y_max = std::max(y_max, point.y);
    }
};

Box box_round(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed) {
    Box box;
    for (const AnchorSpring& anchor : anchors) box.include(anchor.at);
    for (const BedPatch& patch : bed) {
        for (const Point& corner : patch.outline) box.include(corner);
    }
    return box;
}

/// A box round nothing, or round a single point, has no size; any length then serves as the unit.
double half_diagonal(const Box& box) {
    const double diagonal = std::hypot(box.x_max - box.x_min, box.y_max - box.y_min);
    return std::isfinite(diagonal) && diagonal > 0.0 ? diagonal / 2.0 : 1.0;
}

void require(bool holds, const char* sentence) {
    if (!holds) throw std::invalid_argument(sentence);
}

bool finite(Point point) { return std::isfinite(point.x) && std::isfinite(point.y); }

void require_usable(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed, const PlateLoad& load) {
    for (const AnchorSpring& anchor : anchors) {
        require(finite(anchor.at), "an anchor's place must be finite");
        require(std::isfinite(anchor.stiffness_lb_per_in) && anchor.stiffness_lb_per_in > 0.0,
                "an anchor's stiffness must be positive");
    }
    for (const BedPatch& patch : bed) {
        require(std::all_of(patch.outline.begin(), patch.outline.end(), finite), "a patch's corners must be finite");
        require(std::isfinite(patch.stiffness_psi_per_in) && patch.stiffness_psi_per_in > 0.0,
                "a patch's stiffness must be positive");
    }
    require(std::isfinite(load.fz_lb) && std::isfinite(load.mx_lb_in) && std::isfinite(load.my_lb_in),
            "the load must be finite");
}

Point scaled(const ScaledPlate& plate, Point point) {
    return {(point.x - plate.center_in.x) / plate.length_in, (point.y - plate.center_in.y) / plate.length_in};
}

Eigen::Vector3d phi(Point point) { return {1.0, point.x, point.y}; }

void add_patch(ScaledPlate& plate, const BedPatch& patch) {
    /// An area below this part of the box's is a seam left by clipping and carries nothing.
    constexpr double no_area = 1e-14;
    ScaledPatch result;
    result.outline.reserve(patch.outline.size());
    for (const Point& corner : patch.outline) result.outline.push_back(scaled(plate, corner));
    const Moments whole = moments(result.outline);
    require(whole.area >= -no_area, "a patch's outline must run counter-clockwise");
    if (whole.area <= no_area) return;
    result.whole = area_moments(result.outline, {whole.x / whole.area, whole.y / whole.area});
    result.stiffness = patch.stiffness_psi_per_in * plate.length_in * plate.length_in;
    plate.patches.push_back(std::move(result));
}

/// Divides every stiffness by their total, which it returns in lb/in.
double normalize_stiffness(ScaledPlate& plate) {
    double total = 0.0;
    for (const ScaledAnchor& anchor : plate.anchors) total += anchor.stiffness;
    for (const ScaledPatch& patch : plate.patches) total += patch.stiffness * patch.whole.about_reference.area;
    for (ScaledAnchor& anchor : plate.anchors) anchor.stiffness /= total;
    for (ScaledPatch& patch : plate.patches) patch.stiffness /= total;
    return total > 0.0 ? total : 1.0;
}

/// Writes the load per unit of its largest component, which it returns in lb.
double normalize_load(ScaledPlate& plate, const PlateLoad& load) {
    const double along_x = -load.my_lb_in - load.fz_lb * plate.center_in.x;
    const double along_y = load.mx_lb_in - load.fz_lb * plate.center_in.y;
    plate.load = {load.fz_lb, along_x / plate.length_in, along_y / plate.length_in};
    const double largest = plate.load.cwiseAbs().maxCoeff();
    if (largest > 0.0) plate.load /= largest;
    return largest > 0.0 ? largest : 1.0;
}

/// Integral of phi phi^T over an area whose moments are known about its own reference point.
Eigen::Matrix3d outer_integral(const Moments& m) {
    Eigen::Matrix3d result;
    result << m.area, m.x, m.y, m.x, m.xx, m.xy, m.y, m.xy, m.yy;
    return result;
}

void add_pull(EnergyAt& energy, const ScaledAnchor& anchor, const Eigen::Vector3d& q) {
    const double lift = anchor.phi.dot(q);
    if (lift <= 0.0) return;
    energy.gradient += anchor.stiffness * lift * anchor.phi;
    energy.hessian += anchor.stiffness * anchor.phi * anchor.phi.transpose();
    energy.total_force += anchor.stiffness * lift;
}

/// The slope is integrated about the area's reference (on the zero line if there is one), where the lift has no
/// constant part to cancel.
void add_bearing(EnergyAt& energy, const ScaledPatch& patch, const Eigen::Vector3d& q) {
    const LinearField lift{q[0], q[1], q[2]};
    const AreaMoments pressed = moments_below(patch.outline, patch.whole, lift);
    const Moments& local = pressed.about_reference;
    if (local.area <= 0.0) return;
    const bool whole = pressed.reference == patch.whole.reference;
    const Eigen::Vector3d local_lift(whole ? lift.at(pressed.reference) : 0.0, q[1], q[2]);
    Eigen::Vector3d slope = patch.stiffness * (outer_integral(local) * local_lift);
    energy.total_force += std::abs(slope[0]);
    slope[1] += pressed.reference.x * slope[0];
    slope[2] += pressed.reference.y * slope[0];
    energy.gradient += slope;
    energy.hessian += patch.stiffness * outer_integral(about_origin(pressed));
}

}  // namespace

double pattern_size_in(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed) {
    return half_diagonal(box_round(anchors, bed));
}

ScaledPlate scale_plate(std::span<const AnchorSpring> anchors, std::span<const BedPatch> bed, const PlateLoad& load) {
    require_usable(anchors, bed, load);
    ScaledPlate plate;
    const Box box = box_round(anchors, bed);
    if (!anchors.empty() || std::isfinite(box.x_max)) {
        plate.center_in = {(box.x_min + box.x_max) / 2.0, (box.y_min + box.y_max) / 2.0};
    }
    plate.length_in = half_diagonal(box);
    for (const AnchorSpring& anchor : anchors) {
        plate.anchors.push_back({phi(scaled(plate, anchor.at)), anchor.stiffness_lb_per_in});
    }
    for (const BedPatch& patch : bed) add_patch(plate, patch);
    const double force_lb = normalize_load(plate, load);
    plate.lift_unit_in = force_lb / normalize_stiffness(plate);
    return plate;
}

Eigen::Vector3d to_scaled(const ScaledPlate& plate, const LinearField& lift_in) {
    const Eigen::Vector3d q(lift_in.at(plate.center_in), lift_in.slope_x * plate.length_in,
                            lift_in.slope_y * plate.length_in);
    return q / plate.lift_unit_in;
}

LinearField to_inches(const ScaledPlate& plate, const Eigen::Vector3d& q) {
    const Eigen::Vector3d lift = q * plate.lift_unit_in;
    LinearField result{0.0, lift[1] / plate.length_in, lift[2] / plate.length_in};
    result.at_origin = lift[0] - result.slope_x * plate.center_in.x - result.slope_y * plate.center_in.y;
    return result;
}

EnergyAt energy_at(const ScaledPlate& plate, const Eigen::Vector3d& q) {
    EnergyAt energy;
    energy.gradient = -plate.load;
    energy.total_force = plate.load.cwiseAbs().maxCoeff();
    for (const ScaledAnchor& anchor : plate.anchors) add_pull(energy, anchor, q);
    for (const ScaledPatch& patch : plate.patches) add_bearing(energy, patch, q);
    return energy;
}

Eigen::Matrix3d full_hessian(const ScaledPlate& plate) {
    Eigen::Matrix3d hessian = Eigen::Matrix3d::Zero();
    for (const ScaledAnchor& anchor : plate.anchors) {
        hessian += anchor.stiffness * anchor.phi * anchor.phi.transpose();
    }
    for (const ScaledPatch& patch : plate.patches) {
        hessian += patch.stiffness * outer_integral(about_origin(patch.whole));
    }
    return hessian;
}

}  // namespace toehold::mechanics
