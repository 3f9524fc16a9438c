#include "window/sheet/canvas.h"

#include "session/region_scene.h"
#include "window/delivery.h"
#include "window/sheet/context_menu.h"

#include <wx/dcbuffer.h>
#include <wx/graphics.h>

#include <memory>
#include <utility>

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
    : alive_(std::make_shared<SheetCanvas*>(this)),
      regions_(session.catalog(), delivery<std::shared_ptr<const solving::RegionNews>>(
                                      alive_, [](SheetCanvas& canvas, const auto& news) { canvas.receive(news); })),
      sheet_(session,
             {[this](model::BaseDetail detail, editing::Dragged dragged) {
                  return regions_.begin(std::move(detail), std::move(dragged));
              },
              [this] { regions_.stop(); }},
             [this] {
                 region_.reset();
                 drag_.say();
                 refresh();
             }),
      drag_(sheet_),
      hover_(sheet_),
      keyboard_(*this, sheet_) {
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxWANTS_CHARS | wxFULL_REPAINT_ON_RESIZE | wxBORDER_NONE,
           "sheet");
    bind_window_events();
    bind_pointer_events();
    listening_ = session.listen([this](session::Change change) { on_session(change); });
}

SheetCanvas::~SheetCanvas() { sheet_.session.stop_listening(listening_); }

wxSize SheetCanvas::DoGetBestClientSize() const { return FromDIP(wxSize(900, 600)); }

void SheetCanvas::bind_window_events() {
    Bind(wxEVT_PAINT, &SheetCanvas::on_paint, this);
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        lay_out();
        refresh();
        event.Skip();
    });
    Bind(wxEVT_KEY_DOWN, [this](wxKeyEvent& event) {
        if (!keyboard_.key(event)) event.Skip();
    });
    Bind(wxEVT_CHAR, [this](wxKeyEvent& event) {
        if (!keyboard_.character(event)) event.Skip();
    });
    Bind(wxEVT_CONTEXT_MENU, &SheetCanvas::on_context_menu, this);
    const auto focus = [this](wxFocusEvent& event) {
        refresh();
        event.Skip();
    };
    Bind(wxEVT_SET_FOCUS, focus);
    Bind(wxEVT_KILL_FOCUS, focus);
}

void SheetCanvas::on_session(session::Change change) {
    sheet_.view.note(change);
    if (!drag_.busy() && hover_.part().kind != model::PartKind::none && change == session::Change::results) show_tip();
    refresh();
}

// --- painting ---

void SheetCanvas::refresh() { Refresh(false); }

void SheetCanvas::lay_out() {
    const auto size = GetClientSize();
    const double dip = FromDIP(1000) / 1000.0;
    sheet_.view.resize({0, 0, static_cast<double>(size.x), static_cast<double>(size.y)}, units_per_mm_at_96_dpi * dip,
                       GetContentScaleFactor());
}

void SheetCanvas::on_paint(wxPaintEvent&) {
    wxAutoBufferedPaintDC dc(this);
    lay_out();
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::Create(dc));
    if (!context) return;
    sheet_.view.paint(static_cast<cairo_t*>(context->GetNativeContext()), live());
    if (drag_.painted()) wxWakeUpIdle();
}

/// Made once for each answer: while the hand moves it is only painted.
const drawing::Scene* SheetCanvas::region() {
    const solving::RegionNews* known = sheet_.holds.known();
    if (known == nullptr) return nullptr;
    if (!region_) region_ = session::region_scene(*known, sheet_.holds.detail(), sheet_.tip, sheet_.session.locale());
    return &*region_;
}

SheetView::Live SheetCanvas::live() {
    SheetView::Live live;
    if (const solving::RegionNews* known = sheet_.holds.known())
        live.region_cell = cell_of(session::region_sheet(*known));
    live.region = region();
    if (HasFocus()) live.active = sheet_.active;
    live.cell = drag_.busy() ? sheet_.marks_cell : hover_.cell();
    live.marks = live_scene(drag_.busy() ? sheet_.marks : hover_.marks(), sheet_.session.locale());
    return live;
}

// --- what is shown ---

void SheetCanvas::set_ground(drawing::Ground ground) {
    sheet_.view.set_ground(ground);
    refresh();
}

void SheetCanvas::fit_all() {
    for (const auto kind : cell_kinds) sheet_.view.fit(kind);
    refresh();
}

void SheetCanvas::fit_active() {
    sheet_.view.fit(sheet_.active);
    refresh();
}

void SheetCanvas::zoom_active(double factor) {
    sheet_.view.zoom(sheet_.active, factor, middle(sheet_.view.areas(sheet_.active).drawing));
    refresh();
}

void SheetCanvas::zoom_in() { zoom_active(zoom_step); }

void SheetCanvas::zoom_out() { zoom_active(1 / zoom_step); }

void SheetCanvas::activate(CellKind kind) {
    sheet_.active = kind;
    if (sheet_.view.alone() && *sheet_.view.alone() != kind) sheet_.view.show_alone(kind);
    refresh();
}

void SheetCanvas::show_alone(std::optional<CellKind> kind) {
    if (kind) sheet_.active = *kind;
    sheet_.view.show_alone(kind);
    refresh();
}

void SheetCanvas::toggle_alone(CellKind kind) { show_alone(sheet_.view.alone() ? std::nullopt : std::optional(kind)); }

void SheetCanvas::turn_push_by(double degrees) {
    const auto& push = sheet_.view.overlay().push;
    const double from = push ? push->direction_rad : sheet_.session.display().direction_rad.value_or(0.0);
    sheet_.session.turn_push(by_degrees(from, degrees));
}

void SheetCanvas::set_nudge(std::optional<NudgeSteps> steps) { sheet_.nudge = steps; }

void SheetCanvas::set_tool(Tool tool) {
    if (tool == sheet_.tool) return;
    sheet_.tool = tool;
    sheet_.marks = {};
    SetCursor(wxCursor(cursor_of(tool)));
    if (tool_told_) tool_told_(tool);
    refresh();
}

// --- the menu ---

void SheetCanvas::on_context_menu(wxContextMenuEvent& event) {
    if (drag_.busy()) return;
    if (event.GetPosition() == wxDefaultPosition) {  // the menu key
        show_context_menu(*this, sheet_, menu_of_selection(sheet_));
        return;
    }
    const wxPoint pixel = ScreenToClient(event.GetPosition());
    const drawing::Point at{static_cast<double>(pixel.x), static_cast<double>(pixel.y)};
    const auto kind = sheet_.view.cell_at(at);
    if (!kind) return;
    activate(*kind);
    show_context_menu(*this, sheet_, menu_at(sheet_, *kind, at));
}

// --- for tests ---

wxPoint SheetCanvas::pixel_of(editing::Sheet sheet, drawing::Point at_in) const {
    return whole(drawing::to_surface(sheet_.view.view(cell_of(sheet)), at_in));
}

wxPoint SheetCanvas::pixel_in_rose(drawing::Point at) const {
    return whole(drawing::to_surface(sheet_.view.view(CellKind::rose), at));
}

wxRect SheetCanvas::cell_rectangle(CellKind kind) const { return whole(sheet_.view.areas(kind).frame); }

wxRect SheetCanvas::title_rectangle(CellKind kind) const { return whole(sheet_.view.areas(kind).title); }

}  // namespace toehold::window
