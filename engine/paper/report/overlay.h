#pragma once
// What the report's figures say of the forces, from the review alone: the push that pulls most, the anchors' marks
// under it, the bed's pressure, and the polar envelope.
#include "drawing/annotation/overlay.h"
#include "review/review.h"

#include <vector>

namespace toehold::paper::report {

/// State of the demand in which some anchor's tension is the largest of all; nullptr without a demand or anchors.
[[nodiscard]] const demand::State* governing_state(const review::Review& review);

/// Marks and push of the governing state, with the stiffness of that state. The field is the review's own and absent
/// where the plate is rigid. Without a demand nothing is marked.
[[nodiscard]] drawing::Overlay overlay(const review::Review& review, const format::Locale& locale);

/// Tension of every anchor at the stiffness as computed, the largest over the loads, at equal steps of the push. Where
/// loads push outward alone every other direction is 0. Empty without a demand.
[[nodiscard]] std::vector<drawing::PolarCurve> polar_curves(const review::Review& review);

}  // namespace toehold::paper::report
