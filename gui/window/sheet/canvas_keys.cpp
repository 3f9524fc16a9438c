// The sheet by keyboard alone.
#include "drawing/parts.h"
#include "window/sheet/canvas.h"
#include "window/sheet/tips.h"

#include <wx/intl.h>

#include <algorithm>

namespace toehold::window {

namespace {

constexpr double push_step_deg = 5.0;
constexpr int nudges_end_ms = 900;

/// Right and up of an arrow key; absent for other keys.
std::optional<drawing::Point> arrow(int key) {
    switch (key) {
        case WXK_LEFT:
        case WXK_NUMPAD_LEFT:
            return drawing::Point{-1, 0};
        case WXK_RIGHT:
        case WXK_NUMPAD_RIGHT:
            return drawing::Point{1, 0};
        case WXK_UP:
        case WXK_NUMPAD_UP:
            return drawing::Point{0, 1};
        case WXK_DOWN:
        case WXK_NUMPAD_DOWN:
            return drawing::Point{0, -1};
        default:
            return std::nullopt;
    }
}

/// What lies to the right in an upright cell, in plan.
drawing::Point in_plan(CellKind cell, const drawing::SectionPlane& plane, drawing::Point step) {
    if (cell == CellKind::elevation) return {0, step.x};
    if (cell == CellKind::section)
        return plane.along == model::PlanAxis::y ? drawing::Point{0, step.x} : drawing::Point{step.x, 0};
    return step;
}

std::optional<Tool> tool_of(int character) {
    switch (character) {
        case 'v':
        case 'V':
            return Tool::select;
        case 'h':
        case 'H':
            return Tool::hole;
        case 'c':
        case 'C':
            return Tool::corner;
        case 'b':
        case 'B':
            return Tool::block;
        case 'p':
        case 'P':
            return Tool::pan;
        default:
            return std::nullopt;
    }
}

}  // namespace

void SheetCanvas::on_key(wxKeyEvent& event) {
    switch (event.GetKeyCode()) {
        case WXK_TAB:
            if (event.ControlDown() || !cycle(event.ShiftDown()))
                Navigate(event.ShiftDown() ? 0 : wxNavigationKeyEvent::IsForward);
            return;
        case WXK_DELETE:
        case WXK_NUMPAD_DELETE:
        case WXK_BACK:
            erase();
            return;
        case WXK_ESCAPE:
            escape();
            return;
        default:
            break;
    }
    if (!nudge(event)) event.Skip();
}

void SheetCanvas::on_character(wxKeyEvent& event) {
    if (event.ControlDown() || event.AltDown()) {
        event.Skip();
        return;
    }
    const int character =
        event.GetUnicodeKey() != WXK_NONE ? static_cast<int>(event.GetUnicodeKey()) : event.GetKeyCode();
    if (const auto tool = tool_of(character)) {
        set_tool(*tool);
        return;
    }
    switch (character) {
        case '+':
        case '=':
        case WXK_NUMPAD_ADD:
            zoom_in();
            return;
        case '-':
        case WXK_NUMPAD_SUBTRACT:
            zoom_out();
            return;
        case '0':
            fit_active();
            return;
        case '[':
            turn_push_by(-push_step_deg);
            return;
        case ']':
            turn_push_by(push_step_deg);
            return;
        case 'g':
        case 'G':
            session_.turn_push(std::nullopt);
            return;
        case 'm':
        case 'M':
            show_alone(view_.alone() ? std::nullopt : std::optional(active_));
            return;
        default:
            break;
    }
    if (character >= '1' && character < '1' + static_cast<int>(cell_kinds.size()))
        activate(cell_kinds[static_cast<std::size_t>(character - '1')]);
    else
        event.Skip();
}

void SheetCanvas::activate(CellKind kind) {
    active_ = kind;
    if (view_.alone() && *view_.alone() != kind) view_.show_alone(kind);
    refresh();
}

void SheetCanvas::turn_push_by(double degrees) {
    const auto& push = view_.overlay().push;
    const double from = push ? push->direction_rad : session_.display().direction_rad.value_or(0.0);
    session_.turn_push(by_degrees(from, degrees));
}

bool SheetCanvas::nudge(const wxKeyEvent& event) {
    const auto step = arrow(event.GetKeyCode());
    if (!step || event.AltDown() || doing_ != Doing::nothing) return false;
    if (session_.selection().empty()) {
        session_.say(_("Select a hole or a block first: Tab goes through the parts.").utf8_string());
        return true;
    }
    const auto steps = nudge_.value_or(customary_nudge(session_.display().system));
    const double length = event.ControlDown() ? steps.fine : event.ShiftDown() ? steps.coarse : steps.plain;
    const auto along = in_plan(active_, view_.place(editing::Sheet::section).plane, *step);
    if (along.x == 0 && along.y == 0) return true;
    session_.apply(editing::nudge(session_.detail(), session_.selection(), along.x * length, along.y * length),
                   "nudge");
    nudge_rest_.StartOnce(nudges_end_ms);
    return true;
}

bool SheetCanvas::cycle(bool backward) {
    const auto parts = drawing::parts(session_.detail());
    if (parts.empty()) return false;
    const auto& selection = session_.selection();
    if (selection.empty()) {
        session_.select({backward ? parts.back() : parts.front()});
    } else {
        const auto at = std::find(parts.begin(), parts.end(), selection.back());
        const bool at_end = at == parts.end() || (backward ? at == parts.begin() : at + 1 == parts.end());
        session_.select({});
        if (at_end) return false;  // past the last part the key leaves the sheet
        session_.select({backward ? *(at - 1) : *(at + 1)});
    }
    session_.say(tip(session_.selection().front(), session_, view_.overlay()));
    return true;
}

void SheetCanvas::erase() {
    if (doing_ == Doing::nothing && !session_.selection().empty())
        session_.apply(editing::erase(session_.detail(), session_.selection()));
}

void SheetCanvas::escape() {
    if (doing_ != Doing::nothing)
        take_back();
    else if (tool_ != Tool::select)
        set_tool(Tool::select);
    else if (!session_.selection().empty())
        session_.select({});
    else if (view_.alone())
        show_alone(std::nullopt);
}

}  // namespace toehold::window
