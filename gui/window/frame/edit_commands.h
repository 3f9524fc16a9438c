#pragma once
// The commands of the Edit menu that change the detail: each asks what it must, and makes one step.
#include "session/session.h"

class wxWindow;

namespace toehold::window {

/// False: not one of these commands.
bool run_edit_command(int id, wxWindow* parent, session::Session& session);

}  // namespace toehold::window
