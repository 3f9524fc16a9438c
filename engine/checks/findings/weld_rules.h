#pragma once
// What the standards ask of any weld, whatever its load and wherever it is.
#include "catalog/rows.h"
#include "checks/result.h"

#include <optional>

namespace toehold::checks {

/// AISC 360-16 J2.2b, Table J2.4: a small fillet on a thick part cools too fast. Of steel alone. in.
[[nodiscard]] std::optional<Finding> fillet_too_small(double leg_in, double thinner_in);

/// A filler of another metal does not make a sound weld, whatever the strengths say.
[[nodiscard]] std::optional<Finding> filler_mismatch(const catalog::Filler& filler, const catalog::Metal& post,
                                                     const catalog::Metal& plate);

}  // namespace toehold::checks
