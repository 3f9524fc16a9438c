#include "mechanics/plate_strip/bearing_pressure.h"

#include "mechanics/plane/area_moments.h"

#include <algorithm>
#include <limits>

namespace toehold::mechanics {
namespace {

PlanePressure concentrated(const PatchForce& force) { return {{}, {}, force.force_lb, force.peak_at}; }

/// The plate pressed on this patch alone by the resultant takes the same plane, whatever the bed's stiffness.
PlanePressure pressure_of(const PatchForce& force, const Polygon& patch) {
    const BedPatch bed{patch, 1.0};
    const PlateLoad load{-force.force_lb, -force.force_lb * force.at.y, force.force_lb * force.at.x};
    const RigidPlateSolution plane = solve_rigid_plate({}, {&bed, 1}, load);
    if (plane.status != SolveStatus::solved) return concentrated(force);
    return {clip_half_plane(patch, plane.lift_in, -plane.tilt_y_rad, plane.tilt_x_rad),
            {-plane.lift_in, plane.tilt_y_rad, -plane.tilt_x_rad},
            force.force_lb,
            force.at};
}

class Sum {
  public:
    explicit Sum(const PlateSection& section) : section_(section) {}

    void add(const PlanePressure& pressure) {
        if (pressure.loaded.empty()) return add_point(pressure);
        const Polygon part =
            clip_half_plane(pressure.loaded, section_.offset_in, -section_.normal_x, -section_.normal_y);
        if (part.size() < 3) return;
        const Moments m = moments(part);
        const double a = pressure.psi.at_origin;
        const double b = pressure.psi.slope_x;
        const double c = pressure.psi.slope_y;
        add_resultant(a * m.area + b * m.x + c * m.y, a * m.x + b * m.xx + c * m.xy, a * m.y + b * m.xy + c * m.yy);
        for (const Point corner : part) widen(section_.along_in(corner));
    }

    [[nodiscard]] BearingBeyond result() const {
        if (!(force_ > 0.0)) return {};
        return {force_, std::max(0.0, moment_), along_ / force_, extent_};
    }

  private:
    /// First moments of the force about the axes through the origin.
    void add_resultant(double force, double force_x, double force_y) {
        force_ += force;
        moment_ += section_.normal_x * force_x + section_.normal_y * force_y - section_.offset_in * force;
        along_ += section_.normal_x * force_y - section_.normal_y * force_x;
    }

    void add_point(const PlanePressure& pressure) {
        if (section_.beyond_in(pressure.at) <= 0.0) return;
        add_resultant(pressure.force_lb, pressure.force_lb * pressure.at.x, pressure.force_lb * pressure.at.y);
        widen(section_.along_in(pressure.at));
    }

    void widen(double place) {
        extent_.from = std::min(extent_.from, place);
        extent_.to = std::max(extent_.to, place);
    }

    const PlateSection& section_;
    double force_ = 0.0, moment_ = 0.0, along_ = 0.0;
    Interval extent_{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
};

}  // namespace

std::vector<PlanePressure> plane_pressures(std::span<const PatchForce> supports, std::span<const Polygon> patches) {
    std::vector<PlanePressure> result;
    for (std::size_t index = 0; index < supports.size(); ++index) {
        const PatchForce& force = supports[index];
        if (!(force.force_lb > 0.0)) continue;
        result.push_back(index < patches.size() ? pressure_of(force, patches[index]) : concentrated(force));
    }
    return result;
}

BearingBeyond bearing_beyond(const PlateSection& section, std::span<const PlanePressure> pressures) {
    Sum sum(section);
    for (const PlanePressure& pressure : pressures) sum.add(pressure);
    return sum.result();
}

}  // namespace toehold::mechanics
