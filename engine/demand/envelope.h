#pragma once
// From all states to what each anchor meets at worst, and to the stiffness of the post's foot.
#include "demand/mount.h"

#include <cstddef>

namespace toehold::demand {

/// The state in which the anchor's tension is largest.
[[nodiscard]] std::size_t worst_state_of(const Demand& demand, std::size_t anchor);

/// The same among the states under loads of that duration; there must be one.
[[nodiscard]] std::size_t worst_state_of(const Demand& demand, std::size_t anchor, LoadDuration duration);

/// Fills `anchors` from cases, scenarios and states, and finds the peak of bearing among the states.
void find_envelopes(Demand& demand, const MountSolver& solver);

/// The same where `anchors` have their stiffness already and the states are others; hand values stay.
void find_envelopes_again(Demand& demand);

/// From the states at nominal stiffness under pushes without a vertical force.
[[nodiscard]] RotationalStiffness find_rotational_stiffness(const Demand& demand);

}  // namespace toehold::demand
