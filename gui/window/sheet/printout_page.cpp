#include "window/sheet/printout_page.h"

#include "drawing/drawings.h"
#include "format/figures.h"
#include "review/review.h"
#include "units/unit_table.h"
#include "window/panels/verdict_words.h"
#include "window/sheet/cell_scene.h"
#include "window/sheet/layout.h"
#include "window/sheet/lettering.h"
#include "window/sheet/title_block.h"
#include "window/text.h"

#include <wx/translation.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace toehold::window {

namespace {

using drawing::Area;
using drawing::Ground;

constexpr double foot_mm = 30.0;  // verdict and cautions, of the page
constexpr double lettering_share =
    0.72;  // the drawings' lettering is for a large sheet: smaller here, and still legible
// Of the lettering's own millimeters:
constexpr double line_mm = 4.4;
constexpr double word_box_mm = 58.0;
constexpr std::size_t lines_enough = 9;
// One to so many; a drawing on paper is at one of them, so that it can be measured.
constexpr std::array customary_scales{0.5,  1.0,  2.0,  4.0,  5.0,  8.0,  10.0, 12.0,
                                      16.0, 20.0, 24.0, 32.0, 40.0, 48.0, 64.0, 96.0};

/// A surface, its scale, and the one ground of paper.
struct Paper {
    cairo_t* cairo = nullptr;
    double true_units_per_mm = 1.0;
    double units_per_mm = 1.0;  ///< of lettering and marks
    void paint(const drawing::Scene& scene, const drawing::View& view) const {
        drawing::paint(cairo, scene, view, Ground::print);
    }
    void paint(const drawing::Scene& scene, const Area& area) const { paint(scene, paper_view(area, units_per_mm)); }
    [[nodiscard]] double mm(double units) const { return units / units_per_mm; }
};

drawing::View fitted_to_scale(const drawing::Scene& scene, const Area& area, const Paper& paper) {
    drawing::View view = drawing::fit(scene, area, paper.units_per_mm);
    const double full_size = paper.true_units_per_mm * units::mm_per_in;
    const auto scale = std::find_if(customary_scales.begin(), customary_scales.end(),
                                    [&](double one_to) { return full_size / one_to <= view.units_per_in; });
    if (scale != customary_scales.end()) view.units_per_in = full_size / *scale;
    return view;
}

/// Broken at blanks into lines of a width; what does not fit in them ends in an ellipsis.
std::vector<std::string> broken(const std::string& text, double width, drawing::TextSize size, std::size_t most) {
    std::vector<std::string> lines;
    std::string line;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t blank = std::min(text.find(' ', from), text.size());
        const std::string word = text.substr(from, blank - from);
        std::string longer = line;
        if (!line.empty()) longer += " ";
        longer += word;
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

void paint_cell(const Paper& paper, CellKind kind, const CellAreas& areas, const session::Session& session,
                const drawing::Overlay& overlay) {
    Wishes wishes;
    const model::PartId part = session.selection().empty() ? model::PartId() : session.selection().front();
    wishes.plane = drawing::section_plane(session.detail(), part);
    const drawing::Scene scene = cell_scene(kind, session, overlay, wishes);
    const drawing::View view = kind == CellKind::rose ? drawing::fit(scene, areas.drawing, paper.units_per_mm)
                                                      : fitted_to_scale(scene, areas.drawing, paper);
    paper.paint(scene, view);
    drawing::View true_view = view;
    true_view.units_per_mm = paper.true_units_per_mm;
    const double width = paper.mm(areas.title.width), height = paper.mm(areas.title.height);
    paper.paint(title_scene(cell_title(kind, session, wishes), cell_scale(kind, session, true_view), width, height),
                areas.title);
    paper.paint({"",
                 {frame({{0.0, 0.0}, {paper.mm(areas.frame.width), paper.mm(areas.frame.height)}}, drawing::Pen::thin)},
                 {},
                 0.0},
                areas.frame);
}

drawing::Scene verdict_scene(const VerdictWords& words, const review::Review* review, const format::Locale& locale,
                             double width, double height) {
    drawing::Scene scene;
    scene.items.emplace_back(frame({{0.0, 0.0}, {width, height}}, drawing::Pen::outline));
    scene.items.emplace_back(frame({{4.0, height - 13.0}, {4.0 + word_box_mm, height - 4.0}}, words.frame));
    drawing::Text word = letters({4.0 + 0.5 * word_box_mm, height - 8.5}, utf8(words.word), drawing::TextSize::large);
    word.across = drawing::Across::middle;
    word.upright = drawing::Upright::middle;
    word.bold = true;
    scene.items.emplace_back(word);
    scene.items.emplace_back(letters({4.0, height - 19.0}, utf8(words.freshness), drawing::TextSize::small));
    if (words.ratio) {
        scene.items.emplace_back(
            letters({4.0, height - 24.0}, "D/C " + format::ratio_text(*words.ratio), drawing::TextSize::normal));
    }
    const double left = 4.0 + word_box_mm + 6.0, room = width - left - 4.0;
    double top = height - 8.0;
    const auto write = [&](const std::string& text, drawing::TextSize size, std::size_t most) {
        for (const std::string& line : broken(text, room, size, most)) {
            scene.items.emplace_back(letters({left, top}, line, size));
            top -= line_mm;
        }
    };
    write(utf8(words.reason), drawing::TextSize::normal, 2);
    if (review == nullptr || review->cautions.empty()) {
        write(utf8(_("Cautions are still being worked out. Print again when the sheet is up to date.")),
              drawing::TextSize::small, lines_enough);
        return scene;
    }
    // A caution is given whole or counted, never cut short.
    std::size_t given = 0;
    for (const format::Phrase& sentence : review->cautions) {
        const std::string caution = format::text(sentence, locale);
        const auto lines = broken(caution, room, drawing::TextSize::small, lines_enough);
        const bool last = given + 1 == review->cautions.size();
        if (top - line_mm * (static_cast<double>(lines.size()) + (last ? 0.0 : 1.0)) < 0.0) break;
        write(caution, drawing::TextSize::small, lines_enough);
        ++given;
    }
    if (given < review->cautions.size()) {
        write(utf8(wxString::Format(_("Cautions not printed here: %zu. Read them in the report."),
                                    review->cautions.size() - given)),
              drawing::TextSize::small, 1);
    }
    return scene;
}

}  // namespace

void paint_page(cairo_t* cairo, const Area& page, double units_per_mm, const session::Session& session) {
    const Paper paper{cairo, units_per_mm, lettering_share * units_per_mm};
    drawing::paint_ground(cairo, page, Ground::print);
    const double foot = foot_mm * units_per_mm;
    const Area sheet{page.left, page.top, page.width, std::max(1.0, page.height - foot)};
    const SheetCells cells = sheet_cells(sheet, paper.units_per_mm);
    const drawing::Overlay overlay = session.overlay();
    for (const CellKind kind : cell_kinds) paint_cell(paper, kind, cells.cells[index_of(kind)], session, overlay);
    const double block_width = paper.mm(cells.title_block.width), block_height = paper.mm(cells.title_block.height);
    paper.paint(title_block(title_words(session, overlay), block_width, block_height), cells.title_block);
    // The foot stands as wide as the sheet's own border.
    const Area verdict{cells.border.left, sheet.top + sheet.height, cells.border.width, foot};
    paper.paint(verdict_scene(verdict_words(session), session.review(), session.locale(), paper.mm(verdict.width),
                              paper.mm(verdict.height)),
                verdict);
}

}  // namespace toehold::window
