#pragma once
// Words, frames and rules at places of the sheet, as one scene that is all paper.
#include "drawing/scene/scene.h"
#include "drawing/scene/view.h"

#include <string>

namespace toehold::paper::shop {

/// From the sheet's top left corner, mm of lettering, y down.
struct Spot {
    double x_mm = 0.0, y_mm = 0.0;
};

struct Style {
    drawing::TextSize size = drawing::TextSize::small;
    bool bold = false;
    drawing::Across across = drawing::Across::left;
    drawing::Pen pen = drawing::Pen::outline;
};

[[nodiscard]] drawing::Place on_paper(Spot spot);
[[nodiscard]] double width_mm(const std::string& words, const Style& style);

/// One line that stands on `foot`.
void add_words(drawing::Scene& scene, Spot foot, const std::string& words, const Style& style);
/// Broken to the width, below `top`; returns the height it takes.
double add_lines(drawing::Scene& scene, Spot top, double width_mm, const std::string& words, const Style& style);
/// What `add_lines` would take.
[[nodiscard]] double lines_height_mm(double width_mm, const std::string& words, const Style& style);
void add_rule(drawing::Scene& scene, Spot from, Spot to, drawing::Pen pen);
void add_frame(drawing::Scene& scene, const drawing::Area& area, drawing::Pen pen);

}  // namespace toehold::paper::shop
