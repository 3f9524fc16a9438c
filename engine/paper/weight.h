#pragma once
// What a base plate weighs, and weights as a shop writes them.
#include "units/quantity.h"

#include <string>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::paper {

/// Without its holes, by its nominal thickness and catalog/density.h.
[[nodiscard]] double plate_weight_lb(const catalog::Resolved& resolved);
/// To a tenth: `9.4 lb`, `4.3 kg`.
[[nodiscard]] std::string weight_words(double weight_lb, units::System system);

}  // namespace toehold::paper
