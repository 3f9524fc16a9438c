#pragma once
// Where the words of a chart stand, measured without the chart's own layout.
#include "drawing/scene/scene.h"

#include <string>
#include <vector>

namespace toehold::test {

struct WordBox {
    std::string words;
    drawing::Box mm;  ///< from the lower left corner of the chart
};
/// Of each text, as wide as it is measured and as high as its capitals, turned by a quarter where it is.
[[nodiscard]] std::vector<WordBox> word_boxes(const drawing::Scene& scene);
/// Pairs that cover each other by more than a hair, in words; and words outside the chart.
[[nodiscard]] std::vector<std::string> collisions(const drawing::Scene& scene);

}  // namespace toehold::test
