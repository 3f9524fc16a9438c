#pragma once
// What the demand of a post on a member's side says beside its forces: facts of the joint, the couple worked by hand,
// and what was assumed.
#include "demand/demand.h"
#include "demand/side_fastened/joint.h"

#include <vector>

namespace toehold::demand {

[[nodiscard]] SideDemand side_facts(const catalog::Resolved& resolved, const SideContact& contact,
                                    const std::vector<Stiffness>& slip, const Demand& demand);

/// Gives the fasteners at the couple's height its tension, shared equally, as their hand value: about the far end of
/// the contact, and about the farthest fastener.
void add_hand_couples(Demand& demand, const catalog::Resolved& resolved);

[[nodiscard]] std::vector<format::Phrase> side_assumptions(const catalog::Resolved& resolved, bool framing_can_flex);

}  // namespace toehold::demand
