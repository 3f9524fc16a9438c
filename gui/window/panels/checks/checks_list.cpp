#include "window/panels/checks/checks_list.h"

#include <wx/dcclient.h>

#include <algorithm>

namespace toehold::window {

ChecksList::ChecksList(wxWindow* parent, Asks asks) : asks_(std::move(asks)) {
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxBORDER_NONE | wxWANTS_CHARS);
    SetName("checks");
    SetMargins(0, 0);
    style_.font = GetFont();
    Bind(wxEVT_KEY_DOWN, &ChecksList::on_key, this);
    Bind(wxEVT_LEFT_DOWN, &ChecksList::on_press, this);
    Bind(wxEVT_LEFT_DCLICK, [this](wxMouseEvent&) {
        if (const CheckRow* row = current(); row != nullptr && row->kind == RowKind::result) {
            asks_.open_or_close(row->result);
        }
    });
    Bind(wxEVT_LISTBOX, [this](wxCommandEvent&) { asks_.moved(); });
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        if (GetClientSize().x != measured_width_) RefreshAll();
        event.Skip();
    });
}

void ChecksList::show(std::vector<CheckRow> rows, const std::vector<checks::CheckResult>* results) {
    rows_ = std::move(rows);
    results_ = results;
    heights_.clear();
    SetItemCount(rows_.size());
    RefreshAll();
}

void ChecksList::set_style(const RowStyle& style) {
    style_ = style;
    heights_.clear();
    SetBackgroundColour(style.theme.paper);
    RefreshAll();
}

const CheckRow* ChecksList::current() const {
    const int row = GetSelection();
    return row < 0 || static_cast<std::size_t>(row) >= rows_.size() ? nullptr : &rows_[static_cast<std::size_t>(row)];
}

void ChecksList::go_to(int row) {
    if (row < 0 || static_cast<std::size_t>(row) >= rows_.size()) return;
    SetSelection(row);
    int last = row;
    while (static_cast<std::size_t>(last) + 1 < rows_.size() &&
           rows_[static_cast<std::size_t>(last) + 1].kind != RowKind::result) {
        ++last;
    }
    if (last == row) return;
    int height = 0;
    for (int at = row; at <= last; ++at) height += OnMeasureItem(static_cast<std::size_t>(at));
    if (height >= GetClientSize().y) {
        ScrollToRow(static_cast<std::size_t>(row));
    } else if (!IsRowVisible(static_cast<std::size_t>(last))) {
        for (int at = row; at <= last && !IsRowVisible(static_cast<std::size_t>(last)); ++at) ScrollRows(1);
    }
}

const checks::CheckResult* ChecksList::result_of(const CheckRow& row) const {
    if (results_ == nullptr || row.kind == RowKind::message) return nullptr;
    return row.result < results_->size() ? &(*results_)[row.result] : nullptr;
}

RowStyle ChecksList::style_of(const CheckRow& row) const {
    RowStyle style = style_;
    style.open = row.kind == RowKind::result && is_open && is_open(row.result);
    style.stale = style_.stale && row.kind != RowKind::message;
    style.marked = row.kind != RowKind::message && is_marked && is_marked(row);
    return style;
}

wxCoord ChecksList::OnMeasureItem(std::size_t row) const {
    const int width = GetClientSize().x;
    if (width != measured_width_ || heights_.size() != rows_.size()) {
        heights_.assign(rows_.size(), 0);
        measured_width_ = width;
    }
    if (row >= rows_.size()) return 1;
    if (heights_[row] == 0) {
        wxClientDC dc(const_cast<ChecksList*>(this));
        const wxRect area(0, 0, std::max(width, 120), 0);
        heights_[row] = check_row(dc, rows_[row], result_of(rows_[row]), area, style_of(rows_[row]), false);
    }
    return heights_[row];
}

void ChecksList::OnDrawItem(wxDC& dc, const wxRect& rect, std::size_t row) const {
    if (row >= rows_.size()) return;
    check_row(dc, rows_[row], result_of(rows_[row]), rect, style_of(rows_[row]), true);
}

void ChecksList::OnDrawBackground(wxDC& dc, const wxRect& rect, std::size_t row) const {
    paint_row_ground(dc, rect, *this, row, style_.theme);
}

void ChecksList::OnDrawSeparator(wxDC& dc, wxRect& rect, std::size_t row) const {
    const bool lines_follow = row + 1 < rows_.size() && rows_[row + 1].kind != RowKind::result;
    if (lines_follow) return;
    dc.SetPen(wxPen(style_.theme.rule, 1));
    dc.DrawLine(rect.x, rect.GetBottom(), rect.GetRight() + 1, rect.GetBottom());
}

void ChecksList::on_press(wxMouseEvent& event) {
    const int at = VirtualHitTest(event.GetY());
    event.Skip();
    if (at == wxNOT_FOUND || event.GetX() > opener_width()) return;
    const CheckRow row = rows_[static_cast<std::size_t>(at)];
    if (row.kind == RowKind::result) CallAfter([this, row] { asks_.open_or_close(row.result); });
}

void ChecksList::to_the_right() {
    const CheckRow* row = current();
    if (row == nullptr || row->kind != RowKind::result) return;
    if (is_open && is_open(row->result)) {
        SetSelection(GetSelection() + 1);
        asks_.moved();
    } else {
        asks_.open_or_close(row->result);
    }
}

void ChecksList::to_the_left() {
    const CheckRow* row = current();
    if (row == nullptr || row->kind == RowKind::message) return;
    if (row->kind == RowKind::result) {
        if (is_open && is_open(row->result)) asks_.open_or_close(row->result);
        return;
    }
    int at = GetSelection();
    while (at > 0 && rows_[static_cast<std::size_t>(at)].kind != RowKind::result) --at;
    SetSelection(at);
    asks_.moved();
}

void ChecksList::on_key(wxKeyEvent& event) {
    const CheckRow* row = current();
    const int key = event.GetKeyCode();
    if (event.GetModifiers() == wxMOD_CONTROL && (key == 'C' || key == WXK_INSERT)) return asks_.copy();
    if (event.GetModifiers() != wxMOD_NONE) return event.Skip();
    switch (key) {
        case WXK_RIGHT:
        case WXK_NUMPAD_RIGHT:
            return to_the_right();
        case WXK_LEFT:
        case WXK_NUMPAD_LEFT:
            return to_the_left();
        case WXK_RETURN:
        case WXK_NUMPAD_ENTER:
        case WXK_SPACE:
            if (row != nullptr && row->kind != RowKind::message) asks_.open_or_close(row->result);
            return;
        case WXK_TAB:
            Navigate(wxNavigationKeyEvent::IsForward);
            return;
        default:
            event.Skip();
    }
}

}  // namespace toehold::window
