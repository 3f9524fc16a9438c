#pragma once
// Words beside the plan with a leader to what they speak of: sizes of holes, radius of corners.
#include "drawing/scene/scene.h"
#include "paper/shop/views.h"

#include <vector>

namespace toehold::paper::shop {

struct Callout {
    std::string words;
    drawing::Point tip_in;     ///< the leader's end
    drawing::Point direction;  ///< from there to the words, unit length, to the right
};

/// One for every size of hole with a free way to the right, and one for round corners.
[[nodiscard]] std::vector<Callout> callouts(const model::Plate& plate, const format::Locale& locale);
/// To the right of `right_in`, `off_mm` from there; words that would meet step down.
void add_callouts(drawing::Scene& scene, const std::vector<Callout>& all, double right_in, double off_mm,
                  double mm_per_in);

}  // namespace toehold::paper::shop
