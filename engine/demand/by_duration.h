#pragma once
// Wood takes more under a load that lasts less, so each check is run for the loads of one duration at a time, with the
// factor of that duration, and the worst result is kept.
#include "demand/demand.h"

#include <vector>

namespace toehold::model {
struct Basis;
}

namespace toehold::demand {

/// Of the cases that were solved, each once, in order of the cases.
[[nodiscard]] std::vector<LoadDuration> durations(const Demand& demand);

/// All that is of no state: cases, scenarios, supports and anchors; no shape to draw and no proof test. Its framing has
/// no states either.
[[nodiscard]] Demand without_states(const Demand& demand);

/// The demand of the states of that duration alone, envelopes and all; no shape to draw and no proof test.
[[nodiscard]] Demand of_duration(const Demand& demand, LoadDuration duration);

/// The basis with the factor of that duration: the guard's load has the basis's own; wind and a test last ten minutes,
/// C_D 1.6 (NDS 2018 Table 2.3.2) and lambda 1.0 (NDS 2018 Table N3).
[[nodiscard]] model::Basis for_duration(model::Basis basis, LoadDuration duration);

}  // namespace toehold::demand
