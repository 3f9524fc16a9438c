#pragma once
// What every kind of mount may have.
#include "model/anchor.h"
#include "model/layers.h"
#include "support/random/chance.h"

#include <string>
#include <vector>

namespace toehold::test {

[[nodiscard]] model::AnchorGroup random_group(const Chance& chance, std::vector<std::string> holes);
[[nodiscard]] model::Decking random_decking(const Chance& chance);

}  // namespace toehold::test
