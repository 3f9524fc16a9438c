#pragma once
// Several bases on one deck: what their pushes put on the framing they share when they act at the same time.
#include "demand/demand.h"

#include <vector>

namespace toehold::demand {

/// Whether a load case may act on several posts at once. A load along the rail does; the concentrated load stands at
/// one point of the guard (IBC 2021 1607.9.1.1), and a load the user states is taken as one base's own.
[[nodiscard]] bool acts_on_all_posts(const LoadCase& load);

/// The largest of each action on each member over the base's states, by size; empty where no member carries load.
[[nodiscard]] std::vector<MemberActions> largest_actions(const Demand& demand);

/// `own` with the other bases' forces on the same framing added wherever the load acts on all posts: the others' state
/// under the same load case, the same stiffness and the nearest of their directions. All demands are of one framing,
/// seen from their own posts, so that members and the places where they are held have one numbering.
///
/// Forces where members are held add with their signs, since the framing is linear. Along a member the largest of each
/// base add by size, wherever they stand: at least what acts, and more where their largest are apart. Anchors, bearing
/// and the guard's movement stay the base's own.
[[nodiscard]] Demand acting_together(const Demand& own, const std::vector<const Demand*>& others);

}  // namespace toehold::demand
