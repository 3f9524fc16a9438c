#pragma once
// States under loads so many times as large. Contact and anchors work one way only, but without a preload and a
// vertical force they do so from the first pound on, so that everything grows with the load.
#include "demand/demand.h"

namespace toehold::demand {

/// In the same direction: everything that goes with the moment, and the shear, which goes with the push.
[[nodiscard]] State grown(State state, double moment_times, double push_times);
[[nodiscard]] inline State grown(State state, double times) { return grown(std::move(state), times, times); }

/// What the guard's load does to the framing. `with_deck` is left as it is: the deck's own load does not grow.
void grow(FramingState& state, double times);

/// The demand of one load case's states alone under a push so many times as large, envelopes and framing too.
[[nodiscard]] Demand under_push(const catalog::Resolved& resolved, Demand demand, std::size_t load_case, double times);

}  // namespace toehold::demand
