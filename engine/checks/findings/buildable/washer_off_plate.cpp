// A washer or head on top of the plate that reaches past the plate's edge.
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

std::vector<Finding> washer_off_plate(const catalog::Resolved& resolved) {
    const model::Outline& outline = on_deck(resolved.detail).plate.outline;
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const std::optional<TopPart> top = top_part(anchor);
        if (!top) continue;
        const double edge_in = plate_edge_in(outline, hole_shape(resolved, anchor).axis);
        if (units::at_least(edge_in, top->reaches_in)) continue;
        findings.push_back(finding_on(
            model::anchor_part(anchor.id), Severity::fails,
            phrase("{} reaches {} past the edge of the plate: its center is {} from the edge and needs {}. "
                   "Move the hole in, or use a smaller washer or a larger plate.",
                   top->name, Dimension{top->reaches_in - edge_in}, Dimension{edge_in}, Dimension{top->reaches_in})));
    }
    return findings;
}

const RegisterFinding registered{
    {"washer-off-plate", phrase("Washer or head past the plate's edge"), "geometry", washer_off_plate},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
