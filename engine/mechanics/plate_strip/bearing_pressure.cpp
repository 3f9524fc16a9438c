#include "mechanics/plate_strip/bearing_pressure.h"

#include "mechanics/rigid_plate/rigid_plate.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

namespace toehold::mechanics {
namespace {

/// Pressure a + b x + c y where that is above 0, x and y from the shape's reference; in units that make the shape's
/// area and the force 1.
using Plane = std::array<double, 3>;

/// One patch under one resultant, in those units.
class PatchInBalance {
  public:
    PatchInBalance(const Shape& patch, Point at)
        : patch_(patch),
          side_(std::sqrt(patch.moments().area)),
          at_{(at.x - patch.reference().x) / side_, (at.y - patch.reference().y) / side_} {}

    /// Newton's method, halved where the energy, which is convex, would not fall. Absent where it does not end.
    [[nodiscard]] std::optional<Plane> plane() const {
        constexpr int most_steps = 40;
        constexpr double balanced = 1e-13, as_good_as_rounding_lets = 1e-11;
        Trial trial = at(start());
        for (int step = 0; step < most_steps; ++step) {
            const double unbalanced = largest(trial.unbalanced);
            if (unbalanced <= balanced) return trial.plane;
            const std::optional<Plane> way = newton_step(trial);
            if (!way) return std::nullopt;
            const std::optional<Trial> better = downhill(trial, *way);
            if (!better) {
                if (unbalanced <= as_good_as_rounding_lets) return trial.plane;
                return std::nullopt;
            }
            trial = *better;
        }
        return std::nullopt;
    }

    /// In the units and about the origin of the patch's own corners.
    [[nodiscard]] LinearField pressure(const Plane& plane, double force_lb) const {
        const double psi = force_lb / (side_ * side_);
        return {psi * about_origin(plane), psi * plane[1] / side_, psi * plane[2] / side_};
    }

  private:
    struct Trial {
        Plane plane{}, unbalanced{};
        Moments area;  ///< of what is pressed
        double energy = 0.0;
    };

    static double largest(const Plane& p) { return std::max({std::abs(p[0]), std::abs(p[1]), std::abs(p[2])}); }

    [[nodiscard]] double about_origin(const Plane& plane) const {
        return plane[0] - (plane[1] * patch_.reference().x + plane[2] * patch_.reference().y) / side_;
    }

    /// In units of this class.
    [[nodiscard]] Moments scaled(const Moments& m) const {
        const double area = 1.0 / (side_ * side_), first = area / side_, second = area * area;
        return {m.area * area, m.x * first, m.y * first, m.xx * second, m.xy * second, m.yy * second};
    }

    [[nodiscard]] Trial at(const Plane& p) const {
        Trial trial{p, {}, {}, 0.0};
        const LinearField pressed{about_origin(p), p[1] / side_, p[2] / side_};
        trial.area = scaled(ShapePart(patch_).keep(pressed).moments());
        const Moments& m = trial.area;
        const Plane carried{p[0] * m.area + p[1] * m.x + p[2] * m.y, p[0] * m.x + p[1] * m.xx + p[2] * m.xy,
                            p[0] * m.y + p[1] * m.xy + p[2] * m.yy};
        trial.energy =
            0.5 * (p[0] * carried[0] + p[1] * carried[1] + p[2] * carried[2]) - (p[0] + p[1] * at_.x + p[2] * at_.y);
        trial.unbalanced = {carried[0] - 1.0, carried[1] - at_.x, carried[2] - at_.y};
        return trial;
    }

    /// What makes up for what is not in balance, were the pressed part to stay. Absent where it is too thin to tell.
    static std::optional<Plane> newton_step(const Trial& trial) {
        const Moments& m = trial.area;
        const double aa = m.xx * m.yy - m.xy * m.xy, ab = m.xy * m.y - m.x * m.yy, ac = m.x * m.xy - m.xx * m.y;
        const double bb = m.area * m.yy - m.y * m.y, bc = m.x * m.y - m.area * m.xy, cc = m.area * m.xx - m.x * m.x;
        const double determinant = m.area * aa + m.x * ab + m.y * ac;
        constexpr double thin = 1e-12;
        if (!(determinant > thin * m.area * m.xx * m.yy)) return std::nullopt;
        const Plane& u = trial.unbalanced;
        return Plane{-(aa * u[0] + ab * u[1] + ac * u[2]) / determinant,
                     -(ab * u[0] + bb * u[1] + bc * u[2]) / determinant,
                     -(ac * u[0] + bc * u[1] + cc * u[2]) / determinant};
    }

