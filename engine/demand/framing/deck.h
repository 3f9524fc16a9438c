#pragma once
// The deck's own load on its joists, beside what a state of the guard does there. The grillage is linear: one solution
// under 1 psf serves every state and every factor.
#include "demand/framing/frame.h"
#include "demand/loads/deck_load.h"

#include <optional>
#include <vector>

namespace toehold::demand {

struct DeckOnJoists {
    DeckLoadInForce load;
    mechanics::GridSolution under_1_psf;
    std::vector<std::vector<mechanics::MemberLoad>> loads;  ///< of each beam of the grillage, under 1 psf
};

/// Absent where the joists' lengths or supports are not described, or the framing is not stable.
[[nodiscard]] std::optional<DeckOnJoists> deck_on_joists(const catalog::Resolved& resolved, const Frame& frame);

/// Vertical actions of the members under a state's loads and the deck's, each the larger with all of the deck's load
/// and with the least of it; those of blocks and rims stay the guard's alone. `guard`: under the state's loads alone.
[[nodiscard]] std::vector<MemberActions> with_deck(const Frame& frame, const DeckOnJoists& deck,
                                                   const DeckFactors& factors, const mechanics::GridSolution& solution,
                                                   const std::vector<mechanics::MemberLoad>& loads,
                                                   const std::vector<MemberActions>& guard);

/// What the deck does alone, with the guard load's factors.
[[nodiscard]] DeckActions actions_of_deck(const Frame& frame, const DeckOnJoists& deck, const DeckFactors& factors);

/// Vertical moment, shear and torque along one member.
[[nodiscard]] MemberActions upright_actions(const Frame& frame, const mechanics::GridSolution& solution,
                                            const std::vector<mechanics::MemberLoad>& loads, std::size_t member);

}  // namespace toehold::demand
