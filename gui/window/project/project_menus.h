#pragma once
// The menu bar of a project's window.
#include "session/project_session.h"
#include "window/theme/theme.h"

#include <wx/menu.h>

class wxFrame;

namespace toehold::window {

/// Its submenu of recent files is returned.
wxMenu* give_project_menu_bar(wxFrame& frame);

/// What the menus must show.
struct ProjectMenuState {
    const session::ProjectSession& session;
    format::Locale locale;
    GroundChoice ground = GroundChoice::desktop;
    bool has_file = false;
    bool unsaved = false;
};
void refresh_project_menu_bar(wxMenuBar& bar, const ProjectMenuState& state);

}  // namespace toehold::window
