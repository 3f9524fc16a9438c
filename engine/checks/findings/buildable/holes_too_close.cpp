// Holes and slots that leave too little plate between them. A hole or slot that reaches over the plate's edge or into
// another is no detail at all: validation refuses it.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "units/limit.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// 0 for a hole without an anchor.
double anchor_diameter_in(const catalog::Resolved& resolved, const model::Hole& hole) {
    const auto found = std::find_if(resolved.anchors.begin(), resolved.anchors.end(),
                                    [&](const catalog::Anchor& anchor) { return anchor.id == hole.id; });
    return found == resolved.anchors.end() ? 0.0 : found->diameter_in;
}

std::vector<Finding> holes_too_close(const catalog::Resolved& resolved) {
    const std::vector<model::Hole>& holes = on_deck(resolved.detail).plate.holes;
    std::vector<Finding> findings;
    for (std::size_t first = 0; first < holes.size(); ++first) {
        for (std::size_t second = first + 1; second < holes.size(); ++second) {
            const model::Hole &one = holes[first], &other = holes[second];
            const model::Capsule a = model::capsule(one), b = model::capsule(other);
            const double clear_in = model::distance_in(a.axis, b.axis) - a.radius_in - b.radius_in;
            const double needed_in = std::max(anchor_diameter_in(resolved, one), anchor_diameter_in(resolved, other));
            if (units::at_least(clear_in, needed_in)) continue;
            findings.push_back(
                finding_on(model::hole_part(other.id), Severity::fails,
                           phrase("Holes {} and {} leave {} of plate between them; at least {}, the diameter of the "
                                  "anchor, is required. Move them apart or make them smaller.",
                                  one.id, other.id, Dimension{clear_in}, Dimension{needed_in})));
        }
    }
    return findings;
}

const RegisterFinding registered{
    {"holes-too-close", phrase("Plate left between holes"), "AISC 360-16 J3.3 (from memory)", holes_too_close},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
