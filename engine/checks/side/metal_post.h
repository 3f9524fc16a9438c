#pragma once
// A metal post fastened to a member's side, where it is bent and sheared most: at its fasteners, net of the holes
// through its walls, or along the bracket it is welded to.
#include "checks/registry.h"

#include <vector>

namespace toehold::checks {

[[nodiscard]] std::vector<CheckResult> metal_post_bending_at_cuts(const CheckInput& input);
[[nodiscard]] std::vector<CheckResult> metal_post_shear_at_cuts(const CheckInput& input);

}  // namespace toehold::checks
