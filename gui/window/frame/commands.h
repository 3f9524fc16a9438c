#pragma once
// What the menus of a detail's window do, a file for each menu.
#include "session/session.h"

class wxFrame;

namespace toehold::window {

class Application;
class DetailFrame;
class DocumentFile;
class DocumentFrame;
class Panes;

/// What a command acts on.
struct CommandTarget {
    DetailFrame& frame;
    Application& application;
    session::Session& session;
    Panes& panes;
    DocumentFile& file;
};

/// What a command on any document acts on.
struct DocumentTarget {
    DocumentFrame& frame;
    Application& application;
    DocumentFile& file;
    DetailFrame* reuse =
        nullptr;  ///< where a document that is opened may stand instead; nullptr: in a window of its own
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

// The same in every window.
bool run_document_command(int id, const DocumentTarget& target);
bool run_preference_command(int id, Application& application);  ///< units and background
bool run_help_command(int id, wxFrame& frame, const Application& application);
/// Where words are being typed, the customary commands mean the words.
bool run_in_text(int id);

}  // namespace toehold::window
