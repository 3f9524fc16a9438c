#pragma once
// Which push pulls most on any anchor, by the newest answers.
#include "review/review.h"

#include <optional>

namespace toehold::session {

/// Whether two directions are the same for a reader: within half a degree.
[[nodiscard]] bool same_direction(double one_rad, double other_rad);

/// Direction of the review's largest tension. A symmetric base has several that are as large: of those the nearest to
/// `shown_rad`, and that one itself where it is the same for a reader, so that the push shown does not jump about.
/// Absent: the review has no demand.
[[nodiscard]] std::optional<double> governing_direction(const review::Review& review, double shown_rad);

}  // namespace toehold::session
