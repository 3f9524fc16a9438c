// A through-bolt's nut needs room on the member's far side: where a joist's end or a block stands right behind the
// bolt, neither nut nor washer goes on.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using format::Dimension;
using format::phrase;

/// Depth that a nut, its washer and a wrench need behind the member, at least; common practice.
constexpr double behind_in = 1.0;

/// Half of what lies on the member at the nut, along the rail.
double half_covered_in(const Anchor& anchor) {
    if (anchor.backing) return 0.5 * anchor.backing->width_in;
    return 0.5 * (anchor.washer_below ? anchor.washer_below->outside_diameter_in : anchor.head_width_in);
}

/// Whether some of `other` stands right behind the bolt's nut.
bool stands_behind(const model::Member& member, const model::Member& other, const Anchor& anchor) {
    const model::PlanRectangle own = model::plan(member), there = model::plan(other);
    const bool towards_less = anchor.axis.y < 0.0;
    const double from_in = towards_less ? own.y_min_in - behind_in : own.y_max_in;
    const double to_in = from_in + behind_in;
    const double half_in = half_covered_in(anchor);
    const bool level_with_it = -anchor.at.z_in < other.depth_in;
    return level_with_it && there.y_max_in > from_in && there.y_min_in < to_in &&
           there.x_max_in > anchor.at.x_in - half_in && there.x_min_in < anchor.at.x_in + half_in;
}

std::optional<model::Member> in_the_way(const catalog::Resolved& resolved, const Anchor& anchor) {
    const std::vector<model::Member> members = model::members(resolved.detail.framing);
    const std::size_t own = anchor.seat.value().member;
    for (std::size_t other = 0; other < members.size(); ++other) {
        if (other != own && stands_behind(members.at(own), members[other], anchor)) return members[other];
    }
    return std::nullopt;
}

std::vector<Finding> nut_in_the_way(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const Anchor& anchor : resolved.anchors) {
        // A bolt that hangs a tie has its nut in the tie.
        if (anchor.kind != catalog::FastenerKind::through_bolt || !anchor.seat || anchor.tie) continue;
        const std::optional<model::Member> other = in_the_way(resolved, anchor);
        if (!other) continue;
        findings.push_back(
            finding_on(part_of(anchor), Severity::fails,
                       phrase("The nut of anchor {} does not go on: {} stands behind it, within {}. "
                              "Move the anchor along the rail, or the post between the joists.",
                              anchor.id, model::part_name(model::part_of(*other)), Dimension{behind_in})));
    }
    return findings;
}

const RegisterFinding rule{
    {"side-nut-in-the-way", phrase("Room for the nut behind the member"), "common practice", nut_in_the_way},
    {model::MountKind::side_fastened},
    Cause::geometry};

}  // namespace
}  // namespace toehold::checks
