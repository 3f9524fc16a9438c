#include "demand/stiffness_range.h"

#include "demand/anchor_stiffness.h"

#include <algorithm>

namespace toehold::demand {
namespace {

using format::phrase;

double bed_factor(RangeEnd end) { return across_over_along(end) / across_over_along(RangeEnd::central); }

/// Over its central value, of the anchor that is furthest from it: one factor stands for all anchors of a base.
double anchor_factor(const catalog::Resolved& resolved, RangeEnd hold, RangeEnd across) {
    double furthest = 1.0;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const double factor =
            anchor_stiffness_lb_per_in(resolved, anchor, hold, across) / anchor_stiffness(resolved, anchor).value;
        const bool first = &anchor == &resolved.anchors.front();
        if (first || (hold == RangeEnd::soft ? factor < furthest : factor > furthest)) furthest = factor;
    }
    return furthest;
}

StiffnessScenario corner(const catalog::Resolved& resolved, RangeEnd bed, RangeEnd hold, bool flexible_framing) {
    if (bed == RangeEnd::central && hold == RangeEnd::central) return {1.0, 1.0, flexible_framing};
    return {bed_factor(bed), anchor_factor(resolved, hold, bed), flexible_framing, bed, hold};
}

StiffnessRange bed_range() {
    return {
        bed_factor(RangeEnd::soft), bed_factor(RangeEnd::stiff),
        phrase("wood across the grain at E/20 (Wood Handbook Table 5-1, Douglas-fir)"),
        phrase("wood across the grain at E/30 (EN 338, softwood)"),
        phrase("wood across the grain at E/10 (Wood Handbook Table 5-1, ponderosa pine), or pressure that spreads in "
               "the wood")};
}

bool any_is(const catalog::Resolved& resolved, bool bolt) {
    return std::any_of(resolved.anchors.begin(), resolved.anchors.end(), [bolt](const catalog::Anchor& anchor) {
        return (anchor.kind == catalog::FastenerKind::through_bolt) == bolt;
    });
}

StiffnessRange anchor_range(const catalog::Resolved& resolved) {
    StiffnessRange range;
    range.soft = anchor_factor(resolved, RangeEnd::soft, RangeEnd::central);
    range.stiff = anchor_factor(resolved, RangeEnd::stiff, RangeEnd::central);
    range.central_source = phrase("geometric mean of the two ends");
    format::Listed soft, stiff;
    if (any_is(resolved, false)) {
        soft.items.push_back(
            phrase("thread slip {} N/mm (European technical assessments of wood screws)", "780 d^0.2 l^0.4"));
        stiff.items.push_back(phrase("thread slip {} N/mm (European technical assessments of wood screws)", "25 d l"));
    }
    if (any_is(resolved, true)) {
        soft.items.push_back(phrase("a nut's load straight down through the wood"));
        stiff.items.push_back(phrase("a nut's load spread 1:1 in the wood"));
    }
    range.soft_source = phrase("{}", std::move(soft));
    range.stiff_source = phrase("{}", std::move(stiff));
    return range;
}

}  // namespace

Ranges stiffness_ranges(const catalog::Resolved& resolved, bool framing_can_flex) {
    if (resolved.detail.basis.stiffness) return {{{1.0, 1.0, false}}, std::nullopt, std::nullopt};
    using enum RangeEnd;
    Ranges ranges{{}, bed_range(), anchor_range(resolved)};
    const auto add = [&](RangeEnd bed, RangeEnd hold, bool flexible_framing) {
        ranges.scenarios.push_back(corner(resolved, bed, hold, flexible_framing));
    };
    for (const bool flexible_framing : {false, true}) {
        if (flexible_framing && !framing_can_flex) break;
        add(central, central, flexible_framing);
        add(soft, stiff, flexible_framing);
        add(stiff, soft, flexible_framing);
        if (flexible_framing) add(stiff, stiff, flexible_framing);
    }
    return ranges;
}

StiffnessScenario stiffness_scenario(const catalog::Resolved& resolved, RangeEnd bed, RangeEnd anchors) {
    if (resolved.detail.basis.stiffness) return {};
    return corner(resolved, bed, anchors, false);
}

}  // namespace toehold::demand
