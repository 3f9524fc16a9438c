#pragma once
// A wood post fastened to a member's side, where it is bent and sheared most: at its fasteners, net of their holes, and
// at a notch, with what the notch leaves.
#include "checks/registry.h"
#include "model/post.h"

#include <vector>

namespace toehold::checks {

[[nodiscard]] std::vector<CheckResult> wood_post_bending_at_cuts(const CheckInput& input, const model::WoodPost& post);
[[nodiscard]] std::vector<CheckResult> wood_post_shear_at_cuts(const CheckInput& input, const model::WoodPost& post);

}  // namespace toehold::checks
