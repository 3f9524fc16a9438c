#pragma once
// What the menus of a detail's window do, a file for each menu.
#include "session/session.h"

namespace toehold::window {

class Application;
class DocumentFile;
class DetailFrame;
class Panes;

/// What a command acts on.
struct CommandTarget {
    DetailFrame& frame;
    Application& application;
    session::Session& session;
    Panes& panes;
    DocumentFile& file;
};

// Each false: the identifier is none of its commands.
bool run_command(int id, const CommandTarget& target);
bool run_file_command(int id, const CommandTarget& target);
/// What leaves the window as a file: papers and tables of the detail as it stands. Nothing is written while the results
/// are not of that; the reader is told so.
bool run_paper_command(int id, const CommandTarget& target);
/// Commands that change the detail: each asks what it must, and makes one step.
bool run_edit_command(int id, const CommandTarget& target);
bool run_view_command(int id, const CommandTarget& target);
bool run_checks_command(int id, const CommandTarget& target);

}  // namespace toehold::window
