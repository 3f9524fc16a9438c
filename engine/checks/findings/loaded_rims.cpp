#include "checks/findings/loaded_rims.h"

#include "model/member.h"

#include <algorithm>

namespace toehold::checks {
namespace {

bool anchored(const catalog::Resolved& resolved, std::size_t rim) {
    const std::vector<model::Member> members = model::members(resolved.detail.framing);
    return std::any_of(resolved.anchors.begin(), resolved.anchors.end(), [&](const catalog::Anchor& anchor) {
        if (!anchor.seat) return false;
        const model::Member& member = members.at(anchor.seat->member);
        return member.kind == model::MemberKind::rim && member.index == rim;
    });
}

bool holds_a_block(const model::Framing& framing, const model::Rim& rim) {
    return std::any_of(framing.blocks.begin(), framing.blocks.end(), [&](const model::Block& block) {
        return block.from_end.joist == rim.id || block.to_end.joist == rim.id;
    });
}

}  // namespace

std::vector<const model::Rim*> loaded_rims(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    std::vector<const model::Rim*> loaded;
    for (std::size_t rim = 0; rim < framing.rims.size(); ++rim) {
        if (anchored(resolved, rim) || holds_a_block(framing, framing.rims[rim])) loaded.push_back(&framing.rims[rim]);
    }
    return loaded;
}

}  // namespace toehold::checks
