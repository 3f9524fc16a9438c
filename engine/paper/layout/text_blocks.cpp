// Headings, paragraphs, and white.
#include "drawing/render/lettering.h"
#include "paper/layout/blocks.h"

#include <algorithm>
#include <cmath>

namespace toehold::paper::layout {

void set(Pages& pages, const Heading& heading) {
    const bool first = heading.level == 1;
    const drawing::TextSize size = first ? drawing::TextSize::large : drawing::TextSize::normal;
    const double above = first ? 5.0 : 3.5, below = first ? 3.2 : 2.0;
    // It stays with what it is the head of.
    constexpr double company_mm = 18.0;
    const auto lines = drawing::broken_into_lines(heading.words, pages.width(), {size, true, false});
    pages.need(above + static_cast<double>(lines.size()) * drawing::line_spacing_mm(size) + below + company_mm);
    if (pages.room() < pages.whole_room()) pages.advance(above);
    pages.destination(heading.name);
    for (const std::string& line : lines) {
        pages.write(
            {{pages.left(), pages.y() + drawing::capitals_mm(size)}, line, size, drawing::Across::left, true, false});
        pages.advance(drawing::line_spacing_mm(size));
    }
    pages.advance(below - 1.2);
    if (first) pages.rule({pages.left(), pages.y()}, {pages.left() + pages.width(), pages.y()}, drawing::Pen::outline);
    pages.advance(first ? 2.4 : 0.6);
}

void set(Pages& pages, const Paragraph& paragraph) {
    const double left = pages.left() + paragraph.indent_mm, width = pages.width() - paragraph.indent_mm;
    const double spacing = drawing::line_spacing_mm(paragraph.size);
    const auto lines =
        drawing::broken_into_lines(paragraph.words, width, {paragraph.size, paragraph.bold, paragraph.math});
    // Two lines at least stay together.
    pages.need(spacing * static_cast<double>(std::min<std::size_t>(lines.size(), 2)));
    bool marked = paragraph.mark.empty();
    for (const std::string& line : lines) {
        pages.need(spacing);
        const double foot = pages.y() + drawing::capitals_mm(paragraph.size);
        if (!marked) pages.write({{pages.left(), foot}, paragraph.mark, paragraph.size, {}, paragraph.bold, false});
        marked = true;
        pages.write({{left, foot}, line, paragraph.size, drawing::Across::left, paragraph.bold, paragraph.math});
        pages.link({left, pages.y() - 0.4, width, spacing}, paragraph.link);
        pages.advance(spacing);
    }
    pages.advance(0.35 * spacing);
}

void set(Pages& pages, const Space& space) { pages.advance(std::min(space.height_mm, std::max(0.0, pages.room()))); }

void set(Pages& pages, const Room& room) {
    if (std::isinf(room.needed_mm)) {
        if (pages.room() < pages.whole_room()) pages.turn_page();
        return;
    }
    pages.need(room.needed_mm);
}

}  // namespace toehold::paper::layout
