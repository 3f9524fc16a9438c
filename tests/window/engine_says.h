#pragma once
// What the engine says of a detail without any window: the same public rooms, asked here.
#include "demand/preview.h"
#include "review/review.h"
#include "support/shipped.h"

#include <string>

namespace toehold::test {

/// Every check and the verdict; assumptions and remedies left out.
[[nodiscard]] review::Review evaluation(const model::BaseDetail& detail);
/// The review's reason as a sentence of its own.
[[nodiscard]] std::string reason_told(const review::Review& review);
/// Under one push in this direction, at nominal stiffness.
[[nodiscard]] demand::PushResult under_push(const model::BaseDetail& detail, double direction_rad);

}  // namespace toehold::test
