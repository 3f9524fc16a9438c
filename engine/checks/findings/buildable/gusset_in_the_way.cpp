// A gusset that stands past the plate's edge, or where a washer, a head or a hole is.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "model/segment.h"
#include "units/limit.h"

#include <array>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

struct Side {
    bool model::FootSides::*named;
    double x, y;  ///< away from the post
};
constexpr std::array<Side, 4> all_sides{{{&model::FootSides::outward, 0.0, 1.0},
                                         {&model::FootSides::inward, 0.0, -1.0},
                                         {&model::FootSides::right, 1.0, 0.0},
                                         {&model::FootSides::left, -1.0, 0.0}}};

/// The middle of each gusset on the plate, from the post's face to its tip.
std::vector<model::Segment> lines_of(const model::Gussets& gussets, const PostFoot& foot) {
    std::vector<model::Segment> lines;
    for (const Side& side : all_sides) {
        if (!(gussets.sides.*(side.named))) continue;
        const double face = 0.5 * (side.x != 0.0 ? foot.tube.width_in : foot.tube.depth_in);
        const double tip = face + gussets.length_in;
        lines.push_back({{side.x * face, side.y * face}, {side.x * tip, side.y * tip}});
    }
    return lines;
}

/// On the anchors in the way of one gusset. A covering part needs the fillet's toe clear; a hole the metal.
void add_anchors(std::vector<Finding>& findings, const catalog::Resolved& resolved, const model::Gussets& gussets,
                 const model::Segment& line) {
    for (const catalog::Anchor& anchor : resolved.anchors) {
        const model::Capsule hole = hole_shape(resolved, anchor);
        const std::optional<TopPart> top = top_part(anchor);
        const double covers_in = top ? top->covers_in : hole.radius_in;
        const double needed_in = covers_in + 0.5 * gussets.thickness_in + gussets.leg_in;
        const double there_in = model::distance_in(line, hole.axis);
        if (units::at_least(there_in, needed_in)) continue;
        findings.push_back(finding_on(
            model::anchor_part(anchor.id), Severity::fails,
            phrase("Anchor {} is {} from the middle of a gusset and needs {} to clear the gusset and its fillet. Move "
                   "the anchor, or leave out that gusset.",
                   anchor.id, Dimension{there_in}, Dimension{needed_in})));
    }
}

std::vector<Finding> gusset_in_the_way(const catalog::Resolved& resolved) {
    const std::optional<model::Weld>& weld = on_deck(resolved.detail).weld;
    if (!weld || !weld->gussets) return {};
    std::vector<Finding> findings;
    for (const model::Segment& line : lines_of(*weld->gussets, post_foot(resolved.detail.post))) {
        const double edge_in = plate_edge_in(on_deck(resolved.detail).plate.outline, model::Segment{line.to, line.to});
        if (!units::at_least(edge_in, 0.0))
            findings.push_back(
                finding_on({model::PartKind::weld}, Severity::fails,
                           phrase("A gusset reaches {} past the plate's edge. Make it shorter.", Dimension{-edge_in})));
        add_anchors(findings, resolved, *weld->gussets, line);
    }
    return findings;
}

const RegisterFinding registered{{"gusset-in-the-way", phrase("Gusset in the way"), "geometry", gusset_in_the_way},
                                 {model::MountKind::plate_on_deck},
                                 Cause::geometry};

}  // namespace
}  // namespace toehold::checks
