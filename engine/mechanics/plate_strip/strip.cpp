#include "mechanics/plate_strip/strip.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace toehold::mechanics {
namespace {

constexpr double no_arm_in = 1e-6;
constexpr double no_tension_lb = 1e-9;

std::vector<PlateStrip> single_strips(const PlateSection& section, std::span<const double> tension_lb,
                                      std::span<const Point> places) {
    std::vector<PlateStrip> strips;
    for (std::size_t anchor = 0; anchor < places.size(); ++anchor) {
        const double tension = tension_lb[anchor];
        const double arm = section.beyond_in(places[anchor]);
        if (arm <= no_arm_in || tension <= no_tension_lb) continue;
        const double place = section.along_in(places[anchor]);
        strips.push_back({{place - arm, place + arm}, tension * arm, 0.0, {{anchor, tension, arm}}, {}, {}});
    }
    std::sort(strips.begin(), strips.end(),
              [](const PlateStrip& a, const PlateStrip& b) { return a.span.from < b.span.from; });
    return strips;
}

PlateStrip strip_under(const PlateSection& section, const BearingBeyond& beyond) {
    if (!(beyond.force_lb > 0.0)) return {};
    const double arm = beyond.moment_lb_in / beyond.force_lb;
    // The length of an even pressure with the same resultant, as for a footing loaded off its center.
    const double half = std::min(beyond.along_in - beyond.extent.from, beyond.extent.to - beyond.along_in);
    const double reach = std::max(0.0, half) + arm;
    PlateStrip strip{{beyond.along_in - reach, beyond.along_in + reach}, beyond.moment_lb_in, 0.0, {}, beyond, {}};
    strip.width_in = section.width_in(strip.span);
    return strip;
}

PlateStrip strip_at_most(const PlateSection& section, GreatestBearing&& greatest) {
    PlateStrip strip = strip_under(section, greatest.total);
    strip.supports = std::move(greatest.supports);
    return strip;
}

}  // namespace

double PlateStrip::intensity_lb() const {
    constexpr double no_moment_lb_in = 1e-9;
    if (width_in > 0.0) return moment_lb_in / width_in;
    return moment_lb_in > no_moment_lb_in ? std::numeric_limits<double>::infinity() : 0.0;
}

std::vector<PlateStrip> anchor_strips(const PlateSection& section, std::span<const double> tension_lb,
                                      std::span<const Point> places) {
    std::vector<PlateStrip> merged;
    for (PlateStrip& strip : single_strips(section, tension_lb, places)) {
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
    PlateStrip even = strip_at_most(section, greatest_bearing(section, areas, supports, BearingBound::even));
    return even.intensity_lb() < worse.intensity_lb() ? even : worse;
}

}  // namespace toehold::mechanics
