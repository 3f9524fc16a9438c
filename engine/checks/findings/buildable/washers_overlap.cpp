// Washers or heads of two anchors that need the same room, on top of the plate or on a post's side; of bolts through a
// member's side the washers at their nuts too.
#include "catalog/anchor_view.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "units/limit.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

double apart_in(const catalog::Resolved& resolved, const catalog::Anchor& one, const catalog::Anchor& other) {
    if (!catalog::lies_level(one))
        return model::distance_in(hole_shape(resolved, one).axis, hole_shape(resolved, other).axis);
    const model::Position here = catalog::seen(one), there = catalog::seen(other);
    return std::hypot(here.x_in - there.x_in, here.y_in - there.y_in);
}

/// Radius of the outermost point at the head or, of a level bolt, at the nut.
double reaches_in(const catalog::Anchor& anchor, const TopPart& top) {
    if (!catalog::lies_level(anchor) || !anchor.washer_below) return top.reaches_in;
    return std::max(top.reaches_in, 0.5 * anchor.washer_below->outside_diameter_in);
}

std::vector<Finding> washers_overlap(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (std::size_t first = 0; first < resolved.anchors.size(); ++first) {
        for (std::size_t second = first + 1; second < resolved.anchors.size(); ++second) {
            const catalog::Anchor& one = resolved.anchors[first];
            const catalog::Anchor& other = resolved.anchors[second];
            const std::optional<TopPart> top = top_part(one), beside = top_part(other);
            if (!top || !beside) continue;
            const double between_in = apart_in(resolved, one, other);
            const double needed_in = reaches_in(one, *top) + reaches_in(other, *beside);
            if (units::at_least(between_in, needed_in)) continue;
            findings.push_back(finding_on(model::anchor_part(other.id), Severity::fails,
                                          phrase("{} overlaps that of anchor {}: their centers are {} apart and need "
                                                 "{}. Move the holes apart, or use smaller washers.",
                                                 beside->name, one.id, Dimension{between_in}, Dimension{needed_in})));
        }
    }
    return findings;
}

const RegisterFinding registered{
    {"washers-overlap", phrase("Washers or heads overlap"), "geometry", washers_overlap}, {}, Cause::geometry};

}  // namespace
}  // namespace toehold::checks
