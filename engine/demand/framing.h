#pragma once
// How far the blocks under a plate give, as beams that bend, shear and twist between their joists.
#include "demand/bed.h"
#include "mechanics/flexible/giving_framing.h"

#include <optional>

namespace toehold::demand {

/// One place for every support of the bed: a block gives where the post stands over it (or at the nearest place along
/// it); joists and open bed stand still, and so do the ends of blocks, which turn freely in their length and not about
/// their axis. Absent where no block bears.
[[nodiscard]] std::optional<mechanics::GivingFraming> giving_framing(const catalog::Resolved& resolved, const Bed& bed);

}  // namespace toehold::demand
