// A joist along the rail that carries a guard post by itself: nothing ties it to the next joist, so that it bends flat
// and rolls under the couple. The code wants such a member tied to adjacent joists against rotation.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/member.h"
#include "model/side_geometry.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

/// A block behind it that reaches another member, or its own end on one.
bool tied_by_a_block(const model::Framing& framing, const std::string& member) {
    return std::any_of(framing.blocks.begin(), framing.blocks.end(), [&](const model::Block& block) {
        const bool meets = block.from_end.joist == member || block.to_end.joist == member;
        return meets && !block.from_end.joist.empty() && !block.to_end.joist.empty();
    });
}

bool tied_past_it(const model::SideFastened& mount) {
    return !mount.ties.empty() || std::any_of(mount.anchors.begin(), mount.anchors.end(),
                                              [](const model::AnchorGroup& group) { return !group.into.empty(); });
}

/// Of a rim, the joists it stands on the ends of are adjacent joists; a block ends at members of its own.
std::vector<Finding> one_member_only(const catalog::Resolved& resolved) {
    const std::optional<model::Member> member = model::side_member(resolved.detail);
    if (!member || member->kind != model::MemberKind::joist) return {};
    if (tied_by_a_block(resolved.detail.framing, member->id) || tied_past_it(on_side(resolved.detail))) return {};
    const model::PartId part = model::part_of(*member);
    return {
        finding_on(part, Severity::fails,
                   phrase("Joist {} carries the guard post alone: no block or tie goes from it to another joist, and "
                          "nothing keeps it from rolling. Add blocks to the next joist on both sides of the post, "
                          "fastened with hardware that has a tension value.",
                          member->id))};
}

const RegisterFinding rule{{"side-one-member",
                            phrase("Post on one member only"),
                            "",
                            one_member_only,
                            {},
                            {},
                            model::Provision::guard_beside_framing},
                           {model::MountKind::side_fastened},
                           Cause::load_path};

}  // namespace
}  // namespace toehold::checks
