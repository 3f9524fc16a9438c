#pragma once
// The framing's part of the demand: every state's forces followed from anchors and bearing to the supports.
#include "demand/demand.h"

#include <optional>

namespace toehold::demand {

/// Absent where no member lies under the plate or holds an anchor. Reads the demand's states and supports only.
[[nodiscard]] std::optional<FramingDemand> find_framing(const catalog::Resolved& resolved, const Demand& demand);

/// Why the framing's give is not wholly in the demand, a sentence for people; empty: it is.
[[nodiscard]] format::Phrase framing_lacks(const Demand& demand);

}  // namespace toehold::demand
