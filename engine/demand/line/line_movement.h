#pragma once
// How far the rail moves under a push where it stands, and which parts of the guard give how much of it.
#include "demand/line/influence.h"

namespace toehold::demand {

/// Of the rail at a post. `frame`: all at their soft ends; so below.
[[nodiscard]] LineMovement movement_at_post(const LineInput& input, const LineFrame& frame, const LoadedRail& rail,
                                            std::size_t post);
/// Of a stretch's middle, or its end in the air.
[[nodiscard]] LineMovement movement_of_span(const LineInput& input, const LineFrame& frame, const LoadedRail& rail,
                                            std::size_t span);

}  // namespace toehold::demand
