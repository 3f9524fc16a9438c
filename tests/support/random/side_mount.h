#pragma once
#include "model/side_mount.h"
#include "support/random/chance.h"

namespace toehold::test {

/// Whatever a file can say of a post fastened to the side of a member; nothing of it need fit.
[[nodiscard]] model::SideFastened random_side_mount(const Chance& chance);

}  // namespace toehold::test
