#pragma once
// What leaves the window as a file: papers and tables of the detail as it stands.
#include "session/session.h"

#include <filesystem>

class wxWindow;

namespace toehold::window {

class Application;

/// False: the command is none of these. `file`: of the detail; empty where it was never saved. Nothing is written while
/// the results are not of the detail as it stands; the reader is told so.
bool run_paper_command(int id, wxWindow* parent, Application& application, session::Session& session,
                       const std::filesystem::path& file);

}  // namespace toehold::window
