#pragma once
// A sawn wood post bent above its shoe.
#include "checks/registry.h"

namespace toehold::checks {

/// The worst push on the post at the shoe's top, as a ratio: NDS 2018 3.9.2 without axial force, factors of
/// Table 4.3.1.
[[nodiscard]] CheckResult wood_post_bending(const CheckInput& input, const model::WoodPost& post);

}  // namespace toehold::checks
