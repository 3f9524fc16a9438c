#include "window/controls/flow_list.h"

#include <wx/dcclient.h>

#include <algorithm>
#include <utility>

namespace toehold::window {

FlowList::FlowList(wxWindow* parent, const wxString& name, Row row) : row_(std::move(row)) {
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxBORDER_NONE);
    SetName(name);
    SetMargins(0, 0);
    Bind(wxEVT_LISTBOX, [this](wxCommandEvent& event) {
        if (chosen && event.GetInt() >= 0) chosen(static_cast<std::size_t>(event.GetInt()));
    });
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        if (GetClientSize().x != measured_width_) RefreshAll();
        event.Skip();
    });
}

void FlowList::show(std::size_t count) {
    heights_.clear();
    SetItemCount(count);
    RefreshAll();
}

void FlowList::apply_theme(const Theme& theme) {
    theme_ = theme;
    SetBackgroundColour(theme.paper);
    RefreshAll();
}

wxCoord FlowList::OnMeasureItem(std::size_t row) const {
    const int width = GetClientSize().x;
    if (width != measured_width_ || heights_.size() != GetItemCount()) {
        heights_.assign(GetItemCount(), 0);
        measured_width_ = width;
    }
    if (row >= heights_.size()) return 1;
    if (heights_[row] == 0) {
        wxClientDC dc(const_cast<FlowList*>(this));
        heights_[row] = std::max(1, row_(dc, row, wxRect(0, 0, std::max(width, 80), 0), false));
    }
    return heights_[row];
}

void FlowList::OnDrawItem(wxDC& dc, const wxRect& rect, std::size_t row) const { row_(dc, row, rect, true); }

void FlowList::OnDrawBackground(wxDC& dc, const wxRect& rect, std::size_t row) const {
    paint_row_ground(dc, rect, *this, row, theme_);
}

void FlowList::OnDrawSeparator(wxDC& dc, wxRect& rect, std::size_t /*row*/) const {
    dc.SetPen(wxPen(theme_.rule, 1));
    dc.DrawLine(rect.x, rect.GetBottom(), rect.GetRight() + 1, rect.GetBottom());
}

}  // namespace toehold::window
