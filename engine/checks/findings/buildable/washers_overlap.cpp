// Washers or heads of two anchors on top of the plate that need the same room.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "units/limit.h"

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

std::vector<Finding> washers_overlap(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (std::size_t first = 0; first < resolved.anchors.size(); ++first) {
        for (std::size_t second = first + 1; second < resolved.anchors.size(); ++second) {
            const catalog::Anchor& one = resolved.anchors[first];
            const catalog::Anchor& other = resolved.anchors[second];
            const std::optional<TopPart> top = top_part(one), beside = top_part(other);
            if (!top || !beside) continue;
            const double apart_in =
                model::distance_in(hole_shape(resolved, one).axis, hole_shape(resolved, other).axis);
            const double needed_in = top->reaches_in + beside->reaches_in;
            if (units::at_least(apart_in, needed_in)) continue;
            findings.push_back(finding_on(model::anchor_part(other.id), Severity::fails,
                                          phrase("{} overlaps that of anchor {}: their centers are {} apart and need "
                                                 "{}. Move the holes apart, or use smaller washers.",
                                                 beside->name, one.id, Dimension{apart_in}, Dimension{needed_in})));
        }
    }
    return findings;
}

const RegisterFinding registered{{"washers-overlap", phrase("Washers or heads overlap"), "geometry", washers_overlap},
                                 {model::MountKind::plate_on_deck},
                                 Cause::geometry};

}  // namespace
}  // namespace toehold::checks
