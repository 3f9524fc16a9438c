#pragma once
// Studies with stored numbers on real fields and under the names of every registered check: what charts are drawn from,
// without a solve. And the boxes of a scene's words.
#include "drawing/scene/scene.h"
#include "study/study.h"

#include <string>
#include <vector>

namespace toehold::test {

/// Ratios of each registered check that rise or fall over the field, from a little to `largest`.
[[nodiscard]] study::Sweep invented_sweep(const study::Field& field, const std::vector<double>& values, double largest);
[[nodiscard]] study::Tornado invented_tornado(const std::vector<study::Field>& fields, double now);
/// Holds below a line that falls to the right; a second limit above its right half.
[[nodiscard]] study::HoldingMap invented_map(const study::Asked& across, const study::Asked& up);

}  // namespace toehold::test
