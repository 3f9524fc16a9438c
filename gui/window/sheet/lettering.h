#pragma once
// Lettering and rules of the sheet itself, in millimeters of paper from an area's lower left corner.
#include "drawing/scene/scene.h"
#include "drawing/scene/view.h"

#include <string>

namespace toehold::window {

/// Shows a scene that is all paper: its origin stands at the area's lower left corner.
[[nodiscard]] drawing::View paper_view(const drawing::Area& area, double units_per_mm);
[[nodiscard]] drawing::Text letters(drawing::Point at_mm, std::string words, drawing::TextSize size);
[[nodiscard]] drawing::Path rule(drawing::Point from_mm, drawing::Point to_mm, drawing::Pen pen);
[[nodiscard]] drawing::Path frame(drawing::Box box_mm, drawing::Pen pen, drawing::Fill fill = drawing::Fill::none);
/// Cut to what a width of paper takes, with an ellipsis in place of what was cut.
[[nodiscard]] std::string fitted(const std::string& words, drawing::TextSize size, double width_mm);
/// About how wide the words are, mm.
[[nodiscard]] double width_mm(const std::string& words, drawing::TextSize size);

}  // namespace toehold::window
