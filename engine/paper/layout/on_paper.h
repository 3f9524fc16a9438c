#pragma once
// Words, rules and frames at places of a sheet, in a scene that is all paper: what every paper is set with. Places are
// from the sheet's top left corner, mm of lettering, y down.
#include "drawing/scene/scene.h"
#include "drawing/scene/view.h"

#include <string>
#include <vector>

namespace toehold::paper::layout {

struct Spot {
    double x_mm = 0.0, y_mm = 0.0;
};

struct Style {
    drawing::TextSize size = drawing::TextSize::small;
    bool bold = false;
    drawing::Across across = drawing::Across::left;
    drawing::Pen pen = drawing::Pen::outline;
    bool math = false;  ///< subscripts, as in drawing::Text
};

[[nodiscard]] drawing::Place on_paper(Spot spot);

/// One line; the feet of its capitals stand on `foot`. Nothing for empty words.
void add_words(drawing::Scene& scene, Spot foot, const std::string& words, const Style& style);
/// Broken to the width, below `top`; returns the height it takes.
double add_lines(drawing::Scene& scene, Spot top, double width_mm, const std::string& words, const Style& style);
/// What `add_lines` would take.
[[nodiscard]] double lines_height_mm(double width_mm, const std::string& words, const Style& style);
void add_rule(drawing::Scene& scene, Spot from, Spot to, drawing::Pen pen);
void add_frame(drawing::Scene& scene, const drawing::Area& area, drawing::Pen pen,
               drawing::Fill fill = drawing::Fill::none);

/// The width in proportion to the `share` of each column, field or part.
template <class Shared>
[[nodiscard]] std::vector<double> shared_widths_mm(const std::vector<Shared>& all, double width_mm) {
    double shares = 0.0;
    for (const Shared& one : all) shares += one.share;
    std::vector<double> widths;
    widths.reserve(all.size());
    for (const Shared& one : all) widths.push_back(width_mm * one.share / shares);
    return widths;
}

}  // namespace toehold::paper::layout
