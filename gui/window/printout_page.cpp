#include "window/printout_page.h"

#include "drawing/drawings.h"
#include "output/figures.h"
#include "window/paths.h"
#include "window/sheet/cell_scene.h"
#include "window/sheet/lettering.h"
#include "window/sheet/sheet_layout.h"
#include "window/sheet/title_block.h"
#include "window/verdict_words.h"

#include <wx/translation.h>

#include <algorithm>
#include <string>
#include <vector>

namespace toehold::window {

namespace {

using drawing::Area;
using drawing::Ground;

constexpr double foot_mm = 30.0;  // verdict and cautions
constexpr double line_mm = 4.6;
constexpr double word_box_mm = 52.0;
constexpr std::size_t most_cautions = 2;

/// A surface, its scale, and the one ground of paper.
struct Paper {
    cairo_t* cairo = nullptr;
    double units_per_mm = 1.0;
    void paint(const drawing::Scene& scene, const drawing::View& view) const {
        drawing::paint(cairo, scene, view, Ground::print);
    }
    void paint(const drawing::Scene& scene, const Area& area) const { paint(scene, paper_view(area, units_per_mm)); }
    [[nodiscard]] double mm(double units) const { return units / units_per_mm; }
};

/// Broken at blanks into lines of a width; what does not fit in them ends in an ellipsis.
std::vector<std::string> broken(const std::string& text, double width, drawing::TextSize size, std::size_t most) {
    std::vector<std::string> lines;
    std::string line;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t blank = std::min(text.find(' ', from), text.size());
        const std::string word = text.substr(from, blank - from);
        const std::string longer = line.empty() ? word : line + " " + word;
        if (lines.size() + 1 < most && !line.empty() && width_mm(longer, size) > width) {
            lines.push_back(line);
            line = word;
        } else {
            line = longer;
        }
        from = blank + 1;
    }
    lines.push_back(fitted(line, size, width));
    return lines;
}

void paint_cell(const Paper& paper, CellKind kind, const CellAreas& areas, const desk::Desk& desk,
                const drawing::Overlay& overlay) {
    Wishes wishes;
    const std::string part = desk.selection().empty() ? std::string() : desk.selection().front();
    wishes.plane = drawing::section_plane(desk.detail(), part);
    const drawing::Scene scene = cell_scene(kind, desk, overlay, wishes);
    const drawing::View view = kind == CellKind::rose ? drawing::fit(scene, areas.drawing, paper.units_per_mm)
                                                      : drawing::fit_to_scale(scene, areas.drawing, paper.units_per_mm);
    paper.paint(scene, view);
    const double width = paper.mm(areas.title.width), height = paper.mm(areas.title.height);
    paper.paint(title_scene(cell_title(kind, desk, wishes), cell_scale(kind, desk, view), width, height), areas.title);
    paper.paint({"",
                 {frame({{0.0, 0.0}, {paper.mm(areas.frame.width), paper.mm(areas.frame.height)}}, drawing::Pen::thin)},
                 {},
                 0.0},
                areas.frame);
}

drawing::Scene verdict_scene(const VerdictWords& words, const review::Review* review, double width, double height) {
    drawing::Scene scene;
    scene.items.emplace_back(frame({{0.0, 0.0}, {width, height}}, drawing::Pen::outline));
    scene.items.emplace_back(frame({{4.0, height - 13.0}, {4.0 + word_box_mm, height - 4.0}}, words.frame));
    drawing::Text word =
        letters({4.0 + 0.5 * word_box_mm, height - 8.5}, plain_text(words.word), drawing::TextSize::large);
    word.across = drawing::Across::middle;
    word.upright = drawing::Upright::middle;
    word.bold = true;
    scene.items.emplace_back(word);
    scene.items.emplace_back(letters({4.0, height - 19.0}, plain_text(words.freshness), drawing::TextSize::small));
    if (words.ratio) {
        scene.items.emplace_back(
            letters({4.0, height - 24.0}, "D/C " + output::ratio_text(*words.ratio), drawing::TextSize::normal));
    }
    const double left = 4.0 + word_box_mm + 6.0, room = width - left - 4.0;
    double top = height - 8.0;
    const auto write = [&](const std::string& text, drawing::TextSize size, std::size_t most) {
        for (const std::string& line : broken(text, room, size, most)) {
            scene.items.emplace_back(letters({left, top}, line, size));
            top -= line_mm;
        }
    };
    write(plain_text(words.reason), drawing::TextSize::normal, 2);
    if (review == nullptr) return scene;
    for (std::size_t number = 0; number < std::min(most_cautions, review->cautions.size()); ++number) {
        write(review->cautions[number], drawing::TextSize::small, 1);
    }
    if (review->cautions.size() > most_cautions) {
        write(plain_text(
                  wxString::Format(_("and %zu cautions more, in the report"), review->cautions.size() - most_cautions)),
              drawing::TextSize::small, 1);
    }
    return scene;
}

}  // namespace

void paint_page(cairo_t* cairo, const Area& page, double units_per_mm, const desk::Desk& desk) {
    const Paper paper{cairo, units_per_mm};
    drawing::paint_ground(cairo, page, Ground::print);
    const double foot = foot_mm * units_per_mm;
    const Area sheet{page.left, page.top, page.width, std::max(1.0, page.height - foot)};
    const SheetCells cells = sheet_cells(sheet, units_per_mm);
    const drawing::Overlay overlay = desk.overlay();
    for (const CellKind kind : cell_kinds) paint_cell(paper, kind, cells.cells[index_of(kind)], desk, overlay);
    const double block_width = paper.mm(cells.title_block.width), block_height = paper.mm(cells.title_block.height);
    paper.paint(title_block(title_words(desk, overlay), block_width, block_height), cells.title_block);
    // The foot stands as wide as the sheet's own border.
    const Area verdict{cells.border.left, sheet.top + sheet.height, cells.border.width, foot};
    paper.paint(verdict_scene(verdict_words(desk), desk.review(), paper.mm(verdict.width), paper.mm(verdict.height)),
                verdict);
}

}  // namespace toehold::window
