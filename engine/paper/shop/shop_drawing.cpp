#include "paper/issue.h"
#include "paper/papers.h"
#include "paper/shop/anchor_schedule.h"
#include "paper/shop/hole_schedule.h"
#include "paper/shop/shop_notes.h"
#include "paper/shop/side/bracket.h"
#include "paper/shop/title_block.h"
#include "paper/shop/view_layout.h"
#include "paper/weight.h"
#include "paper/words.h"

#include "drawing/annotation/labels.h"

#include <algorithm>

namespace toehold::paper {
namespace {

using drawing::Area;
using drawing::Scene;
using format::Phrase;
using format::phrase;

/// mm of the sheet for a mm of lettering: capitals of figures then are about 3/32 in high, as shops ask (common
/// practice).
constexpr double lettering = 1.05;
constexpr double border_mm = 9.0, column_mm = 108.0, gap_mm = 5.0;

struct Draft {
    const catalog::Resolved& resolved;
    const std::string& input_sha256;
    const Issue& issue;
    const shop::MadePlate made;
};

PaperSize large(PaperSize paper) {
    if (paper == PaperSize::letter) return PaperSize::tabloid;
    return paper == PaperSize::a4 ? PaperSize::a3 : paper;
}

std::string or_else(const std::string& words, const char* otherwise) { return words.empty() ? otherwise : words; }

/// Under the part: which posts it is for, how many, what the plate weighs, and the paper's revision.
void add_order(shop::TitleBlock& block, const Draft& draft) {
    const Issue& issue = draft.issue;
    const auto say = [&issue](const Phrase& words) { return format::text(words, issue.locale); };
    const std::string weight = weight_words(plate_weight_lb(draft.resolved), issue.locale.system);
    const std::string quantity = issue.quantity > 0 ? std::to_string(issue.quantity) : std::string("–");
    constexpr std::ptrdiff_t after_part = 3;
    block.rows.insert(block.rows.begin() + after_part,
                      {{say(phrase("Mark")), or_else(issue.marks, "–"), 2.2, true},
                       {say(phrase("Quantity")), quantity, 0.9, true},
                       {say(phrase("Plate weighs")), weight, 1.2},
                       {say(phrase("Revision")), or_else(issue.revision, "–"), 0.9, true}});
}

shop::TitleBlock title_block(const Draft& draft, double scale) {
    const model::BaseDetail& detail = draft.resolved.detail;
    const Issue& issue = draft.issue;
    const std::string project = project_of(issue, detail);
    constexpr std::size_t digits = 12;
    const format::Locale& locale = issue.locale;
    const auto say = [&locale](const Phrase& words) { return format::text(words, locale); };
    const units::System system = locale.system;
    shop::TitleBlock block{
        {{{say(phrase("Project")), or_else(project, "–"), 3.0}, {say(phrase("Date")), or_else(issue.date, " ")}},
         {{say(phrase("Detail")), or_else(detail.name, "–"), 1.0, true}},
         {{say(phrase("Part")), or_else(draft.made.plate.name, draft.made.plate.id.c_str()), 2.0, true},
          {say(phrase("Thickness")), drawing::length_words(draft.made.plate.thickness_in, system)}},
         {{say(phrase("Material")), draft.made.metal.name}, {say(phrase("Finish, not specified: by order")), " "}},
         {{say(phrase("Post")), say(shop::post_words(draft.resolved, system))}},
         {{say(phrase("Weld")), say(shop::weld_words(draft.resolved, system)), 2.0},
          {say(phrase("Units")), system == units::System::si ? "mm" : say(phrase("inches"))}},
         {{say(phrase("Scale")), say(scale_words(scale))},
          {say(phrase("Third-angle projection")), "", 1.3, false, true},
          {say(phrase("Checked")), " ", 1.3}},
         {{say(phrase("File")), or_else(issue.file, "–")}},
         {{say(phrase("Input SHA-256")), draft.input_sha256.substr(0, digits)},
          {say(phrase("Program")), issue.program}}}};
    if (!issue.marks.empty() || !issue.revision.empty()) add_order(block, draft);
    return block;
}

constexpr layout::Style note_style{};
constexpr double note_indent_mm = 5.0, notes_title_mm = 6.0, between_mm = 2.0;

double notes_height_mm(const std::vector<std::string>& notes, double width_mm) {
    double height = notes_title_mm;
    for (const std::string& note : notes)
        height += layout::lines_height_mm(width_mm - note_indent_mm, note, note_style);
    return height;
}

void add_notes(Scene& scene, const std::string& title, const std::vector<std::string>& notes, layout::Spot top_left,
               double width_mm) {
    constexpr double title_foot_mm = 4.3;
    layout::add_words(scene, {top_left.x_mm, top_left.y_mm + title_foot_mm}, title, {drawing::TextSize::normal, true});
    double y = top_left.y_mm + notes_title_mm;
    for (std::size_t index = 0; index < notes.size(); ++index) {
        layout::add_lines(scene, {top_left.x_mm, y}, note_indent_mm, std::to_string(index + 1) + ".", note_style);
        y += layout::add_lines(scene, {top_left.x_mm + note_indent_mm, y}, width_mm - note_indent_mm, notes[index],
                               note_style);
    }
}

/// With as many rows as the room allows.
template <class Make>
shop::Schedule fitting_schedule(const Make& make, double width_mm, double room_mm) {
    constexpr std::size_t most_rows = 40;
    std::size_t rows = most_rows;
    while (rows > 0 && shop::height_mm(make(rows), width_mm) > room_mm) --rows;
    return make(rows);
}

/// Holes, corners where the plan cannot give them, tolerances and notes, above the title block.
void add_column(Scene& scene, const Draft& draft, const Area& area, bool list_corners) {
    const model::Plate& plate = draft.made.plate;
    const format::Locale& locale = draft.issue.locale;
    const shop::Schedule limits = shop::tolerances(locale);
    const std::vector<std::string> notes = shop::shop_notes(draft.resolved, locale);
    const double limits_height = shop::height_mm(limits, area.width) + between_mm;
    double room = area.height - limits_height - notes_height_mm(notes, area.width) - between_mm;
    double y = area.top;
    const double for_corners = list_corners ? 0.5 * room : 0.0;
    const auto add = [&](const shop::Schedule& schedule) {
        shop::add_schedule(scene, schedule, {area.left, y}, area.width);
        const double height = shop::height_mm(schedule, area.width) + between_mm;
        y += height;
        room -= height;
    };
    const bool bracket = kind(draft.resolved.detail.mount) == model::MountKind::side_fastened;
    const auto holes = [&](std::size_t rows) {
        return bracket ? shop::bracket_hole_schedule(plate, locale, rows) : shop::hole_schedule(plate, locale, rows);
    };
    add(fitting_schedule(holes, area.width, room - for_corners - between_mm));
    const auto corners = [&](std::size_t rows) { return shop::corner_schedule(plate.outline, locale, rows); };
    if (list_corners) add(fitting_schedule(corners, area.width, room - between_mm));
    add(limits);
    add_notes(scene, format::text(phrase("NOTES"), locale), notes, {area.left, y}, area.width);
}

}  // namespace

Sheet shop_drawing(const catalog::Resolved& resolved, const std::string& input_sha256, const Issue& issue) {
    const Draft draft{resolved, input_sha256, issue, shop::made_plate(resolved)};
    Sheet sheet;
    sheet.size = size_of(large(issue.paper), Turn::lying);
    const Area inner{border_mm, border_mm, sheet.size.width_mm / lettering - 2.0 * border_mm,
                     sheet.size.height_mm / lettering - 2.0 * border_mm};
    const double right = inner.left + inner.width, bottom = inner.top + inner.height;
    const double column_left = right - column_mm;
    const double views_width = inner.width - column_mm - gap_mm;
    Scene paper;
    paper.name = "Schedules";
    layout::add_frame(paper, inner, drawing::Pen::cut);

    const shop::Schedule anchors = shop::anchor_schedule(resolved, issue.locale);
    const double anchors_width = views_width - gap_mm;
    const double anchors_top = bottom - gap_mm - shop::height_mm(anchors, anchors_width);
    shop::add_schedule(paper, anchors, {inner.left + gap_mm, anchors_top}, anchors_width);

    constexpr double views_top_mm = 1.5, views_bottom_mm = 3.5;
    const Area frame{inner.left + gap_mm, inner.top + views_top_mm, views_width - gap_mm,
                     anchors_top - views_bottom_mm - inner.top - views_top_mm};
    const bool bracket = kind(resolved.detail.mount) == model::MountKind::side_fastened;
    shop::Views views = bracket ? shop::laid_out_bracket(resolved, issue.locale, frame, lettering)
                                : shop::laid_out_views(resolved, issue.locale, frame, lettering);

    const shop::TitleBlock block = title_block(draft, views.scale);
    const double block_top = bottom - shop::height_mm(block, column_mm);
    shop::add_title_block(paper, block, {column_left, block_top}, column_mm);

    constexpr double above_mm = 1.0;
    add_column(paper, draft, {column_left, inner.top + above_mm, column_mm - gap_mm, block_top - inner.top - above_mm},
               !views.corners_dimensioned);

    sheet.placed.push_back(placed_on_paper(std::move(paper), {}, lettering));
    std::move(views.placed.begin(), views.placed.end(), std::back_inserter(sheet.placed));
    return sheet;
}

}  // namespace toehold::paper
