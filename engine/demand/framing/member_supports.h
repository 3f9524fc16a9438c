#pragma once
// Every place where a member of the framing is held, and how stiffly.
#include "catalog/resolve.h"
#include "demand/framing_demand.h"

#include <vector>

namespace toehold::demand {

/// Whether lengths and supports of the joists are in the file, so that they bend and may roll.
[[nodiscard]] bool joists_described(const model::Framing& framing);

/// Every block's two ends; where the joists are described, every joist at each support and at each rim too.
[[nodiscard]] std::vector<MemberSupport> find_member_supports(const catalog::Resolved& resolved);

/// What a result or a stiffness of the support is about: the member at its holder; where nothing described holds it,
/// the member's end.
[[nodiscard]] model::PartId supported_part(const MemberSupport& support, const model::PartId& member);

}  // namespace toehold::demand
