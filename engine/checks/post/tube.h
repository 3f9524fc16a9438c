#pragma once
// A tube standing on the plate under every push: what the checks of a metal post and of a shoe's wall share.
#include "catalog/rows.h"
#include "checks/post/foot.h"
#include "checks/registry.h"

namespace toehold::checks {

/// The worst push on the tube at the plate. Biaxial bending and axial force add linearly: AISC 360-16 H1.1.
/// Subject and link are the caller's.
[[nodiscard]] CheckResult tube_bending(const CheckInput& input, const PostFoot& foot, const catalog::Metal& metal,
                                       double free_height_in);

}  // namespace toehold::checks
