// The View menu: the sheet's tools and zoom, what the drawings show, and the panes.
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/sheet/canvas.h"

#include <optional>

namespace toehold::window {

namespace {

bool run_zoom_command(int id, SheetCanvas& sheet) {
    switch (id) {
        case wxID_ZOOM_FIT:
            sheet.fit_all();
            return true;
        case wxID_ZOOM_IN:
            sheet.zoom_in();
            return true;
        case wxID_ZOOM_OUT:
            sheet.zoom_out();
            return true;
        case command_tool_select:
            sheet.set_tool(Tool::select);
            return true;
        case command_tool_pan:
            sheet.set_tool(Tool::pan);
            return true;
        default:
            return false;
    }
}

bool run_push_command(int id, const CommandTarget& target) {
    switch (id) {
        case command_push_governing:
            target.session.turn_push(std::nullopt);
            return true;
        case command_push_left:
            target.panes.sheet().turn_push_by(push_step_deg);
            return true;
        case command_push_right:
            target.panes.sheet().turn_push_by(-push_step_deg);
            return true;
        default:
            return false;
    }
}

/// What the command makes of the display; absent: it is about something else.
std::optional<session::Display> changed(int id, session::Display display) {
    switch (id) {
        case command_pressure:
            display.pressure = !display.pressure;
            return display;
        case command_bent:
            display.bent = !display.bent;
            return display;
        case command_marks:
            display.marks = !display.marks;
            return display;
        case command_dimensions:
            display.dimensions = !display.dimensions;
            return display;
        case command_framing:
            display.framing = !display.framing;
            return display;
        case command_holds:
            display.holds = !display.holds;
            return display;
        case command_hand:
            display.method = drawing::Method::hand;
            return display;
        case command_rigid:
            display.method = drawing::Method::rigid;
            return display;
        case command_flexible:
            display.method = drawing::Method::flexible;
            return display;
        default:
            return std::nullopt;
    }
}

std::optional<Preferences> changed(int id, Preferences preferences) {
    switch (id) {
        case command_us:
            preferences.system = units::System::us;
            return preferences;
        case command_si:
            preferences.system = units::System::si;
            return preferences;
        case command_ground_desktop:
        case command_ground_paper:
        case command_ground_night:
            preferences.ground = static_cast<GroundChoice>(id - command_ground_desktop);
            return preferences;
        default:
            return std::nullopt;
    }
}

bool run_pane_command(int id, const CommandTarget& target) {
    switch (id) {
        case command_show_fields:
            target.panes.toggle_fields();
            break;
        case command_show_review:
            target.panes.toggle_review();
            break;
        case command_reset_layout:
            target.panes.reset_layout();
            break;
        case command_page_drawings:
        case command_page_sizes:
        case command_page_charts:
            target.panes.show(static_cast<Page>(id - command_page_drawings));
            break;
        default:
            return false;
    }
    target.frame.refresh();
    return true;
}

}  // namespace

bool run_view_command(int id, const CommandTarget& target) {
    if (run_zoom_command(id, target.panes.sheet()) || run_push_command(id, target) || run_pane_command(id, target)) {
        return true;
    }
    if (const auto display = changed(id, target.session.display())) {
        target.session.show(*display);
        return true;
    }
    return run_preference_command(id, target.application);
}

bool run_preference_command(int id, Application& application) {
    const auto preferences = changed(id, application.preferences());
    if (preferences) application.prefer(*preferences);
    return preferences.has_value();
}

}  // namespace toehold::window
