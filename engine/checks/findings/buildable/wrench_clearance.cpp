// Room to turn a hexagon head beside the post and its weld. A screw that a bit turns needs none, and a bolt is
// tightened by its nut below. Where the head or washer cannot even lie on the plate, `head-on-weld` speaks.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "model/capsule.h"
#include "units/limit.h"

#include <optional>
#include <utility>

namespace toehold::checks {
namespace {

using format::Dimension;
using format::phrase;

/// Outside radius of a socket over the width across the flats of the head in it (common practice, from memory).
constexpr double socket_radius_to_flats = 0.75;

/// Room from the anchor's center to what stands beside it.
struct Room {
    double in = 0.0;
    format::Phrase beside;  ///< `weld`
};

Room room_beside(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const PostFoot foot = post_foot(resolved.detail.post);
    const double leg_in = weld_leg_in(resolved);
    return {outside_face_in(foot, hole_shape(resolved, anchor).axis) - leg_in,
            leg_in > 0.0 ? phrase("weld") : foot_name(foot)};
}

Finding cannot_turn(const catalog::Anchor& anchor, double corner_in, const Room& room) {
    if (anchor.kind == catalog::FastenerKind::through_bolt)
        return finding_on(model::anchor_part(anchor.id), Severity::caution,
                          phrase("Head of anchor {} cannot be turned: its corners need {} from the anchor's center to "
                                 "the {} and have {}. Tighten the bolt by its nut, or move it out.",
                                 anchor.id, Dimension{corner_in}, room.beside, Dimension{room.in}),
                          "geometry");
    return finding_on(model::anchor_part(anchor.id), Severity::fails,
                      phrase("Head of anchor {} cannot be turned: its corners need {} from the anchor's center to the "
                             "{} and have {}. Move the anchor out, or use a smaller one.",
                             anchor.id, Dimension{corner_in}, room.beside, Dimension{room.in}),
                      "geometry");
}

std::optional<Finding> beside_post(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const std::optional<TopPart> top = top_part(anchor);
    const double corner_in = 0.5 * across_corners_in(anchor);
    if (!top || corner_in <= 0.0) return std::nullopt;
    const Room there = room_beside(resolved, anchor);
    if (!units::at_least(there.in, top->covers_in)) return std::nullopt;
    if (!units::at_least(there.in, corner_in)) return cannot_turn(anchor, corner_in, there);
    const double socket_in = socket_radius_to_flats * anchor.head_width_in;
    if (anchor.kind == catalog::FastenerKind::through_bolt || units::at_least(there.in, socket_in)) return std::nullopt;
    return finding_on(model::anchor_part(anchor.id), Severity::caution,
                      phrase("A socket does not fit on the head of anchor {}: it needs about {} from the anchor's "
                             "center to the {} and has {}. Tighten it with an open-end wrench, or move it out.",
                             anchor.id, Dimension{socket_in}, there.beside, Dimension{there.in}));
}

std::vector<Finding> wrench_clearance(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (std::optional<Finding> finding = beside_post(resolved, anchor)) findings.push_back(std::move(*finding));
    }
    return findings;
}

const RegisterFinding registered{
    {"wrench-clearance", phrase("Room to turn the anchor"), "common practice (from memory)", wrench_clearance},
    {model::MountKind::plate_on_deck},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
