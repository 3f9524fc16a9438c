#include "checks/plate/limit.h"

#include "catalog/resolve.h"
#include "demand/demand.h"
#include "demand/plate_on_deck/mesh_input.h"
#include "mechanics/plate_strip/bearing_pressure.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace toehold::checks {
namespace {

using mechanics::Point;
using mechanics::PointLoad;

/// About as fine as the demand's first mesh; a finer one brings a few percent more, see tests/mechanics/plate_limit.
constexpr double fineness = 1.0;

std::optional<mechanics::MomentFields> fields_of(const CheckInput& input, const PlateStrips& strips) {
    try {
        const demand::MeshedPlate meshed = demand::meshed_plate(input.resolved, fineness);
        return mechanics::MomentFields(meshed.mesh, meshed.foot, open_holes(strips.geometry));
    } catch (const demand::UnfitForMesh&) {
        return std::nullopt;
    }
}

/// Of a washer or head, evenly spread.
std::array<Point, 8> rim_points(const mechanics::AnchorFootprint& anchor) {
    std::array<Point, 8> points;
    for (std::size_t step = 0; step < points.size(); ++step) {
        const double angle =
            2.0 * std::numbers::pi * (static_cast<double>(step) + 0.5) / static_cast<double>(points.size());
        points[step] = {anchor.center.x + anchor.radius_in * std::cos(angle),
                        anchor.center.y + anchor.radius_in * std::sin(angle)};
    }
    return points;
}

/// Under the rim of each washer or head.
void add_tensions(std::vector<PointLoad>& loads, const std::vector<double>& tension_lb,
                  const std::vector<mechanics::AnchorFootprint>& anchors) {
    for (std::size_t anchor = 0; anchor < anchors.size(); ++anchor) {
        if (!(tension_lb[anchor] > 0.0)) continue;
        const auto points = rim_points(anchors[anchor]);
        for (const Point at : points) loads.push_back({at, tension_lb[anchor] / static_cast<double>(points.size())});
    }
}

/// Each cell of a grid over the loaded area as one force, against the pull of anchors.
void add_pressure(std::vector<PointLoad>& loads, const mechanics::PlanePressure& pressure) {
    constexpr int cells = 10;
    if (!pressure.loaded) {
        loads.push_back({pressure.at, -pressure.force_lb});
        return;
    }
    const mechanics::ShapePart& loaded = *pressure.loaded;
    if (loaded.empty()) return;
    const Point from = loaded.shape().reference();
    const mechanics::LinearField& psi = pressure.psi;
    const mechanics::Interval across = loaded.extent(1.0, 0.0), along = loaded.extent(0.0, 1.0);
    const double width = across.length() / cells, depth = along.length() / cells;
    for (int row = 0; row < cells; ++row) {
        const double y = along.from + depth * row;
        mechanics::ShapePart strip = loaded;
        strip.keep({-y, 0.0, 1.0}).keep({y + depth, 0.0, -1.0});
        for (int column = 0; column < cells; ++column) {
            const double x = across.from + width * column;
            mechanics::ShapePart cell = strip;
            const mechanics::Moments part = cell.keep({-x, 1.0, 0.0}).keep({x + width, -1.0, 0.0}).moments();
            if (!(part.area > 0.0)) continue;
            const double force = psi.at(from) * part.area + psi.slope_x * part.x + psi.slope_y * part.y;
            loads.push_back({{from.x + part.x / part.area, from.y + part.y / part.area}, -force});
        }
    }
}

std::vector<mechanics::PlanePressure> pressures(const demand::State& state, const PlateStrips& strips) {
    return mechanics::plane_pressures(bearing_of(state), strips.patches);
}

/// What each anchor's unit tension needs of each line, so that a state is a sum.
double moment_arm_in(const mechanics::YieldLine& line, const std::array<Point, 8>& rim) {
    double beyond_in = 0.0;
    for (const Point at : rim) beyond_in += std::max(0.0, line.normal_x * at.x + line.normal_y * at.y - line.offset_in);
    return beyond_in / static_cast<double>(rim.size());
}

}  // namespace

