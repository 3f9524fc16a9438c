#include "window/sheet/keyboard.h"

#include "editing/edits.h"
#include "editing/hand_tools.h"
#include "window/sheet/canvas.h"
#include "window/sheet/tips.h"
#include "window/text.h"

#include <wx/intl.h>

#include <algorithm>
#include <cctype>

namespace toehold::window {

namespace {

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

/// In space; the rose, which shows no place, moves things as the first drawing does.
model::Place in_space(const SheetState& sheet, drawing::Point step) {
    const auto shown = sheet_of(sheet.active).value_or(editing::Sheet::plan);
    return editing::step_in(sheet.session.detail(), sheet.view.place(shown), step);
}

std::optional<Tool> tool_of(int lower_case) {
    switch (lower_case) {
        case 'v':
            return Tool::select;
        case 'h':
            return Tool::hole;
        case 'c':
            return Tool::corner;
        case 'b':
            return Tool::block;
        case 'p':
            return Tool::pan;
        default:
            return std::nullopt;
    }
}

int lower_case(const wxKeyEvent& event) {
    const int code = event.GetUnicodeKey() != WXK_NONE ? static_cast<int>(event.GetUnicodeKey()) : event.GetKeyCode();
    return code >= 'A' && code <= 'Z' ? std::tolower(code) : code;
}

}  // namespace

SheetKeyboard::SheetKeyboard(SheetCanvas& canvas, SheetState& sheet) : canvas_(canvas), sheet_(sheet) {
    rest_.Bind(wxEVT_TIMER, [this](wxTimerEvent&) { sheet_.session.rest(); });
}

bool SheetKeyboard::key(const wxKeyEvent& event) {
    switch (event.GetKeyCode()) {
        case WXK_TAB:
            if (event.ControlDown() || !cycle(event.ShiftDown()))
                canvas_.Navigate(event.ShiftDown() ? 0 : wxNavigationKeyEvent::IsForward);
            return true;
        case WXK_DELETE:
        case WXK_NUMPAD_DELETE:
        case WXK_BACK:
            erase();
            return true;
        case WXK_ESCAPE:
            escape();
            return true;
        default:
            return nudge(event);
    }
}

bool SheetKeyboard::character(const wxKeyEvent& event) {
    if (event.ControlDown() || event.AltDown()) return false;
    const int character = lower_case(event);
    if (const auto tool = tool_of(character)) {
        canvas_.set_tool(*tool);
        return true;
    }
    switch (character) {
        case '+':
        case '=':
        case WXK_NUMPAD_ADD:
            canvas_.zoom_in();
            return true;
        case '-':
        case WXK_NUMPAD_SUBTRACT:
            canvas_.zoom_out();
            return true;
        case '0':
            canvas_.fit_active();
            return true;
        case '[':
            canvas_.turn_push_by(-push_step_deg);
            return true;
        case ']':
            canvas_.turn_push_by(push_step_deg);
            return true;
        case 'g':
            sheet_.session.turn_push(std::nullopt);
            return true;
        case 'm':
            canvas_.toggle_alone(sheet_.active);
            return true;
        default:
            break;
    }
    if (character < '1' || character >= '1' + static_cast<int>(cell_kinds.size())) return false;
    canvas_.activate(cell_kinds[static_cast<std::size_t>(character - '1')]);
    return true;
}

void SheetKeyboard::end_nudges() {
    if (!rest_.IsRunning()) return;
    rest_.Stop();
    sheet_.session.rest();
}

bool SheetKeyboard::nudge(const wxKeyEvent& event) {
    const auto step = arrow(event.GetKeyCode());
    if (!step || event.AltDown() || canvas_.is_dragging()) return false;
    auto& session = sheet_.session;
    if (session.selection().empty()) {
        session.say(editing::hand_tools(session.detail()).select_first);
        return true;
    }
    const auto steps = sheet_.nudge.value_or(customary_nudge(session.display().system));
    const double length = event.ControlDown() ? steps.fine : event.ShiftDown() ? steps.coarse : steps.plain;
    const auto along = in_space(sheet_, {step->x * length, step->y * length});
    if (along == model::Place{}) return true;
    session.apply(editing::nudge(session.detail(), session.selection(), along), "nudge");
    rest_.StartOnce(nudges_end_ms);
    return true;
}

bool SheetKeyboard::cycle(bool backward) {
    auto& session = sheet_.session;
    const auto parts = model::parts(session.detail());
    if (parts.empty()) return false;
    const auto& selection = session.selection();
    if (selection.empty()) {
        session.select({backward ? parts.back() : parts.front()});
    } else {
        const auto at = std::find(parts.begin(), parts.end(), selection.back());
        const bool at_end = at == parts.end() || (backward ? at == parts.begin() : at + 1 == parts.end());
        session.select({});
        if (at_end) return false;  // past the last part the key leaves the sheet
        session.select({backward ? *(at - 1) : *(at + 1)});
    }
    session.say(format::verbatim(tip(session.selection().front(), session, sheet_.view.overlay())));
    return true;
}

void SheetKeyboard::erase() {
    auto& session = sheet_.session;
    if (!canvas_.is_dragging() && !session.selection().empty())
        session.apply(editing::erase(session.detail(), session.selection()));
}

void SheetKeyboard::escape() {
    if (canvas_.is_dragging())
        canvas_.take_back_drag();
    else if (sheet_.tool != Tool::select)
        canvas_.set_tool(Tool::select);
    else if (!sheet_.session.selection().empty())
        sheet_.session.select({});
    else if (sheet_.view.alone())
        canvas_.show_alone(std::nullopt);
}

}  // namespace toehold::window
