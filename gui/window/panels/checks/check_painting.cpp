#include "window/panels/checks/check_painting.h"

#include "checks/registry.h"
#include "format/figures.h"
#include "window/text.h"
#include "window/theme/status_marks.h"
#include "wording/status.h"

#include <wx/intl.h>

#include <algorithm>
#include <cmath>

namespace toehold::window {
namespace {

constexpr int padding = 6;
constexpr int opener = 20;
constexpr int frame_width = 52;
constexpr int frame_height = 26;
constexpr int bar_height = 9;

/// The row's place, its theme and its fonts.
struct Walk {
    wxDC& dc;
    const RowStyle& row;
    const Theme& theme;
    wxRect area;
    bool paint;

    [[nodiscard]] TextStyle text_style(double scale, bool bold, const wxColour& colour, Setting setting) const {
        const auto size = static_cast<float>(scale);
        wxFont font = row.font.Scaled(size);
        if (bold) font.MakeBold();
        const wxColour shown = row.stale ? mixed(colour, theme.paper, 0.55) : colour;
        return {font, shown, setting};
    }
    [[nodiscard]] TextStyle normal(bool bold = false) const { return text_style(1.0, bold, theme.ink, Setting::plain); }
    [[nodiscard]] TextStyle fine() const { return text_style(0.86, false, theme.faded, Setting::plain); }
    [[nodiscard]] TextStyle symbols(bool bold = false) const {
        return text_style(1.0, bold, theme.ink, Setting::symbols);
    }

    [[nodiscard]] int set(const wxString& words, const wxPoint& at, int width, const TextStyle& how) const {
        return paint ? flow(dc, words, at, width, how) : flow_height(dc, words, width, how);
    }
    [[nodiscard]] int column(int left) const { return std::max(area.width - left - padding, 40); }
};

const checks::Check* check_of(const checks::CheckResult& result) {
    const auto& all = checks::registered_checks();
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& known) { return known.id == result.id; });
    return found == all.end() ? nullptr : &*found;
}

wxString status_words(const checks::CheckResult& result, bool stale, const format::Locale& locale) {
    const wxString word = text_of(wording::word(result.status), locale);
    return stale ? wxString(_("out of date")) + " " + word : word;
}

/// `anchor D (4 alike): 1908 lb of 346.3 lb, toward 315 deg`
wxString subject_words(const checks::CheckResult& result, const format::Locale& locale, std::size_t alike) {
    wxString words = subject_name(result, locale, alike);
    const wxString demand = figure(result.demand, result.unit, locale);
    if (result.status == checks::Status::missing_evidence) {
        words += ": " + wxString::Format(_("%s, capacity not known"), demand);
    } else {
        words += ": " + wxString::Format(_("%s of %s"), demand, figure(result.capacity, result.unit, locale));
    }
    if (result.direction_deg) {
        words += ", " +
                 wxString::Format(_("toward %s deg"), text_of(format::degrees_text(std::round(*result.direction_deg))));
    }
    return words;
}

void paint_opener(const Walk& walk) {
    const int x = walk.area.x + opener / 2 + 1, y = walk.area.y + padding + frame_height / 2;
    const wxPoint closed[] = {{x - 3, y - 5}, {x + 3, y}, {x - 3, y + 5}};
    const wxPoint opened[] = {{x - 5, y - 3}, {x, y + 3}, {x + 5, y - 3}};
    walk.dc.SetPen(wxPen(walk.theme.faded, 2));
    walk.dc.DrawLines(3, walk.row.open ? opened : closed);
}

/// Beside every line of an open result without a gap, so that they stay one.
void paint_selection_mark(const Walk& walk, bool starts) {
    const int from = starts ? 2 : 0;
    walk.dc.SetPen(*wxTRANSPARENT_PEN);
    walk.dc.SetBrush(wxBrush(walk.theme.selection));
    walk.dc.DrawRectangle(walk.area.x, walk.area.y + from, 4, walk.area.height - from);
}

/// What is old is washed over with the ground.
void wash(const Walk& walk, const wxRect& place) {
    const wxColour& ground = walk.theme.paper;
    walk.dc.SetPen(*wxTRANSPARENT_PEN);
    walk.dc.SetBrush(wxBrush(wxColour(ground.Red(), ground.Green(), ground.Blue(), 120)));
    walk.dc.DrawRectangle(place);
}

MarkSize paper_size(const wxRect& place) { return {place.width / pixels_per_mm, place.height / pixels_per_mm}; }

void paint_marks(const Walk& walk, const checks::CheckResult& result, const wxRect& frame, const wxRect& bar) {
    paint_mark(walk.dc, framed(frame_words(result), result.status, paper_size(frame.Deflate(3, 3))), frame,
               walk.theme.ground);
    paint_mark(walk.dc, demand_bar(result.ratio, result.status, paper_size(bar)), bar, walk.theme.ground);
    if (walk.row.stale) {
        wash(walk, frame);
        wash(walk, bar.Inflate(2, 4));
    }
}

int result_row(const Walk& walk, const checks::CheckResult& result, std::size_t alike) {
    const bool narrow = walk.area.width < 330;
    const int left = opener + frame_width + 8;
    const int bar_width = narrow ? walk.column(left) : std::clamp(walk.area.width / 4, 90, 190);
    const int words_width = narrow ? walk.column(left) : walk.column(left) - bar_width - 12;
    const int x = walk.area.x + left, top = walk.area.y + padding;

    const TextStyle title = walk.normal(result.status != checks::Status::holds), word = walk.normal(true);
    int y = top + walk.set(text_of(result.title, walk.row.locale), {x, top}, words_width, title);
    y += 1 + walk.set(subject_words(result, walk.row.locale, alike), {x, y + 1}, words_width, walk.fine());

    const int right = narrow ? x : x + words_width + 12;
    const int word_top = narrow ? y + 2 : top;
    const int word_height =
        walk.set(status_words(result, walk.row.stale, walk.row.locale), {right, word_top}, bar_width, word);
    const wxRect bar(right, word_top + word_height + 4, bar_width, bar_height);
    const int bottom = std::max({y, bar.GetBottom() + 3, top + frame_height});
    if (walk.paint) {
        paint_opener(walk);
        paint_marks(walk, result, {walk.area.x + opener, top, frame_width, frame_height}, bar);
    }
    return bottom + padding - walk.area.y;
}

