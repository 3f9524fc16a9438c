#pragma once
// Which pushes a preview looks at, whatever the mount.
#include "demand/preview.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::demand {

/// What no other load case outdoes in any direction. Forces grow in proportion to a push that nothing accompanies, so
/// of those only the one with the largest moment counts; a preload or a vertical force ends that proportion.
[[nodiscard]] std::vector<std::size_t> cases_that_count(const std::vector<LoadCase>& cases, bool preloaded);

/// Square to the rail or along it; absent for a push aslant by more than half a degree.
[[nodiscard]] std::optional<double> square_direction(double direction_rad);

/// A step of the rose and the direction it stands for.
struct RoseStep {
    std::size_t index = 0;
    double direction_rad = 0.0;
};
/// `count` equal steps; where a case has one or two directions, the nearest step to each.
[[nodiscard]] std::vector<RoseStep> rose_steps(const LoadCase& load, std::size_t count);

/// A rose asks for at least so many.
inline constexpr int fewest_rose_directions = 4;

/// Keeps the larger of what is known and this tension.
void keep_largest(PolarEnvelope& polar, double tension_lb, std::size_t anchor, double direction_rad);

}  // namespace toehold::demand
