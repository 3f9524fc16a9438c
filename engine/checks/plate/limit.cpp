#include "checks/plate/limit.h"

#include "catalog/resolve.h"
#include "demand/demand.h"
#include "demand/plate_on_deck/mesh_input.h"
#include "mechanics/plane/area_moments.h"
#include "mechanics/plate_strip/bearing_pressure.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toehold::checks {
namespace {

using mechanics::Point;
using mechanics::PointLoad;

/// About as fine as the demand's first mesh; a finer one brings a few percent more, see tests/mechanics/plate_limit.
constexpr double fineness = 1.0;

std::optional<mechanics::MomentFields> fields_of(const CheckInput& input, const PlateStrips& strips) {
    try {
        const demand::MeshedPlate meshed = demand::meshed_plate(input.resolved, fineness);
        return mechanics::MomentFields(meshed.mesh, meshed.foot, open_holes(strips));
    } catch (const demand::UnfitForMesh&) {
        return std::nullopt;
    }
}

/// Under the rim of each washer or head.
void add_tensions(std::vector<PointLoad>& loads, const std::vector<double>& tension_lb,
                  const std::vector<mechanics::AnchorFootprint>& anchors) {
    constexpr int around = 8;
    for (std::size_t anchor = 0; anchor < anchors.size(); ++anchor) {
        if (!(tension_lb[anchor] > 0.0)) continue;
        for (int step = 0; step < around; ++step) {
            const double angle = 2.0 * std::numbers::pi * (step + 0.5) / around;
            const auto& [center, radius] = anchors[anchor];
            loads.push_back({{center.x + radius * std::cos(angle), center.y + radius * std::sin(angle)},
                             tension_lb[anchor] / around});
        }
    }
}

/// Each cell of a grid over the loaded area as one force, `times` as large, against the pull of anchors.
void add_pressure(std::vector<PointLoad>& loads, const mechanics::PlanePressure& pressure, double times) {
    constexpr int cells = 10;
    if (pressure.loaded.empty()) {
        loads.push_back({pressure.at, -times * pressure.force_lb});
        return;
    }
    Point low = pressure.loaded.front(), high = low;
    for (const Point corner : pressure.loaded) {
        low = {std::min(low.x, corner.x), std::min(low.y, corner.y)};
        high = {std::max(high.x, corner.x), std::max(high.y, corner.y)};
    }
    const double width = (high.x - low.x) / cells, depth = (high.y - low.y) / cells;
    for (int cell = 0; cell < cells * cells; ++cell) {
        const int row = cell / cells;
        const double x = low.x + width * (cell % cells), y = low.y + depth * row;
        const mechanics::Moments part =
            mechanics::moments(mechanics::clip_rectangle(pressure.loaded, x, x + width, y, y + depth));
        if (!(part.area > 0.0)) continue;
        const double force =
            pressure.psi.at_origin * part.area + pressure.psi.slope_x * part.x + pressure.psi.slope_y * part.y;
        loads.push_back({{part.x / part.area, part.y / part.area}, -times * force});
    }
}

std::vector<mechanics::PlanePressure> pressures(const demand::State& state, const PlateStrips& strips) {
    return mechanics::plane_pressures(bearing_of(state), strips.patches);
}

/// What each anchor's unit tension needs of each line, so that a state is a sum.
double moment_arm_in(const mechanics::YieldLine& line, const mechanics::AnchorFootprint& anchor) {
    const double beyond = line.normal_x * anchor.center.x + line.normal_y * anchor.center.y - line.offset_in;
    return mechanics::mean_distance_beyond_in(beyond, anchor.radius_in);
}

}  // namespace

PlateLimit::PlateLimit(const CheckInput& input, const PlateStrips& strips)
    : input_(input),
      strips_(strips),
      patterns_(mechanics::yield_patterns(strips.foot, strips.plate)),
      fields_(fields_of(input, strips)) {}

std::size_t PlateLimit::worst_state_of_tension() const {
    std::size_t worst = 0;
    double most = 0.0;
    for (const mechanics::YieldLine& line : patterns_.lines) {
        if (!(line.metal_in > 0.0)) continue;
        std::vector<double> share;
        for (const mechanics::AnchorFootprint& anchor : strips_.anchors)
            share.push_back(moment_arm_in(line, anchor) / line.metal_in);
        for (std::size_t index = 0; index < input_.demand.states.size(); ++index) {
            double needed = 0.0;
            for (std::size_t anchor = 0; anchor < share.size(); ++anchor)
                needed += share[anchor] * input_.demand.states[index].anchors[anchor].tension_lb;
            if (needed <= most) continue;
            most = needed;
            worst = index;
        }
    }
    return worst;
}

PlateBounds PlateLimit::bounds(const std::vector<PointLoad>& loads, double strip_lb) const {
    return bounds(loads, loads, strip_lb);
}

PlateBounds PlateLimit::bounds(const std::vector<PointLoad>& loads, const std::vector<PointLoad>& at_most,
                               double strip_lb) const {
    PlateBounds bounds{std::numeric_limits<double>::infinity(), mechanics::worst_pattern(patterns_, loads)};
    const double pattern_lb = bounds.pattern.moment_needed_lb;
    if (fields_ && pattern_lb < strip_lb) bounds.field_lb = fields_->moment_needed_lb(at_most, pattern_lb);
    return bounds;
}

PlateBounds PlateLimit::under_tension(const GoverningStrip& strip) const {
    const demand::State& state = input_.demand.states.at(strip.state);
    const double strip_lb = strip.strip.intensity_lb();
    std::vector<PointLoad> loads;
    add_tensions(loads, tensions_of(state), strips_.anchors);
    PlateBounds alone = bounds(loads, strip_lb);
    const std::size_t pulls = loads.size();
    for (const mechanics::PlanePressure& pressure : pressures(state, strips_)) add_pressure(loads, pressure, 1.0);
    if (loads.size() == pulls) return alone;
    const PlateBounds together = bounds(loads, strip_lb);
    alone.field_lb = std::max(alone.field_lb, together.field_lb);
    if (together.pattern.moment_needed_lb > alone.pattern.moment_needed_lb) alone.pattern = together.pattern;
    return alone;
}

PlateBounds PlateLimit::under_bearing(const GoverningStrip& strip) const {
    const PlateBounds by_strip{std::numeric_limits<double>::infinity(), {}};
    if (strip.section->anchor) return by_strip;
    const std::vector<mechanics::PlanePressure> plane = pressures(input_.demand.states.at(strip.state), strips_);
    const double of_plane = mechanics::bearing_beyond(*strip.section, plane).moment_lb_in;
    if (!(of_plane > 0.0)) return by_strip;
    const double times = std::max(1.0, strip.strip.moment_lb_in / of_plane);
    std::vector<PointLoad> loads, at_most;
    for (const mechanics::PlanePressure& pressure : plane) {
        add_pressure(loads, pressure, 1.0);
        add_pressure(at_most, pressure, times);
    }
    return bounds(loads, at_most, strip.strip.intensity_lb());
}

}  // namespace toehold::checks
