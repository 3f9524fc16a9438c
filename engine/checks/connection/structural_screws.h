#pragma once
// Structural screws through the holder into a member's end grain, by the values an evaluation report gives for that.
#include "checks/connection/connection.h"

namespace toehold::checks {

/// `screws.kind` is `structural_screw`.
[[nodiscard]] EndStrength structural_screw_strength(const catalog::Resolved& resolved, const EndPlace& place,
                                                    const model::EndGrainFasteners& screws);

}  // namespace toehold::checks
