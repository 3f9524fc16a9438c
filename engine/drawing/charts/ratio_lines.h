#pragma once
// Which lines of a sweep are drawn, and how high the plot must be for them.
#include "study/sweep.h"

#include <vector>

namespace toehold::drawing {

/// The largest strengths, and those least distances that fail somewhere. First the one that governs the detail as it is
/// (of a field it does not specify: at the first value), then by their largest.
[[nodiscard]] std::vector<study::Line> ratio_lines(const study::Sweep& sweep);
/// As high as the lines reach, but for those far beyond the others, which leave the plot at its top; at least 1.25.
[[nodiscard]] double top_ratio(const std::vector<study::Line>& lines);

}  // namespace toehold::drawing
