#pragma once
// What a review's checks say of an anchor on a drawing.
#include "drawing/annotation/overlay.h"
#include "review/review.h"

#include <string>

namespace toehold::drawing {

/// The anchor's envelope; nullptr without a demand, or where the review knows no such anchor.
[[nodiscard]] const demand::AnchorEnvelope* envelope_of(const review::Review& review, const std::string& id);

/// Worst check, its status, the largest ratio, and the capacity that stands against the anchor's largest tension. A
/// least distance that is kept is no measure of how hard the anchor works, and is passed over.
void add_checks(AnchorMark& mark, const review::Review& review);

}  // namespace toehold::drawing