LineNeed most_needed_of_a_line(const demand::Demand& demand, const PlateGeometry& geometry,
                               const std::vector<mechanics::YieldLine>& lines) {
    const std::vector<demand::State>& states = demand.states;
    std::vector<std::array<Point, 8>> rims;
    for (const mechanics::AnchorFootprint& anchor : geometry.anchors) rims.push_back(rim_points(anchor));
    std::vector<double> largest(rims.size(), 0.0);
    for (const demand::State& state : states) {
        for (std::size_t anchor = 0; anchor < rims.size(); ++anchor)
            largest[anchor] = std::max(largest[anchor], state.anchors[anchor].tension_lb);
    }
    LineNeed most;
    std::vector<double> share(rims.size());
    for (const mechanics::YieldLine& line : lines) {
        if (!(line.metal_in > 0.0)) continue;
        double at_most = 0.0;
        for (std::size_t anchor = 0; anchor < rims.size(); ++anchor) {
            share[anchor] = moment_arm_in(line, rims[anchor]) / line.metal_in;
            at_most += share[anchor] * largest[anchor];
        }
        if (at_most <= most.moment_lb) continue;  // no state needs more of this line
        for (std::size_t index = 0; index < states.size(); ++index) {
            double needed = 0.0;
            for (std::size_t anchor = 0; anchor < share.size(); ++anchor)
                needed += share[anchor] * states[index].anchors[anchor].tension_lb;
            if (needed > most.moment_lb) most = {needed, index};
        }
    }
    return most;
}

PlateLimit::PlateLimit(const CheckInput& input, const PlateStrips& strips, double good_enough_lb)
    : input_(input),
      strips_(strips),
      good_enough_lb_(good_enough_lb),
      patterns_(mechanics::yield_patterns(strips.geometry.foot, strips.geometry.plate)) {}

std::size_t PlateLimit::worst_state_of_tension() const {
    return most_needed_of_a_line(input_.demand, strips_.geometry, patterns_.lines).state;
}

double PlateLimit::field_lb(const std::vector<PointLoad>& loads, double pattern_lb, double strip_lb, double enough_lb) {
    if (strip_lb <= good_enough_lb_ || !(pattern_lb < strip_lb)) return std::numeric_limits<double>::infinity();
    if (!std::exchange(fields_made_, true)) fields_ = fields_of(input_, strips_);
    if (!fields_) return std::numeric_limits<double>::infinity();
    return fields_->moment_needed_lb(loads, std::max({pattern_lb, enough_lb, good_enough_lb_}));
}

PlateBounds PlateLimit::under_tension(const GoverningStrip& strip, double enough_lb) {
    const demand::State& state = input_.demand.states.at(strip.state);
    const double strip_lb = strip.strip.intensity_lb();
    std::vector<PointLoad> alone;
    add_tensions(alone, tensions_of(state), strips_.geometry.anchors);
    std::vector<PointLoad> together = alone;
    for (const mechanics::PlanePressure& pressure : pressures(state, strips_)) add_pressure(together, pressure);
    const mechanics::YieldPattern by_tension = mechanics::worst_pattern(patterns_, alone);
    if (together.size() == alone.size())
        return {field_lb(alone, by_tension.moment_needed_lb, strip_lb, enough_lb), by_tension};
    const mechanics::YieldPattern by_both = mechanics::worst_pattern(patterns_, together);
    PlateBounds bounds{0.0, by_both.moment_needed_lb > by_tension.moment_needed_lb ? by_both : by_tension};
    bounds.field_lb = field_lb(together, by_both.moment_needed_lb, strip_lb, enough_lb);
    // The worse counts, so that nobody asks by how much the other is better.
    if (std::isfinite(bounds.field_lb))
        bounds.field_lb = std::max(bounds.field_lb, field_lb(alone, by_tension.moment_needed_lb, strip_lb,
                                                             std::max(enough_lb, bounds.field_lb)));
    return bounds;
}

PlateBounds PlateLimit::under_bearing(const GoverningStrip& strip) {
    const PlateBounds by_strip{std::numeric_limits<double>::infinity(), {}};
    if (strip.section->anchor) return by_strip;
    const std::vector<mechanics::PlanePressure> plane = pressures(input_.demand.states.at(strip.state), strips_);
    const double of_plane = mechanics::bearing_beyond(*strip.section, plane).moment_lb_in;
    if (!(of_plane > 0.0)) return by_strip;
    const double times = std::max(1.0, strip.strip.moment_lb_in / of_plane);
    std::vector<PointLoad> loads, at_most;
    for (const mechanics::PlanePressure& pressure : plane) add_pressure(loads, pressure);
    at_most = loads;
    for (PointLoad& load : at_most) load.force_lb *= times;
    const mechanics::YieldPattern pattern = mechanics::worst_pattern(patterns_, loads);
    return {field_lb(at_most, pattern.moment_needed_lb, strip.strip.intensity_lb(), 0.0), pattern};
}

}  // namespace toehold::checks
