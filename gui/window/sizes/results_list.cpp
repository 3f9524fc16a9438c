#include "window/sizes/results_list.h"

#include "format/figures.h"
#include "window/controls/flow_list.h"
#include "window/text.h"
#include "window/theme/status_marks.h"
#include "window/theme/text_layout.h"

#include <wx/dcbuffer.h>
#include <wx/intl.h>
#include <wx/sizer.h>

#include <algorithm>
#include <array>
#include <utility>

namespace toehold::window {
namespace {

constexpr int frame_wide = 52, frame_high = 24, pad = 6;

/// The columns of numbers, right of the words: cost, weight, pieces, anchors, the ratio where it is built a little off.
constexpr std::size_t columns = 5;

struct Places {
    int words_left = 0, words_wide = 0;
    std::array<int, columns> right{};  ///< edges the numbers end at
    int wide = 0;                      ///< of a column
};

Places places(const wxRect& area) {
    Places all;
    all.wide = std::clamp(area.width / 9, 46, 84);
    for (std::size_t at = 0; at < columns; ++at)
        all.right[at] = area.x + area.width - pad - static_cast<int>(columns - 1 - at) * all.wide;
    all.words_left = area.x + pad + frame_wide + gap::normal;
    all.words_wide = std::max(60, all.right[0] - all.wide - all.words_left);
    return all;
}

void set_right(wxDC& dc, const wxString& words, int right, int y, const TextStyle& how) {
    flow(dc, words, {right - line_width(dc, words, how), y}, 1000, how);
}

wxString money(const search::Score& score) {
    return wxString::Format("%.2f", score.steel_cost) + (score.unpriced > 0 ? " +" : "");
}

wxString ratio(const std::optional<double>& value) {
    if (!value) return wxString::FromUTF8("–");
    return text_of(format::ratio_text(*value));
}

std::array<wxString, columns> numbers(const search::Score& score, units::System system) {
    return {money(score), text_of(format::figure_text(score.weight_lb, "lb", system)),
            wxString::Format("%d", score.pieces), wxString::Format("%d", score.anchors), ratio(score.robustness_ratio)};
}

}  // namespace

ResultsList::ResultsList(wxWindow* parent, session::Sizes& sizes, std::function<format::Locale()> locale)
    : wxPanel(parent), sizes_(sizes), locale_(std::move(locale)) {
    SetName("results-panel");
    head_ = new wxPanel(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxFULL_REPAINT_ON_RESIZE);
    head_->SetBackgroundStyle(wxBG_STYLE_PAINT);
    head_->SetMinSize(FromDIP(wxSize(200, 34)));
    head_->Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint_head(); });
    head_->SetToolTip(
        _("Cost by the price table, with a + where it has no price for a piece; weight of metal; pieces to buy and "
          "place; anchors; demand over capacity with holes 1/8 in and blocks 1/4 in misplaced"));
    list_ = new FlowList(this, "sizes-results", [this](wxDC& dc, std::size_t row, const wxRect& area, bool paint) {
        return draw_row(dc, row, area, paint);
    });
    list_->SetMinSize(FromDIP(wxSize(300, 120)));
    list_->chosen = [this](std::size_t row) { sizes_.open(row); };
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(head_, wxSizerFlags().Expand());
    column->Add(list_, wxSizerFlags(1).Expand());
    SetSizer(column);
}

void ResultsList::refresh() {
    if (shown_ != sizes_.rows()) {
        shown_ = sizes_.rows();
        list_->SetSelection(wxNOT_FOUND);
        list_->show(shown_.size());
    }
    const std::optional<std::size_t> opened = sizes_.opened();
    const int wanted = opened ? static_cast<int>(*opened) : wxNOT_FOUND;
    if (list_->GetSelection() != wanted) list_->SetSelection(wanted);
    head_->Refresh();
}

void ResultsList::apply_theme(const Theme& theme) {
    theme_ = theme;
    window::apply_theme(*this, theme);
    list_->apply_theme(theme);
    head_->Refresh();
}

void ResultsList::paint_head() {
    wxAutoBufferedPaintDC dc(head_);
    dc.SetBackground(wxBrush(theme_.paper));
    dc.Clear();
    const wxRect area(0, 0, list_->GetClientSize().x, head_->GetClientSize().y);
    const Places all = places(area);
    const TextStyle how{lettering(points::fine), theme_.faded};
    const int line = flow_height(dc, "Xg", 1000, how), low = area.height - line - 3;
    flow(dc, _("Ratio"), {area.x + pad, low}, frame_wide, how);
    flow(dc, _("Choice"), {all.words_left, low}, all.words_wide, how);
    const std::array<wxString, columns> titles{_("Cost"), _("Weight"), _("Pieces"), _("Anchors"), _("Misplaced")};
    for (std::size_t at = 0; at < columns; ++at) set_right(dc, titles[at], all.right[at], low, how);
    dc.SetPen(wxPen(theme_.line));
    dc.DrawLine(0, area.height - 1, head_->GetClientSize().x, area.height - 1);
}

int ResultsList::draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const {
    if (row >= sizes_.rows().size()) return 1;
    const search::Result& result = *sizes_.rows()[row];
    const Places all = places(area);
    const TextStyle words{lettering(points::small), theme_.ink}, figures{lettering(points::small), theme_.ink};
    const wxString choice = text_of(sizes_.choices_of(result), locale_());
    const int high = flow_height(dc, choice, all.words_wide, words);
    if (paint) {
        const wxRect frame(area.x + pad, area.y + 3, frame_wide, frame_high);
        const MarkSize size{(frame_wide - 6) / pixels_per_mm, (frame_high - 6) / pixels_per_mm};
        paint_mark(dc,
                   framed(format::ratio_text(result.score.governing_ratio), checks::Status::holds, size,
                          drawing::TextSize::small),
                   frame, theme_.ground);
        flow(dc, choice, {all.words_left, area.y + 6}, all.words_wide, words);
        const auto told = numbers(result.score, locale_().system);
        for (std::size_t at = 0; at < columns; ++at) set_right(dc, told[at], all.right[at], area.y + 6, figures);
    }
    return std::max(high + 10, frame_high + 6);
}

}  // namespace toehold::window
