#pragma once
// How far a member runs without being held sideways, for the beam stability factor.
#include "checks/registry.h"

#include <cstddef>

namespace toehold::checks {

/// Longest part of the member between neighbouring holds, or from the last of them to its end, in. Holds are a joist's
/// supports, and the joists fastened to a rim; a block, and a member held in fewer than two places, counts its whole
/// length. Boards hold the top edge only, and uplift presses the bottom one: they are not counted, nor are blocks
/// (NDS 2018 3.3.3, the conservative reading).
[[nodiscard]] double unsupported_length_in(const CheckInput& input, std::size_t member);

}  // namespace toehold::checks
