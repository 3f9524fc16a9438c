#pragma once
// What the deck itself puts on its joists beside the guard's load, per area of plan: the file's, else the code's.
#include "demand/demand.h"

#include <vector>

namespace toehold::model {
struct BaseDetail;
struct Basis;
struct Framing;
}  // namespace toehold::model

namespace toehold::demand {

struct DeckLoadInForce {
    double dead_psf = 0.0, live_psf = 0.0;    ///< unfactored
    std::vector<format::Phrase> assumptions;  ///< of what the file does not specify
};
[[nodiscard]] DeckLoadInForce deck_load(const model::BaseDetail& detail);

/// What of the deck's dead and live load acts beside a load of the guard: all of it, and the least.
struct DeckFactors {
    double dead = 1.0, live = 1.0;
    double least_dead = 0.6;
};
/// With the guard's load, ASD 1.0 D + 1.0 L and 0.6 D (ASCE 7-16 2.4.1), LRFD 1.2 D + 1.6 L and 0.9 D (2.3.1). With
/// wind no live load; with wind and the guard's load ASD 1.0 D + 0.75 L, LRFD 1.2 D + 1.0 L, not the half of L that is
/// allowed on some floors. In a proof test nobody stands on the deck.
[[nodiscard]] DeckFactors deck_factors(const model::Basis& basis, const LoadCase& load);

/// Width of deck that the joist of this number among `joists.members` carries, in: half of each bay beside it. Of the
/// outermost one the bay outside is taken as wide as the one inside, and of a lone joist as 16 in on centers.
[[nodiscard]] double tributary_width_in(const model::Framing& framing, std::size_t joist);

}  // namespace toehold::demand
