// What the guard draws off the framing may not hang on fasteners in end grain alone: nails and screws drawn out of a
// joist's or a block's end have no value at all. The member the post is fastened to is drawn away from what it is
// nailed to at its top or its bottom, whichever way the push acts.
//   - A rim on the joists' ends; a joist along the rail on the ends of the blocks behind it.
//   - A tie to a joist or a block, or anchors through to a member behind, take the pull past those fasteners; they
//   still
//     hold the member's other edge, and the connection's own check judges that. Then it is a caution.
//   - Screws with a value from their report are said, and do not turn the verdict: the official must accept the report.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/member.h"
#include "model/side_geometry.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

enum class EndHold { other, by_report, end_grain };

EndHold hold_of(const model::EndConnection& connection) {
    const auto* const fasteners = std::get_if<model::EndGrainFasteners>(&connection);
    if (fasteners == nullptr) return EndHold::other;
    const bool reported =
        fasteners->kind == model::EndGrainFasteners::Kind::structural_screw && fasteners->reported.withdrawal_lb > 0.0;
    return reported ? EndHold::by_report : EndHold::end_grain;
}

/// What holds the member against being drawn off: the joists' ends at a rim, the ends of blocks at a joist.
std::vector<EndHold> holds_of(const model::Framing& framing, const model::Member& member) {
    std::vector<EndHold> holds;
    if (member.kind == model::MemberKind::rim) holds.push_back(hold_of(framing.rims.at(member.index).connection));
    for (const model::Block& block : framing.blocks) {
        if (block.along != model::PlanAxis::y) continue;
        for (const model::BlockEnd* end : {&block.from_end, &block.to_end})
            if (end->joist == member.id) holds.push_back(hold_of(end->connection));
    }
    return holds;
}

/// Whether something takes the pull past the member.
bool tied_past(const model::SideFastened& mount) {
    return !mount.ties.empty() || std::any_of(mount.anchors.begin(), mount.anchors.end(),
                                              [](const model::AnchorGroup& group) { return !group.into.empty(); });
}

/// Its name at the head of a sentence.
format::Phrase headed(const model::Member& member) {
    switch (member.kind) {
        case model::MemberKind::rim:
            return phrase("Rim {}", member.id);
        case model::MemberKind::joist:
            return phrase("Joist {}", member.id);
        case model::MemberKind::block:
            break;
    }
    return phrase("Block {}", member.id);
}

Finding alone(const model::Member& member, bool tied) {
    const model::PartId part = model::part_of(member);
    if (tied)
        return finding_on(part, Severity::caution,
                          phrase("{} is held by fasteners in end grain alone. The tie takes the pull past them on one "
                                 "side only; a push the other way draws on them.",
                                 headed(member)));
    if (member.kind == model::MemberKind::rim)
        return finding_on(part, Severity::fails,
                          phrase("{} carries the guard post and is fastened to the joists by nails or screws in their "
                                 "end grain alone: the push draws it off them. Tie the post or the rim to the joists "
                                 "with hardware that has a tension value.",
                                 headed(member)));
    return finding_on(part, Severity::fails,
                      phrase("{} carries the guard post and is held from behind by blocks fastened in end grain alone: "
                             "the push draws it off them. Tie the post or the joist to the blocks with hardware that "
                             "has a tension value.",
                             headed(member)));
}

std::vector<Finding> side_end_grain(const catalog::Resolved& resolved) {
    const std::optional<model::Member> member = model::side_member(resolved.detail);
    if (!member) return {};
    const std::vector<EndHold> holds = holds_of(resolved.detail.framing, *member);
    const auto any = [&](EndHold kind) { return std::find(holds.begin(), holds.end(), kind) != holds.end(); };
    if (any(EndHold::other)) return {};
    if (any(EndHold::by_report))
        return {finding_on(model::part_of(*member), Severity::caution,
                           phrase("{} is held by screws in end grain with withdrawal values from their report. The "
                                  "code's own text does not count withdrawal from end grain; the building official "
                                  "must accept the report.",
                                  headed(*member)))};
    if (any(EndHold::end_grain)) return {alone(*member, tied_past(on_side(resolved.detail)))};
    return {};
}

const RegisterFinding rule{{"side-end-grain",
                            phrase("Held in end grain alone"),
                            "NDS 2018 12.2.2.3, 12.2.3.3",
                            side_end_grain,
                            {},
                            {},
                            model::Provision::guard_beside_framing},
                           {model::MountKind::side_fastened},
                           Cause::load_path};

}  // namespace
}  // namespace toehold::checks
