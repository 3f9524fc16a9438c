#pragma once
// How far the framing under a plate gives: blocks, joists, rim and the slip of their connections, as one grillage.
#include "demand/plate_on_deck/bed.h"
#include "mechanics/flexible_plate/flexible_plate.h"

#include <optional>

namespace toehold::demand {

/// One place for every support of the bed: a member gives where the post stands over it (or at the nearest place along
/// it); what the frame leaves out stands still. Absent where no member in the frame bears, or where the frame can move
/// without resistance.
[[nodiscard]] std::optional<mechanics::CompliantSupports> framing_compliance(const catalog::Resolved& resolved,
                                                                             const Bed& bed);

}  // namespace toehold::demand
