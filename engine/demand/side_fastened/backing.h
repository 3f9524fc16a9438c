#pragma once
// What stands behind the joint and gives: the member the post lies against, the blocks its fasteners go through to and
// the joists its ties go back to, each as one rigid body at the post.
#include "catalog/resolve.h"
#include "mechanics/side_post/side_post.h"

#include <cstddef>
#include <vector>

namespace toehold::demand {

/// The members whose motion the joint feels, the post's own first: numbers in `model::members`, each once.
[[nodiscard]] std::vector<std::size_t> backing_members(const catalog::Resolved& resolved);

/// Those members as bodies in the mechanics' axes (y from the member's face towards the post). Lift and both tilts are
/// the grillage's; sideways motions are taken as still. Empty where there is but one member, whose motion carries
/// everything with it and changes no force, or where the framing is not described or not stable.
[[nodiscard]] mechanics::BackingBodies backing_bodies(const catalog::Resolved& resolved,
                                                      const std::vector<std::size_t>& members);

}  // namespace toehold::demand
