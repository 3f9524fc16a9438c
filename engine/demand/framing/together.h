#pragma once
// Several bases on one deck: what their pushes put on the framing they share when they act at the same time.
#include "demand/demand.h"
#include "demand/framing/neighbor.h"

#include <array>
#include <vector>

namespace toehold::demand {

/// Whether a load case may act on several posts at once. A load along the rail does, and wind, which is taken on all
/// with the guard's load of each where it acts beside it; the concentrated load stands at one point of the guard, and a
/// load the user states is taken as one base's own.
[[nodiscard]] bool acts_on_all_posts(const LoadCase& load);

/// All that `MemberActions` holds.
inline constexpr std::array<double MemberActions::*, 5> actions_of_a_member = {
    &MemberActions::vertical_moment_lb_in, &MemberActions::horizontal_moment_lb_in, &MemberActions::vertical_shear_lb,
    &MemberActions::horizontal_shear_lb, &MemberActions::torque_lb_in};

/// All of what a member puts on its holder in a state.
inline constexpr std::array<double SupportReaction::*, 5> forces_of_a_reaction = {
    &SupportReaction::up_lb, &SupportReaction::across_lb, &SupportReaction::along_lb, &SupportReaction::torque_lb_in,
    &SupportReaction::moment_lb_in};

/// The largest of each action on each member over the base's states, by size; empty where no member carries load.
[[nodiscard]] std::vector<MemberActions> largest_actions(const Demand& demand);

/// `own` with further states for each of its states under a load that acts on all posts: what the framing meets when
/// the others' state under the same load case, the same stiffness and the nearest of their directions acts as well. All
/// demands are of one framing, each seen from its own post. The states of `own` stay as they are, so that no post is
/// better off for its neighbors. In this order:
///
/// 1. All posts at once, pushed the same way in plan: forces where members are held add with their signs, since the
///    framing is linear.
/// 2. The load on this post and on those others that make a force larger, force by force: a load along the rail may
///    stand on part of the guard alone. At least what any part gives.
/// 3. Where posts face different ways, all at once pushed the same way as each sees it: outward on every side of a
///    deck. Then 2. takes for each force the worse of both ways.
///
/// Along a member the largest of each base add by size in all, wherever they stand: at least what acts, and more where
/// their largest are apart. Anchors, bearing and the guard's movement stay the base's own.
///
/// `sharers`: posts on the same rail, one of which at a time takes what the rail keeps from this one of a concentrated
/// push (`Neighbor::times`), in the same three ways.
[[nodiscard]] Demand acting_together(const Demand& own, const std::vector<Neighbor>& others,
                                     const std::vector<Neighbor>& sharers = {});

/// Whether a rail may share the load case: the code's and the file's concentrated push.
[[nodiscard]] bool may_be_shared(const LoadCase& load);

}  // namespace toehold::demand
