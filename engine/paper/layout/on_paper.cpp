#include "paper/layout/on_paper.h"

#include "drawing/render/lettering.h"
#include "drawing/render/palette.h"
#include "drawing/scene/shapes.h"

namespace toehold::paper::layout {
namespace {

std::vector<std::string> lines_of(double width_mm, const std::string& words, const Style& style) {
    return drawing::broken_into_lines(words, width_mm, {style.size, style.bold, style.math});
}

}  // namespace

drawing::Place on_paper(Spot spot) { return {{}, {spot.x_mm, -spot.y_mm}}; }

void add_words(drawing::Scene& scene, Spot foot, const std::string& words, const Style& style) {
    if (words.empty()) return;
    drawing::Text text;
    text.at = on_paper(foot);
    text.words = words;
    text.size = style.size;
    text.across = style.across;
    text.pen = style.pen;
    text.bold = style.bold;
    text.math = style.math;
    scene.items.emplace_back(std::move(text));
}

double add_lines(drawing::Scene& scene, Spot top, double width_mm, const std::string& words, const Style& style) {
    const double spacing = drawing::line_spacing_mm(style.size), letters = drawing::text_height_mm(style.size);
    double foot = top.y_mm + 0.5 * (spacing + 0.72 * letters);
    const double shift = style.across == drawing::Across::right    ? width_mm
                         : style.across == drawing::Across::middle ? 0.5 * width_mm
                                                                   : 0.0;
    const std::vector<std::string> lines = lines_of(width_mm, words, style);
    for (const std::string& line : lines) {
        add_words(scene, {top.x_mm + shift, foot}, line, style);
        foot += spacing;
    }
    return spacing * static_cast<double>(lines.size());
}

double lines_height_mm(double width_mm, const std::string& words, const Style& style) {
    return drawing::line_spacing_mm(style.size) * static_cast<double>(lines_of(width_mm, words, style).size());
}

void add_rule(drawing::Scene& scene, Spot from, Spot to, drawing::Pen pen) {
    scene.items.emplace_back(drawing::line(on_paper(from), on_paper(to), pen));
}

void add_frame(drawing::Scene& scene, const drawing::Area& area, drawing::Pen pen, drawing::Fill fill) {
    const Spot low{area.left, area.top + area.height};
    scene.items.emplace_back(drawing::rectangle_mm(on_paper(low), {}, {area.width, area.height}, pen, fill));
}

}  // namespace toehold::paper::layout
