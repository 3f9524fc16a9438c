#pragma once
#include "model/framing.h"
#include "support/random/chance.h"

namespace toehold::test {

/// None, or joists with two blocks between them, perhaps with supports, rims and a block to a rim.
[[nodiscard]] model::Framing random_framing(const Chance& chance);

}  // namespace toehold::test
