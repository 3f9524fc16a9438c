#include "window/project/schedule_panel.h"

#include "model/line_geometry.h"
#include "window/controls/flow_list.h"
#include "window/project/schedule_row.h"
#include "window/text.h"
#include "wording/line.h"

#include <wx/choice.h>
#include <wx/dcbuffer.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <algorithm>
#include <utility>

namespace toehold::window {

SchedulePanel::SchedulePanel(wxWindow* parent, session::ProjectSession& session, std::function<format::Locale()> locale,
                             const std::function<void()>& open)
    : wxPanel(parent), session_(session), locale_(std::move(locale)) {
    SetName("schedule-panel");
    list_ = new FlowList(this, "schedule", [this](wxDC& dc, std::size_t row, const wxRect& area, bool paint) {
        return draw_row(dc, row, area, paint);
    });
    list_->SetMinSize(FromDIP(wxSize(360, 160)));
    list_->SetToolTip(_("Enter or a double click opens the base of this post"));
    list_->chosen = [this](std::size_t row) {
        if (row < entries_.size()) session_.select(entries_[row].post);
    };
    list_->Bind(wxEVT_LEFT_DCLICK, [this, open](wxMouseEvent& event) {
        if (list_->VirtualHitTest(event.GetPosition().y) != wxNOT_FOUND) open();
    });
    list_->Bind(wxEVT_KEY_DOWN, [open](wxKeyEvent& event) {
        if (event.GetKeyCode() != WXK_RETURN && event.GetKeyCode() != WXK_NUMPAD_ENTER) return event.Skip();
        open();
    });
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(head(), wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::small)));
    column->Add(columns_, wxSizerFlags().Expand());
    column->Add(list_, wxSizerFlags(1).Expand());
    SetSizer(column);
}

wxSizer* SchedulePanel::head() {
    totals_ = new wxStaticText(this, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, wxST_ELLIPSIZE_END);
    totals_->SetName("schedule-totals");
    wxArrayString orders;
    orders.Add(_("In plan order"));
    orders.Add(_("By first cause"));
    order_ = new wxChoice(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, orders);
    order_->SetName("schedule-order");
    order_->SetSelection(0);
    order_->Bind(wxEVT_CHOICE, [this](wxCommandEvent& event) {
        session_.order_by(static_cast<session::ScheduleOrder>(event.GetSelection()));
    });
    columns_ = new wxPanel(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxFULL_REPAINT_ON_RESIZE);
    columns_->SetBackgroundStyle(wxBG_STYLE_PAINT);
    columns_->SetMinSize(FromDIP(wxSize(200, 24)));
    columns_->Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint_columns(); });
    columns_->SetToolTip(_(
        "Demand over capacity; the largest tension on any anchor; the largest part of a push on the rail that reaches "
        "the post, 1.00 is the whole push"));
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(totals_, wxSizerFlags(1).CenterVertical());
    row->Add(order_, wxSizerFlags().CenterVertical().Border(wxLEFT, FromDIP(gap::normal)));
    return row;
}

void SchedulePanel::refresh() {
    entries_ = session_.schedule();
    totals_->SetLabel(
        wxControl::EscapeMnemonics(text_of(wording::role_counts(model::count_roles(session_.project())), locale_())));
    order_->SetSelection(static_cast<int>(session_.order()));
    list_->show(entries_.size());
    columns_->Refresh();
    refresh_selection();
}

void SchedulePanel::refresh_selection() {
    const auto row = std::find_if(entries_.begin(), entries_.end(),
                                  [this](const auto& entry) { return entry.post == session_.selected(); });
    const int wanted = row == entries_.end() ? wxNOT_FOUND : static_cast<int>(row - entries_.begin());
    if (list_->GetSelection() != wanted) list_->SetSelection(wanted);
}

void SchedulePanel::apply_theme(const Theme& theme) {
    theme_ = theme;
    window::apply_theme(*this, theme);
    window::apply_theme(*totals_, theme);
    totals_->SetFont(lettering(points::body, true));
    list_->apply_theme(theme);
    columns_->Refresh();
}

void SchedulePanel::focus() { list_->SetFocus(); }

void SchedulePanel::paint_columns() {
    wxAutoBufferedPaintDC dc(columns_);
    dc.SetBackground(wxBrush(theme_.paper));
    dc.Clear();
    schedule_titles(dc, wxRect(0, 0, list_->GetClientSize().x, columns_->GetClientSize().y), theme_);
}

int SchedulePanel::draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const {
    if (row >= entries_.size()) return 1;
    return schedule_row(dc, entries_[row], area, {theme_, locale_(), !session_.review_is_current()}, paint);
}

}  // namespace toehold::window