    [[nodiscard]] std::optional<Trial> downhill(const Trial& from, const Plane& way) const {
        constexpr int most_halvings = 10;
        double part = 1.0;
        for (int halving = 0; halving < most_halvings; ++halving, part *= 0.5) {
            const Plane to{from.plane[0] + part * way[0], from.plane[1] + part * way[1], from.plane[2] + part * way[2]};
            const Trial trial = at(to);
            if (trial.energy < from.energy || largest(trial.unbalanced) < largest(from.unbalanced)) return trial;
        }
        return std::nullopt;
    }

    /// All of the patch pressed, which is the answer where no pressure is below 0. Else a plane that grows the same way
    /// and is pressed three and a half times as deep as the resultant lies from the far end: a strip's pressure is
    /// three times, a corner's four.
    [[nodiscard]] Plane start() const {
        Trial none;
        none.area = scaled(patch_.moments());
        none.unbalanced = {-1.0, -at_.x, -at_.y};
        const Plane even{1.0, 0.0, 0.0};
        const std::optional<Plane> whole = newton_step(none);
        if (!whole) return even;
        const double slope = std::hypot((*whole)[1], (*whole)[2]);
        if (!(slope > 0.0)) return even;
        const double x = (*whole)[1] / slope, y = (*whole)[2] / slope;
        const Interval reach = ShapePart(patch_).extent(x, y);
        const double middle = x * patch_.reference().x + y * patch_.reference().y;
        const double near = (reach.from - middle) / side_, far = (reach.to - middle) / side_;
        if ((*whole)[0] + slope * near >= 0.0) return *whole;
        constexpr double depths = 3.5;
        const double zero = std::max(near, far - depths * (far - (at_.x * x + at_.y * y)));
        if (!(zero < far)) return *whole;
        const Trial shape = at({-zero, x, y});
        const double carried = shape.unbalanced[0] + 1.0;
        return carried > 0.0 ? Plane{-zero / carried, x / carried, y / carried} : *whole;
    }

    const Shape& patch_;
    double side_;
    Point at_;
};

PlanePressure concentrated(const PatchForce& force) { return {std::nullopt, {}, force.force_lb, force.peak_at}; }

PlanePressure over(const Shape& patch, const LinearField& psi, const PatchForce& force) {
    return {ShapePart(patch).keep(psi), psi, force.force_lb, force.at};
}

/// The plate pressed on this patch alone by the resultant takes the same plane, whatever the bed's stiffness.
PlanePressure by_rigid_plate(const PatchForce& force, const Shape& patch) {
    const BedPatch bed{patch.outline(), 1.0};
    const PlateLoad load{-force.force_lb, -force.force_lb * force.at.y, force.force_lb * force.at.x};
    const RigidPlateSolution plane = solve_rigid_plate({}, {&bed, 1}, load);
    if (plane.status != SolveStatus::solved) return concentrated(force);
    return over(patch, {-plane.lift_in, plane.tilt_y_rad, -plane.tilt_x_rad}, force);
}

PlanePressure pressure_of(const PatchForce& force, const Shape& patch) {
    if (!(patch.moments().area > 0.0)) return concentrated(force);
    const PatchInBalance balance(patch, force.at);
    const std::optional<Plane> plane = balance.plane();
    if (!plane) return by_rigid_plate(force, patch);
    return over(patch, balance.pressure(*plane, force.force_lb), force);
}

class Sum {
  public:
    explicit Sum(const PlateSection& section) : section_(section) {}

    void add(const PlanePressure& pressure) {
        if (!pressure.loaded) return add_point(pressure);
        ShapePart part = *pressure.loaded;
        part.keep({-section_.offset_in, section_.normal_x, section_.normal_y});
        if (part.empty()) return;
        const Moments m = part.moments();
        const Point from = part.shape().reference();
        const double a = pressure.psi.at(from), b = pressure.psi.slope_x, c = pressure.psi.slope_y;
        const double force = a * m.area + b * m.x + c * m.y;
        add_resultant(force, a * m.x + b * m.xx + c * m.xy + from.x * force,
                      a * m.y + b * m.xy + c * m.yy + from.y * force);
        const Interval along = part.extent(-section_.normal_y, section_.normal_x);
        widen(along.from);
        widen(along.to);
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

std::vector<PlanePressure> plane_pressures(std::span<const PatchForce> supports, std::span<const Shape> patches) {
    std::vector<PlanePressure> result;
    result.reserve(supports.size());
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
