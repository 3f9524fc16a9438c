// The pointer over the sheet: what it points at, pressing, panning, zooming.
#include "window/sheet/canvas.h"
#include "window/sheet/tips.h"

#include <algorithm>
#include <cmath>

namespace toehold::window {

namespace {

constexpr double click_px = 3.0;  ///< how far the pointer may slip in a click
constexpr double wheel_step = 1.15;

drawing::Point place_of(const wxMouseEvent& event) {
    return {static_cast<double>(event.GetX()), static_cast<double>(event.GetY())};
}

wxStockCursor cursor_along(const std::optional<drawing::Point>& along) {
    if (!along) return wxCURSOR_SIZING;
    if (std::abs(along->x) > 0.9) return wxCURSOR_SIZEWE;
    if (std::abs(along->y) > 0.9) return wxCURSOR_SIZENS;
    return along->x * along->y > 0 ? wxCURSOR_SIZENESW : wxCURSOR_SIZENWSE;
}

}  // namespace

void SheetCanvas::on_left_down(wxMouseEvent& event) {
    SetFocus();
    if (nudge_rest_.IsRunning()) {
        nudge_rest_.Stop();
        session_.rest();
    }
    const Pointer pointer{place_of(event), event.ShiftDown(), event.AltDown()};
    const auto kind = view_.cell_at(pointer.at);
    if (!kind) return;
    activate(*kind);
    if (contains(view_.areas(*kind).title, pointer.at)) return;
    if (tool_ == Tool::pan || wxGetKeyState(WXK_SPACE))
        begin_pan(*kind, pointer);
    else
        press(*kind, pointer);
}

void SheetCanvas::begin_pan(CellKind kind, const Pointer& pointer) {
    press_ = Press{};
    press_->cell = kind;
    press_->at = pointer.at;
    doing_ = Doing::panning;
    if (!HasCapture()) CaptureMouse();
    SetCursor(wxCursor(wxCURSOR_HAND));
}

void SheetCanvas::press(CellKind kind, const Pointer& pointer) {
    const auto at_in = view_.to_drawing(kind, pointer.at);
    if (kind == CellKind::plan && tool_ != Tool::select) {
        use_tool(at_in, pointer);
        return;
    }
    Press pressed;
    pressed.cell = kind;
    pressed.at = pointer.at;
    pressed.shift = pointer.shift;
    pressed.view = view_.view(kind);
    pressed.direction_rad = session_.display().direction_rad;
    pressed.part = view_.part_at(kind, pointer.at);
    // The push's arrow crosses holes: what can be taken in their middle comes first.
    pressed.handle = handle_at(view_.handles(kind), pressed.view, pointer.at, session_.selection());
    if (!pressed.handle) pressed.handle = body_handle(view_.handles(kind), pressed.part);
    if (pressed.handle) pressed.part = pressed.handle->part;
    if (const auto& push = view_.overlay().push; push && pressed.part == "push")
        pressed.push_offset_rad = push->direction_rad - angle_rad(at_in);
    const auto& selection = session_.selection();
    pressed.was_selected = std::find(selection.begin(), selection.end(), pressed.part) != selection.end();
    if (!pointer.shift && !pressed.was_selected && !pressed.part.empty() && pressed.part != "push")
        session_.select({pressed.part});
    press_ = pressed;
    doing_ = Doing::pressed;
    view_.hold(true);  // what comes in now must not move the sheet under the hand
    if (!HasCapture()) CaptureMouse();
}

void SheetCanvas::on_motion(wxMouseEvent& event) {
    const Pointer pointer{place_of(event), event.ShiftDown(), event.AltDown()};
    if (doing_ == Doing::nothing) {
        hover(pointer);
        return;
    }
    if (!event.LeftIsDown() && !event.MiddleIsDown()) {  // let go where nobody told us
        release(pointer);
        return;
    }
    if (doing_ == Doing::pressed && std::hypot(pointer.at.x - press_->at.x, pointer.at.y - press_->at.y) > click_px)
        begin_drag(pointer);
    if (doing_ != Doing::pressed) waiting_ = pointer;
}

void SheetCanvas::on_idle(wxIdleEvent& event) {
    event.Skip();
    if (!waiting_ || frame_owed_) return;
    const auto pointer = *waiting_;
    waiting_.reset();
    follow(pointer);
}

void SheetCanvas::on_left_up(wxMouseEvent& event) { release({place_of(event), event.ShiftDown(), event.AltDown()}); }

void SheetCanvas::on_middle_down(wxMouseEvent& event) {
    if (doing_ != Doing::nothing) return;
    const Pointer pointer{place_of(event), event.ShiftDown(), event.AltDown()};
    if (const auto kind = view_.cell_at(pointer.at)) {
        activate(*kind);
        begin_pan(*kind, pointer);
    }
}

void SheetCanvas::on_middle_up(wxMouseEvent& event) {
    if (doing_ == Doing::panning) release({place_of(event), event.ShiftDown(), event.AltDown()});
}

void SheetCanvas::on_double(wxMouseEvent& event) {
    const auto at = place_of(event);
    const auto kind = view_.cell_at(at);
    if (!kind) return;
    if (contains(view_.areas(*kind).title, at)) {
        show_alone(view_.alone() ? std::nullopt : kind);
        return;
    }
    auto part = view_.part_at(*kind, at);
    // As in a single press, what can be taken in its middle comes before the arrow that crosses it.
    if (const auto handle = handle_at(view_.handles(*kind), view_.view(*kind), at, session_.selection()))
        part = handle->part;
    if (part == "push") {
        session_.turn_push(std::nullopt);
    } else if (auto* entry = wxWindow::FindWindowByName("place-x", wxGetTopLevelParent(this));
               entry && editing::place_of(session_.detail(), part)) {
        entry->SetFocus();
    }
}

void SheetCanvas::on_wheel(wxMouseEvent& event) {
    const auto at = place_of(event);
    const auto kind = view_.cell_at(at);
    if (!kind || event.GetWheelAxis() != wxMOUSE_WHEEL_VERTICAL || event.GetWheelDelta() == 0) return;
    const double notches = static_cast<double>(event.GetWheelRotation()) / event.GetWheelDelta();
    view_.zoom(*kind, std::pow(wheel_step, notches), at);
    refresh();
}

void SheetCanvas::on_leave(wxMouseEvent& event) {
    event.Skip();
    if (doing_ != Doing::nothing) return;
    hovered_.reset();
    hovered_part_.clear();
    hot_.clear();
    marks_ = {};
    view_.point_at(std::nullopt, {});
    refresh();
}

void SheetCanvas::on_capture_lost(wxMouseCaptureLostEvent&) { take_back(); }

void SheetCanvas::hover(const Pointer& pointer) {
    const auto kind = view_.cell_at(pointer.at);
    const bool on_drawing = kind && !contains(view_.areas(*kind).title, pointer.at);
    std::string part;
    std::optional<editing::Handle> handle;
    if (on_drawing) {
        part = view_.part_at(*kind, pointer.at);
        if (tool_ == Tool::select)
            handle = handle_at(view_.handles(*kind), view_.view(*kind), pointer.at, session_.selection());
        if (handle) part = handle->part;
    }
    const auto hot = handle ? handle->id : std::string{};
    const bool tool_in_plan = kind == CellKind::plan && on_drawing && tool_ != Tool::select && tool_ != Tool::pan;
    if (kind == hovered_ && part == hovered_part_ && hot == hot_ && !tool_in_plan && !marks_.ghost) return;
    marks_ = {};
    if (tool_in_plan) {
        auto snapping = rules(*kind);
        snapping.on = snapping.on && !pointer.alt;
        const auto snapped =
            editing::snap(view_.to_drawing(*kind, pointer.at), on_deck(session_.detail()).plate, {}, snapping);
        marks_.ghost = snapped.at;
        marks_.caught = snapped.lines;
    }
    const bool another_part = part != hovered_part_;
    hovered_ = kind;
    hovered_part_ = part;
    hot_ = hot;
    view_.point_at(kind, part);
    if (kind) show_cursor(*kind, part, handle);
    if (another_part) show_tip();
    refresh();
}

void SheetCanvas::show_cursor(CellKind kind, const std::string& part, const std::optional<editing::Handle>& handle) {
    const bool sets_something = kind == CellKind::plan && tool_ != Tool::select && tool_ != Tool::pan;
    auto cursor = wxCURSOR_DEFAULT;
    if (sets_something)
        cursor = wxCURSOR_CROSS;
    else if (tool_ == Tool::pan || (part == "push" && !handle))
        cursor = wxCURSOR_HAND;
    else if (handle)
        cursor = cursor_along(handle->along);
    SetCursor(wxCursor(cursor));
}

void SheetCanvas::show_tip() {
    if (hovered_part_.empty()) {
        UnsetToolTip();
        return;
    }
    SetToolTip(wxString::FromUTF8(tip(hovered_part_, session_, view_.overlay())));
}

}  // namespace toehold::window
