#include "mechanics/plate_strip/strip.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace toehold::mechanics {
namespace {

constexpr double no_arm_in = 1e-6;
constexpr double no_tension_lb = 1e-9;

/// Half the width that a tension spreads over. The plate under a washer or head is loaded by it as a whole, so that
/// within twice its radius the spread begins at its edge; farther away the one from its center is the wider.
double half_spread_in(double beyond_in, double radius_in) {
    return std::max(beyond_in, std::min(radius_in + std::max(0.0, beyond_in), 2.0 * radius_in));
}

std::vector<PlateStrip> single_strips(const PlateSection& section, std::span<const double> tension_lb,
                                      std::span<const AnchorFootprint> anchors) {
    std::vector<PlateStrip> strips;
    for (std::size_t anchor = 0; anchor < anchors.size(); ++anchor) {
        const auto& [center, radius] = anchors[anchor];
        const double tension = tension_lb[anchor];
        const double beyond = section.beyond_in(center);
        const double arm = mean_distance_beyond_in(beyond, radius);
        if (arm <= no_arm_in || tension <= no_tension_lb) continue;
        const double place = section.along_in(center);
        const double half = half_spread_in(beyond, radius);
        strips.push_back(
            {{place - half, place + half}, tension * arm, 0.0, {{anchor, tension, arm, beyond < radius}}, {}, {}});
    }
    std::sort(strips.begin(), strips.end(),
              [](const PlateStrip& a, const PlateStrip& b) { return a.span.from < b.span.from; });
    return strips;
}

/// The length of an even pressure with the same resultant, as for a footing loaded off its center, spread to the
/// section.
Interval span_under(const BearingBeyond& beyond) {
    const double arm = beyond.moment_lb_in / beyond.force_lb;
    const double half = std::min(beyond.along_in - beyond.extent.from, beyond.extent.to - beyond.along_in);
    const double reach = std::max(0.0, half) + arm;
    return {beyond.along_in - reach, beyond.along_in + reach};
}

PlateStrip strip_under(const PlateSection& section, const BearingBeyond& beyond) {
    if (!(beyond.force_lb > 0.0)) return {};
    PlateStrip strip{span_under(beyond), beyond.moment_lb_in, 0.0, {}, beyond, {}};
    strip.width_in = section.width_in(strip.span);
    return strip;
}

PlateStrip strip_at_most(const PlateSection& section, GreatestBearing&& greatest) {
    PlateStrip strip = strip_under(section, greatest.total);
    strip.supports = std::move(greatest.supports);
    return strip;
}

double intensity(double moment_lb_in, double width_in) {
    constexpr double no_moment_lb_in = 1e-9;
    if (width_in > 0.0) return moment_lb_in / width_in;
    return moment_lb_in > no_moment_lb_in ? std::numeric_limits<double>::infinity() : 0.0;
}

}  // namespace

double PlateStrip::intensity_lb() const { return intensity(moment_lb_in, width_in); }

double mean_distance_beyond_in(double beyond_in, double radius_in) {
    if (beyond_in >= radius_in) return std::max(0.0, beyond_in);
    if (beyond_in <= -radius_in) return 0.0;
    // The rim's part past the line is within this angle of the normal.
    const double angle = std::acos(-beyond_in / radius_in);
    return (beyond_in * angle + radius_in * std::sin(angle)) / std::numbers::pi;
}

std::vector<PlateStrip> anchor_strips(const PlateSection& section, std::span<const double> tension_lb,
                                      std::span<const AnchorFootprint> anchors) {
    std::vector<PlateStrip> merged;
    for (PlateStrip& strip : single_strips(section, tension_lb, anchors)) {
        if (merged.empty() || strip.span.from > merged.back().span.to) {
            merged.push_back(std::move(strip));
            continue;
        }
        PlateStrip& shared = merged.back();
        shared.span.to = std::max(shared.span.to, strip.span.to);
        shared.moment_lb_in += strip.moment_lb_in;
        shared.anchors.push_back(strip.anchors.front());
    }
    for (PlateStrip& strip : merged) strip.width_in = section.width_in(strip.span);
    return merged;
}

PlateStrip bearing_strip(const PlateSection& section, std::span<const AreaAtSection> areas,
                         std::span<const PatchForce> supports, std::span<const PlanePressure> plane) {
    PlateStrip worse = strip_under(section, bearing_beyond(section, plane));
    if (areas.size() != supports.size()) return worse;
    PlateStrip least = strip_at_most(section, greatest_bearing(section, areas, supports, BearingBound::least));
    if (least.intensity_lb() > worse.intensity_lb()) worse = std::move(least);
    if (greatest_intensity_lb(section, areas, supports) >= worse.intensity_lb()) return worse;
    return strip_at_most(section, greatest_bearing(section, areas, supports, BearingBound::even));
}

double greatest_intensity_lb(const PlateSection& section, std::span<const AreaAtSection> areas,
                             std::span<const PatchForce> supports) {
    if (areas.size() != supports.size()) return std::numeric_limits<double>::infinity();
    const BearingBeyond even = even_beyond(areas, supports);
    if (!(even.force_lb > 0.0)) return 0.0;
    return intensity(even.moment_lb_in, section.width_in(span_under(even)));
}

}  // namespace toehold::mechanics