constexpr int steps_left = opener + 10;

/// A thin upright line down the side of an open result's lines holds them together.
void paint_spine(const Walk& walk) {
    walk.dc.SetPen(wxPen(walk.theme.rule, 1));
    const int x = walk.area.x + opener / 2 + 1;
    walk.dc.DrawLine(x, walk.area.y, x, walk.area.y + walk.area.height);
}

int covers_row(const Walk& walk, const checks::CheckResult& result) {
    const checks::Check* check = check_of(result);
    const int x = walk.area.x + steps_left, width = walk.column(steps_left);
    int y = walk.area.y + 4;
    if (check != nullptr && !check->covers.empty())
        y += walk.set(text_of(check->covers, walk.row.locale), {x, y}, width, walk.normal());
    y += walk.set(text_of(result.clause, walk.row.locale), {x, y}, width, walk.fine());
    return y + 6 - walk.area.y;
}

/// `346.3 lb`; in SI the figure of the formula's own unit stands behind it.
wxString step_value(const checks::Step& step, const format::Locale& locale) {
    wxString words = figure(step.value, step.unit, locale);
    if (format::in_system(step.value, step.unit, locale.system).unit != step.unit) {
        words += " (" + figure(step.value, step.unit, format::Locale{}) + ")";
    }
    return words;
}

int step_row(const Walk& walk, const checks::Step& step) {
    const int x = walk.area.x + steps_left, width = walk.column(steps_left), top = walk.area.y + 3;
    const int symbol_width = std::clamp(walk.area.width / 6, 54, 84);
    const wxString value = "= " + step_value(step, walk.row.locale);
    const int value_width = std::min(line_width(walk.dc, value, walk.normal(true)) + 2, width / 2);
    const int formula_width = width - symbol_width - value_width - 12;

    const wxString formula = step.formula.empty() ? wxString() : "= " + text_of(step.formula, walk.row.locale);
    const int symbol_height = walk.set(text_of(step.symbol), {x, top}, symbol_width - 4, walk.symbols(true));
    const int formula_height = walk.set(formula, {x + symbol_width, top}, formula_width, walk.symbols());
    const int value_height = walk.set(value, {x + width - value_width, top}, value_width, walk.normal(true));
    int y = top + std::max({symbol_height, formula_height, value_height});
    wxString below = text_of(step.meaning, walk.row.locale);
    if (!step.clause.empty()) below += " [" + text_of(step.clause, walk.row.locale) + "]";
    y += walk.set(below, {x + symbol_width, y}, width - symbol_width, walk.fine());
    return y + 4 - walk.area.y;
}

wxString conclusion_words(const checks::CheckResult& result, const format::Locale& locale) {
    const wxString demand = figure(result.demand, result.unit, locale);
    const wxString word = text_of(wording::word(result.status), locale);
    if (result.status == checks::Status::missing_evidence) {
        return wxString::Format(_("Demand %s, capacity not known: %s"), demand, word);
    }
    const wxString capacity = figure(result.capacity, result.unit, locale);
    if (!std::isfinite(result.ratio)) return wxString::Format(_("Demand %s, capacity %s: %s"), demand, capacity, word);
    return wxString::Format(_("Demand %s over capacity %s is %s: %s"), demand, capacity,
                            text_of(format::ratio_text(result.ratio)), word);
}

int line_row(const Walk& walk, const wxString& words, const TextStyle& style, int left) {
    return 4 + walk.set(words, {walk.area.x + left, walk.area.y + 4}, walk.column(left), style) + 6;
}

int lines_of(const Walk& walk, const CheckRow& row, const checks::CheckResult& result) {
    switch (row.kind) {
        case RowKind::covers:
            return covers_row(walk, result);
        case RowKind::step:
            return step_row(walk, result.steps[row.step]);
        case RowKind::conclusion:
            return line_row(walk, conclusion_words(result, walk.row.locale), walk.normal(true), steps_left);
        default:
            return line_row(walk, text_of(result.note, walk.row.locale), walk.normal(), steps_left);
    }
}

}  // namespace

int check_row(wxDC& dc, const CheckRow& row, const checks::CheckResult* result, const wxRect& area,
              const RowStyle& style, bool paint) {
    const Walk walk{dc, style, style.theme, area, paint};
    if (row.kind == RowKind::message || result == nullptr) {
        return line_row(walk, text_of(row.text), walk.normal(), padding + 4);
    }
    if (paint && style.marked) paint_selection_mark(walk, row.kind == RowKind::result);
    if (row.kind == RowKind::result) return result_row(walk, *result, row.alike.size());
    if (paint) paint_spine(walk);
    return lines_of(walk, row, *result);
}

int opener_width() { return opener; }

wxString subject_name(const checks::CheckResult& result, const format::Locale& locale, std::size_t alike) {
    return text_of(wording::worst_of(model::part_name(result.part), alike, alike), locale);
}

wxString figure(double value, const std::string& unit, const format::Locale& locale) {
    return text_of(format::figure_text(value, unit, locale.system));
}

}  // namespace toehold::window
