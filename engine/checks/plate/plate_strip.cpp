#include "checks/plate/plate_strip.h"

#include "checks/basis/result_parts.h"

#include <algorithm>
#include <utility>

namespace toehold::checks {
namespace {

constexpr double no_arm_in = 1e-6;
constexpr double no_tension_lb = 1e-9;

std::vector<Strip> single_strips(const PlateSection& section, const demand::State& state,
                                 const std::vector<model::Position>& places) {
    std::vector<Strip> strips;
    for (std::size_t anchor = 0; anchor < places.size(); ++anchor) {
        const double tension = state.anchors.at(anchor).tension_lb;
        const double arm = section.beyond_in(places[anchor]);
        if (arm <= no_arm_in || tension <= no_tension_lb) continue;
        const double place = section.along_in(places[anchor]);
        strips.push_back({{place - arm, place + arm}, tension * arm, 0.0, {{anchor, tension, arm}}, {}, {}});
    }
    std::sort(strips.begin(), strips.end(), [](const Strip& a, const Strip& b) { return a.span.from < b.span.from; });
    return strips;
}

Strip strip_under(const PlateSection& section, const BearingBeyond& beyond) {
    if (!(beyond.force_lb > 0.0)) return {};
    const double arm = beyond.moment_lb_in / beyond.force_lb;
    // The length of an even pressure with the same resultant, as for a footing loaded off its centre.
    const double half = std::min(beyond.along_in - beyond.extent.from, beyond.extent.to - beyond.along_in);
    const double reach = std::max(0.0, half) + arm;
    Strip strip{{beyond.along_in - reach, beyond.along_in + reach}, beyond.moment_lb_in, 0.0, {}, beyond, {}};
    strip.width_in = section.width_in(strip.span);
    return strip;
}

Strip strip_at_most(const PlateSection& section, GreatestBearing&& greatest) {
    Strip strip = strip_under(section, greatest.total);
    strip.supports = std::move(greatest.supports);
    return strip;
}

}  // namespace

double Strip::intensity_lb() const { return ratio(moment_lb_in, width_in); }

std::vector<Strip> anchor_strips(const PlateSection& section, const demand::State& state,
                                 const std::vector<model::Position>& places) {
    std::vector<Strip> merged;
    for (Strip& strip : single_strips(section, state, places)) {
        if (merged.empty() || strip.span.from > merged.back().span.to) {
            merged.push_back(std::move(strip));
            continue;
        }
        Strip& shared = merged.back();
        shared.span.to = std::max(shared.span.to, strip.span.to);
        shared.moment_lb_in += strip.moment_lb_in;
        shared.pulls.push_back(strip.pulls.front());
    }
    for (Strip& strip : merged) strip.width_in = section.width_in(strip.span);
    return merged;
}

Strip bearing_strip(const PlateSection& section, const std::vector<AreaAtSection>& areas, const demand::State& state,
                    const std::vector<Pressure>& plane) {
    Strip worse = strip_under(section, bearing_beyond(section, plane));
    if (areas.size() != state.supports.size()) return worse;
    Strip least = strip_at_most(section, greatest_bearing(section, areas, state, Reading::least));
    if (least.intensity_lb() > worse.intensity_lb()) worse = std::move(least);
    Strip even = strip_at_most(section, greatest_bearing(section, areas, state, Reading::even));
    return even.intensity_lb() < worse.intensity_lb() ? even : worse;
}

}  // namespace toehold::checks
