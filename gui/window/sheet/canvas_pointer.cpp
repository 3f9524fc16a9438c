// The pointer on the sheet: who answers each of its events.
#include "editing/edits.h"
#include "window/sheet/canvas.h"
#include "window/sheet/context_menu.h"
#include "window/sheet/tips.h"

#include <cmath>

namespace toehold::window {

namespace {

constexpr double wheel_step = 1.15;

Pointer pointer_of(const wxMouseEvent& event) {
    return {{static_cast<double>(event.GetX()), static_cast<double>(event.GetY())}, event.ShiftDown(), event.AltDown()};
}

}  // namespace

void SheetCanvas::bind_pointer_events() {
    Bind(wxEVT_LEFT_DOWN, &SheetCanvas::on_left_down, this);
    Bind(wxEVT_LEFT_UP, [this](wxMouseEvent& event) { release(event); });
    Bind(wxEVT_LEFT_DCLICK, &SheetCanvas::on_double, this);
    Bind(wxEVT_MIDDLE_DOWN, &SheetCanvas::on_middle_down, this);
    Bind(wxEVT_MIDDLE_UP, [this](wxMouseEvent& event) {
        if (drag_.panning()) release(event);
    });
    Bind(wxEVT_MOTION, &SheetCanvas::on_motion, this);
    Bind(wxEVT_MOUSEWHEEL, &SheetCanvas::on_wheel, this);
    Bind(wxEVT_LEAVE_WINDOW, [this](wxMouseEvent& event) {
        event.Skip();
        if (drag_.busy()) return;
        hover_.leave();
        refresh();
    });
    Bind(wxEVT_MOUSE_CAPTURE_LOST, [this](wxMouseCaptureLostEvent&) { take_back_drag(); });
    Bind(wxEVT_IDLE, [this](wxIdleEvent& event) {
        event.Skip();
        if (drag_.follow()) refresh();
    });
}

void SheetCanvas::on_left_down(wxMouseEvent& event) {
    SetFocus();
    keyboard_.end_nudges();
    const auto pointer = pointer_of(event);
    const auto kind = sheet_.view.cell_at(pointer.at);
    if (!kind) return;
    activate(*kind);
    if (contains(sheet_.view.areas(*kind).title, pointer.at)) return;
    if (sheet_.tool == Tool::pan || wxGetKeyState(WXK_SPACE)) {
        drag_.begin_pan(*kind, pointer);
        begin_drag();
    } else if (*kind == CellKind::plan && adds_something(sheet_.tool)) {
        use_tool(sheet_, pointer);
    } else {
        drag_.press(*kind, pointer);
        begin_drag();
    }
}

void SheetCanvas::on_middle_down(wxMouseEvent& event) {
    const auto pointer = pointer_of(event);
    const auto kind = sheet_.view.cell_at(pointer.at);
    if (drag_.busy() || !kind) return;
    activate(*kind);
    drag_.begin_pan(*kind, pointer);
    begin_drag();
}

void SheetCanvas::begin_drag() {
    if (drag_.panning()) SetCursor(wxCursor(wxCURSOR_HAND));
    if (!HasCapture()) CaptureMouse();
}

void SheetCanvas::on_motion(wxMouseEvent& event) {
    const auto pointer = pointer_of(event);
    if (!drag_.busy()) {
        const auto change = hover_.move(pointer);
        if (!change.to_paint) return;
        if (hover_.cell()) SetCursor(wxCursor(hover_.cursor()));
        if (change.another_part) show_tip();
        refresh();
    } else if (!event.LeftIsDown() && !event.MiddleIsDown()) {  // let go where nobody told us
        release(event);
    } else {
        const bool was_dragging = drag_.dragging();
        drag_.move(pointer);
        if (!was_dragging && drag_.dragging()) UnsetToolTip();
    }
}

void SheetCanvas::release(const wxMouseEvent& event) {
    if (!drag_.busy()) return;
    drag_.release(pointer_of(event));
    drag_has_ended();
}

void SheetCanvas::take_back_drag() {
    if (!drag_.busy()) return;
    drag_.take_back();
    drag_has_ended();
}

void SheetCanvas::drag_has_ended() {
    if (HasCapture()) ReleaseMouse();
    SetCursor(wxCursor(sheet_.tool == Tool::pan ? wxCURSOR_HAND : wxCURSOR_DEFAULT));
    refresh();
}

void SheetCanvas::on_double(wxMouseEvent& event) {
    const auto at = pointer_of(event).at;
    const auto kind = sheet_.view.cell_at(at);
    if (!kind) return;
    if (contains(sheet_.view.areas(*kind).title, at)) {
        toggle_alone(*kind);
        return;
    }
    const auto part = target_at(sheet_, *kind, at).part;
    if (part.kind == model::PartKind::push) {
        sheet_.session.turn_push(std::nullopt);
    } else if (editing::place_of(sheet_.session.detail(), part)) {
        focus_place_entry(*this);
    }
}

void SheetCanvas::on_wheel(wxMouseEvent& event) {
    const auto at = pointer_of(event).at;
    const auto kind = sheet_.view.cell_at(at);
    if (!kind || event.GetWheelAxis() != wxMOUSE_WHEEL_VERTICAL || event.GetWheelDelta() == 0) return;
    const double notches = static_cast<double>(event.GetWheelRotation()) / event.GetWheelDelta();
    sheet_.view.zoom(*kind, std::pow(wheel_step, notches), at);
    refresh();
}

void SheetCanvas::show_tip() {
    if (hover_.part().kind == model::PartKind::none) {
        UnsetToolTip();
        return;
    }
    SetToolTip(wxString::FromUTF8(tip(hover_.part(), sheet_.session, sheet_.view.overlay())));
}

}  // namespace toehold::window
