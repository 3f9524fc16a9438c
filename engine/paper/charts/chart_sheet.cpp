#include "paper/charts/chart_sheet.h"

#include "drawing/charts/chart.h"
#include "export/csv/study_csv.h"
#include "paper/issue.h"
#include "paper/layout/on_paper.h"
#include "paper/paper_file.h"
#include "paper/shop/title_block.h"
#include "paper/words.h"

#include <algorithm>
#include <stdexcept>

namespace toehold::paper {
namespace {

using drawing::Area;
using format::Phrase;
using format::phrase;

constexpr double sheet_border_mm = 9.0, pad_mm = 4.0, block_mm = 104.0, gap_mm = 6.0, title_mm = 9.0;
constexpr layout::Style note_style{};

std::string or_dash(const std::string& words, const char* instead) { return words.empty() ? instead : words; }

std::string anchors_of(const catalog::Resolved& resolved) {
    std::vector<std::string> names;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (std::find(names.begin(), names.end(), anchor.name) == names.end()) names.push_back(anchor.name);
    }
    std::string all;
    for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
    return all.empty() ? all : std::to_string(resolved.anchors.size()) + " x " + all;
}

shop::TitleBlock title_block(const Studied& studied, const Issue& issue) {
    const model::BaseDetail& detail = studied.resolved.detail;
    const auto say = [&issue](const Phrase& words) { return format::text(words, issue.locale); };
    constexpr std::size_t digits = 12;
    return {{{{say(phrase("Project")), or_dash(project_of(issue, detail), "–"), 3.0},
              {say(phrase("Date")), or_dash(issue.date, " ")}},
             {{say(phrase("Detail")), or_dash(detail.name, "–"), 1.0, true}},
             {{say(phrase("Plate")), say(model::main_part_words(detail))},
              {say(phrase("Anchors")), or_dash(anchors_of(studied.resolved), "–")}},
             {{say(phrase("File")), or_dash(issue.file, "–"), 2.0},
              {say(phrase("Input SHA-256")), studied.input_sha256.substr(0, digits)},
              {say(phrase("Program")), issue.program}}}};
}

struct Notes {
    std::vector<std::string> all;
    std::string more, basis;  ///< where there is no room for all; and what stands below them in any case
};

Notes notes_of(const std::vector<Phrase>& notes, const format::Locale& locale) {
    Notes made;
    for (const Phrase& note : notes) made.all.push_back(written(note, locale));
    made.more = format::text(phrase("More is said with the table that toehold chart prints."), locale);
    made.basis = format::text(
        phrase("Every point is the whole review of the changed detail. A design aid: local code and the authority "
               "having jurisdiction govern."),
        locale);
    return made;
}

double note_height_mm(const std::string& words, double width_mm, const layout::Style& style) {
    constexpr double between_mm = 0.8;
    return layout::lines_height_mm(width_mm, words, style) + between_mm;
}

/// Smaller where they do not all fit in the room.
layout::Style style_for(const Notes& notes, const Area& area) {
    double height = note_height_mm(notes.basis, area.width, note_style);
    for (const std::string& words : notes.all) height += note_height_mm(words, area.width, note_style);
    if (height <= area.height) return note_style;
    return {drawing::TextSize::fine};
}

/// Each broken to the width; where even so there is no room for all of them, that is said.
void add_notes(drawing::Scene& scene, const Notes& notes, const Area& area) {
    const layout::Style style = style_for(notes, area);
    const auto height = [&](const std::string& words) { return note_height_mm(words, area.width, style); };
    const double foot = area.top + area.height - height(notes.basis);
    double y = area.top;
    const auto add = [&](const std::string& words) {
        layout::add_lines(scene, {area.left, y}, area.width, words, style);
        y += height(words);
    };
    for (std::size_t index = 0; index < notes.all.size(); ++index) {
        const double after = index + 1 == notes.all.size() ? 0.0 : height(notes.more);
        if (y + height(notes.all[index]) + after > foot) {
            add(notes.more);
            break;
        }
        add(notes.all[index]);
    }
    add(notes.basis);
}

}  // namespace

Phrase chart_title(const study::AnyStudy& study) {
    if (const auto* const sweep = std::get_if<study::Sweep>(&study))
        return phrase("Demand over capacity against {}", sweep->field.name);
    if (const auto* const map = std::get_if<study::HoldingMap>(&study))
        return phrase("What holds: {} and {}", map->across.name, map->up.name);
    return phrase("What a small change of each input does to the governing ratio");
}

Sheet chart_sheet(const study::AnyStudy& study, const Studied& studied, const Issue& issue) {
    Sheet sheet;
    sheet.size = size_of(issue.paper, Turn::lying);
    const Area inner{sheet_border_mm, sheet_border_mm, sheet.size.width_mm - 2.0 * sheet_border_mm,
                     sheet.size.height_mm - 2.0 * sheet_border_mm};
    const double right = inner.left + inner.width, bottom = inner.top + inner.height;
    drawing::Scene paper;
    paper.name = "Chart sheet";
    layout::add_frame(paper, inner, drawing::Pen::cut);
    layout::add_words(paper, {inner.left + pad_mm, inner.top + title_mm - 1.5},
                      format::text(chart_title(study), issue.locale), {drawing::TextSize::large, true});
    const shop::TitleBlock block = title_block(studied, issue);
    const double block_height = shop::height_mm(block, block_mm);
    shop::add_title_block(paper, block, {right - block_mm, bottom - block_height}, block_mm);
    const double foot = bottom - block_height - pad_mm;
    drawing::Chart chart =
        drawing::chart_of(study, {inner.width - 2.0 * pad_mm, foot - inner.top - title_mm - pad_mm, issue.locale});
    add_notes(
        paper, notes_of(chart.notes, issue.locale),
        {inner.left + pad_mm, foot + 0.5 * pad_mm, inner.width - block_mm - gap_mm - pad_mm, bottom - foot - pad_mm});
    sheet.placed.push_back(placed_on_paper(std::move(paper), {}));
    sheet.placed.push_back({std::move(chart.scene), {}, {inner.left + pad_mm, foot}, 1.0, 1.0});
    return sheet;
}

std::vector<std::string> chart_endings() { return {"svg", "pdf", "png", "csv"}; }

std::string chart_file(const study::AnyStudy& study, std::string_view ending, const Studied& studied,
                       const Issue& issue) {
    if (ending == "csv") {
        if (const auto* const sweep = std::get_if<study::Sweep>(&study)) return exporting::sweep_csv(*sweep);
        if (const auto* const tornado = std::get_if<study::Tornado>(&study)) return exporting::tornado_csv(*tornado);
        return exporting::map_csv(std::get<study::HoldingMap>(study));
    }
    const Sheet sheet = chart_sheet(study, studied, issue);
    if (ending != "svg" && ending != "png" && ending != "pdf")
        throw std::invalid_argument("no chart ends in ." + std::string(ending));
    const std::string title = studied.resolved.detail.name + ": " + format::text(chart_title(study), issue.locale);
    return sheet_file(sheet, ending, title, issue);
}

}  // namespace toehold::paper
