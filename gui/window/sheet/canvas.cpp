#include "window/sheet/canvas.h"

#include "drawing/parts.h"

#include <wx/app.h>
#include <wx/dcbuffer.h>
#include <wx/graphics.h>

#include <algorithm>
#include <memory>

namespace toehold::window {

namespace {

constexpr double zoom_step = 1.25;
constexpr double units_per_mm_at_96_dpi = 96 / 25.4;

drawing::Point middle(const drawing::Area& area) { return {area.left + area.width / 2, area.top + area.height / 2}; }

wxPoint whole(drawing::Point point) { return {wxRound(point.x), wxRound(point.y)}; }

wxRect whole(const drawing::Area& area) {
    return {wxRound(area.left), wxRound(area.top), wxRound(area.width), wxRound(area.height)};
}

CellKind cell_of(editing::Sheet sheet) {
    switch (sheet) {
        case editing::Sheet::plan:
            return CellKind::plan;
        case editing::Sheet::section:
            return CellKind::section;
        case editing::Sheet::elevation:
            return CellKind::elevation;
    }
    return CellKind::plan;
}

}  // namespace

SheetCanvas::SheetCanvas(wxWindow* parent, session::Session& session)
    : session_(session), view_(session), nudge_rest_(this) {
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxWANTS_CHARS | wxFULL_REPAINT_ON_RESIZE | wxBORDER_NONE,
           "sheet");
    bind_events();
    listening_ = session_.listen([this](session::Change change) { on_session(change); });
}

SheetCanvas::~SheetCanvas() { session_.stop_listening(listening_); }

wxSize SheetCanvas::DoGetBestClientSize() const { return FromDIP(wxSize(900, 600)); }

void SheetCanvas::bind_events() {
    Bind(wxEVT_PAINT, &SheetCanvas::on_paint, this);
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        lay_out();
        refresh();
        event.Skip();
    });
    Bind(wxEVT_LEFT_DOWN, &SheetCanvas::on_left_down, this);
    Bind(wxEVT_LEFT_UP, &SheetCanvas::on_left_up, this);
    Bind(wxEVT_LEFT_DCLICK, &SheetCanvas::on_double, this);
    Bind(wxEVT_MIDDLE_DOWN, &SheetCanvas::on_middle_down, this);
    Bind(wxEVT_MIDDLE_UP, &SheetCanvas::on_middle_up, this);
    Bind(wxEVT_MOTION, &SheetCanvas::on_motion, this);
    Bind(wxEVT_MOUSEWHEEL, &SheetCanvas::on_wheel, this);
    Bind(wxEVT_LEAVE_WINDOW, &SheetCanvas::on_leave, this);
    Bind(wxEVT_MOUSE_CAPTURE_LOST, &SheetCanvas::on_capture_lost, this);
    Bind(wxEVT_IDLE, &SheetCanvas::on_idle, this);
    Bind(wxEVT_KEY_DOWN, &SheetCanvas::on_key, this);
    Bind(wxEVT_CHAR, &SheetCanvas::on_character, this);
    Bind(wxEVT_CONTEXT_MENU, &SheetCanvas::on_context_menu, this);
    Bind(
        wxEVT_TIMER, [this](wxTimerEvent&) { session_.rest(); }, nudge_rest_.GetId());
    const auto focus = [this](wxFocusEvent& event) {
        refresh();
        event.Skip();
    };
    Bind(wxEVT_SET_FOCUS, focus);
    Bind(wxEVT_KILL_FOCUS, focus);
}

void SheetCanvas::on_session(session::Change change) {
    view_.note(change);
    if (doing_ == Doing::nothing && !hovered_part_.empty() && change == session::Change::results) show_tip();
    refresh();
}

void SheetCanvas::refresh() { Refresh(false); }

void SheetCanvas::lay_out() {
    const auto size = GetClientSize();
    const double dip = FromDIP(1000) / 1000.0;
    view_.resize({0, 0, static_cast<double>(size.x), static_cast<double>(size.y)}, units_per_mm_at_96_dpi * dip,
                 GetContentScaleFactor());
}

void SheetCanvas::on_paint(wxPaintEvent&) {
    wxAutoBufferedPaintDC dc(this);
    lay_out();
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::Create(dc));
    if (!context) return;
    view_.paint(static_cast<cairo_t*>(context->GetNativeContext()), live());
    frame_owed_ = false;
    if (waiting_) wxWakeUpIdle();
}

SheetView::Live SheetCanvas::live() {
    SheetView::Live live;
    if (HasFocus()) live.active = active_;
    auto marks = marks_;
    live.cell = doing_ == Doing::nothing ? hovered_ : marks_cell_;
    if (live.cell && doing_ == Doing::nothing) {
        marks.handles = visible_handles(*live.cell);
        marks.hot = hot_;
    }
    live.marks = live_scene(marks);
    return live;
}

std::vector<editing::Handle> SheetCanvas::visible_handles(CellKind kind) {
    std::vector<editing::Handle> visible;
    if (tool_ != Tool::select) return visible;
    for (const auto& handle : view_.handles(kind))
        if (handle.id == hot_ || drawing::contains(session_.selection(), handle.part)) visible.push_back(handle);
    return visible;
}

void SheetCanvas::set_ground(drawing::Ground ground) {
    view_.set_ground(ground);
    refresh();
}

void SheetCanvas::fit_all() {
    for (const auto kind : cell_kinds) view_.fit(kind);
    refresh();
}

void SheetCanvas::fit_active() {
    view_.fit(active_);
    refresh();
}

void SheetCanvas::zoom_active(double factor) {
    view_.zoom(active_, factor, middle(view_.areas(active_).drawing));
    refresh();
}

void SheetCanvas::zoom_in() { zoom_active(zoom_step); }

void SheetCanvas::zoom_out() { zoom_active(1 / zoom_step); }

void SheetCanvas::show_alone(std::optional<CellKind> kind) {
    if (kind) active_ = *kind;
    view_.show_alone(kind);
    refresh();
}

void SheetCanvas::set_snap(editing::SnapRules rules) { snap_ = rules; }

void SheetCanvas::set_nudge(std::optional<NudgeSteps> steps) { nudge_ = steps; }

void SheetCanvas::set_tool(Tool tool) {
    if (tool == tool_) return;
    tool_ = tool;
    marks_ = {};
    SetCursor(wxCursor(tool == Tool::select ? wxCURSOR_DEFAULT : tool == Tool::pan ? wxCURSOR_HAND : wxCURSOR_CROSS));
    if (tool_told_) tool_told_(tool);
    refresh();
}

wxPoint SheetCanvas::pixel_of(editing::Sheet sheet, drawing::Point at_in) const {
    return whole(drawing::to_surface(view_.view(cell_of(sheet)), at_in));
}

wxPoint SheetCanvas::pixel_in_rose(drawing::Point at) const {
    return whole(drawing::to_surface(view_.view(CellKind::rose), at));
}

wxRect SheetCanvas::cell_rectangle(CellKind kind) const { return whole(view_.areas(kind).frame); }

wxRect SheetCanvas::title_rectangle(CellKind kind) const { return whole(view_.areas(kind).title); }

}  // namespace toehold::window
