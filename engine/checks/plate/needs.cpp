#include "checks/plate/needs.h"

#include "catalog/resolve.h"
#include "demand/demand.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace toehold::checks {
namespace {

/// A tenth off for patterns that were not searched: the usual allowance of the yield-line method (common practice, from
/// slabs).
constexpr double yield_line_share = 0.9;

/// What the demand may ask of one plate. Needs up to `good_enough_lb` are not told from each other.
struct NeedSearch {
    const CheckInput& input;
    const PlateStrips& strips;
    PlateLimit& limit;
    model::PlateStrength strength;
    double good_enough_lb;
};

/// Of the states whose strip or whose yield line is worst, the one that needs the most of the plate.
std::optional<PlateNeed> under_tension(const NeedSearch& search, const GoverningStrip& worst) {
    if (!worst.section) return std::nullopt;
    PlateNeed of_strip{worst, search.limit.under_tension(worst)};
    const std::size_t other = search.limit.worst_state_of_tension();
    if (other == worst.state) return of_strip;
    GoverningStrip strip = worst_anchor_strip(search.input.demand, search.strips, other);
    if (!strip.section) return of_strip;
    // A field that suffices with no more than this does not make the other state the worse one.
    const double needed_lb =
        std::max(search.good_enough_lb, moment_needed_lb(of_strip.strip.strip, of_strip.bounds, search.strength));
    const PlateBounds at_most = search.limit.under_tension(strip, needed_lb);
    if (!(moment_needed_lb(strip.strip, at_most, search.strength) > needed_lb)) return of_strip;
    return PlateNeed{strip, at_most.field_lb > needed_lb ? at_most : search.limit.under_tension(strip)};
}

std::vector<PlateNeed> find_plate_needs(const CheckInput& input, const PostFoot& foot, model::PlateStrength strength,
                                        double good_enough_lb = 0.0) {
    const PlateStrips strips = plate_strips(input, foot);
    const WorstStrips worst = worst_strips(input.demand, strips);
    PlateLimit limit(input, strips, good_enough_lb);
    std::vector<PlateNeed> needs;
    if (std::optional<PlateNeed> need = under_tension({input, strips, limit, strength, good_enough_lb}, worst.anchors))
        needs.push_back(std::move(*need));
    for (const GoverningStrip& governing : {worst.bearing, worst.beyond_anchors}) {
        if (governing.section) needs.push_back({governing, limit.under_bearing(governing)});
    }
    return needs;
}

void grow(mechanics::BearingBeyond& bearing, double factor) {
    bearing.force_lb *= factor;
    bearing.moment_lb_in *= factor;
}

void grow(mechanics::SupportBearing& bearing, double factor) {
    bearing.force_lb *= factor;
    bearing.peak_psi *= factor;
    bearing.beyond_lb *= factor;
    bearing.moment_lb_in *= factor;
}

PlateNeed grown_need(PlateNeed need, double factor) {
    mechanics::PlateStrip& strip = need.strip.strip;
    strip.moment_lb_in *= factor;
    for (mechanics::StripAnchor& anchor : strip.anchors) anchor.tension_lb *= factor;
    grow(strip.bearing, factor);
    for (mechanics::SupportBearing& support : strip.supports) grow(support, factor);
    need.bounds.field_lb *= factor;
    need.bounds.pattern.moment_needed_lb *= factor;
    return need;
}

}  // namespace

double moment_needed_lb(const mechanics::PlateStrip& strip, const PlateBounds& bounds, model::PlateStrength strength) {
    const double pattern_lb = bounds.pattern.moment_needed_lb;
    if (strength == model::PlateStrength::yield_line && pattern_lb > 0.0) return pattern_lb / yield_line_share;
    return std::max(pattern_lb, std::min(strip.intensity_lb(), bounds.field_lb));
}

std::shared_ptr<const std::vector<PlateNeed>> plate_needs(const CheckInput& input, const PostFoot& foot,
                                                          double usable_lb) {
    const model::PlateStrength strength = model::plate_strength(input.resolved.detail.basis);
    if (input.asked == Asked::failures) {
        // Clear of the limit by more than rounding.
        constexpr double for_certain = 1.0 - 1e-6;
        return std::make_shared<const std::vector<PlateNeed>>(
            find_plate_needs(input, foot, strength, for_certain * usable_lb));
    }
    const auto needs = input.once<PlateNeeds>([&] { return PlateNeeds{find_plate_needs(input, foot, strength)}; },
                                              static_cast<int>(strength));
    return {needs, &needs->all};
}

PlateNeeds PlateNeeds::grown(double factor) const {
    PlateNeeds other;
    for (const PlateNeed& need : all) other.all.push_back(grown_need(need, factor));
    return other;
}

}  // namespace toehold::checks
