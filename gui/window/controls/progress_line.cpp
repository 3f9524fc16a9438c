#include "window/controls/progress_line.h"

#include <wx/dcbuffer.h>

#include <algorithm>

namespace toehold::window {

ProgressLine::ProgressLine(wxWindow* parent, const wxString& name) {
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxBORDER_NONE | wxFULL_REPAINT_ON_RESIZE, name);
    SetMinSize(FromDIP(wxSize(80, 9)));
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint(); });
}

void ProgressLine::show(double share) {
    const double now = std::clamp(share, 0.0, 1.0);
    if (now == share_) return;
    share_ = now;
    Refresh(false);
}

void ProgressLine::apply_theme(const Theme& theme) {
    theme_ = theme;
    Refresh(false);
}

void ProgressLine::paint() {
    wxAutoBufferedPaintDC dc(this);
    dc.SetBackground(wxBrush(theme_.paper));
    dc.Clear();
    const wxSize all = GetClientSize();
    dc.SetPen(wxPen(theme_.line));
    dc.SetBrush(*wxTRANSPARENT_BRUSH);
    dc.DrawRectangle(0, 0, all.x, all.y);
    const int wide = wxRound((all.x - 4) * share_);
    if (wide <= 0) return;
    dc.SetPen(*wxTRANSPARENT_PEN);
    dc.SetBrush(wxBrush(theme_.ink));
    dc.DrawRectangle(2, 2, wide, all.y - 4);
}

}  // namespace toehold::window
