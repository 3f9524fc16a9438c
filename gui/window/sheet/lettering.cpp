#include "window/sheet/lettering.h"

#include "drawing/render/palette.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::window {

using namespace drawing;

namespace {

/// Mean advance of the lettering's face over its height; a little generous.
constexpr double advance = 0.58;

bool continues_a_character(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U; }

std::size_t characters(const std::string& words) {
    return static_cast<std::size_t>(
        std::count_if(words.begin(), words.end(), [](char byte) { return !continues_a_character(byte); }));
}

Place on_paper(Point mm) { return {{}, mm}; }

}  // namespace

View paper_view(const Area& area, double units_per_mm) {
    return {{}, {area.left, area.top + area.height}, 1.0, units_per_mm};
}

Text letters(Point at_mm, std::string words, TextSize size) {
    Text text;
    text.at = on_paper(at_mm);
    text.words = std::move(words);
    text.size = size;
    return text;
}

Path rule(Point from_mm, Point to_mm, Pen pen) {
    Path path;
    path.contours = {{on_paper(from_mm), on_paper(to_mm)}};
    path.pen = pen;
    return path;
}

Path frame(Box box, Pen pen, Fill fill) {
    Path path;
    path.contours = {
        {on_paper(box.low), on_paper({box.high.x, box.low.y}), on_paper(box.high), on_paper({box.low.x, box.high.y})}};
    path.closed = true;
    path.pen = pen;
    path.fill = fill;
    return path;
}

double width_mm(const std::string& words, TextSize size) {
    return static_cast<double>(characters(words)) * advance * text_height_mm(size);
}

std::string fitted(const std::string& words, TextSize size, double width) {
    const double room = std::max(0.0, width / (advance * text_height_mm(size)));
    if (static_cast<double>(characters(words)) <= room) return words;
    std::size_t end = 0;
    for (double used = 0.0; end < words.size(); ++end) {
        if (continues_a_character(words[end])) continue;
        if (used + 2.0 > room) break;  // one for the character, one for the ellipsis
        used += 1.0;
    }
    return words.substr(0, end) + "…";
}

}  // namespace toehold::window
