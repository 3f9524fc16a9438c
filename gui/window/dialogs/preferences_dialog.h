#pragma once
// The reader's preferences, asked in a dialog.

class wxWindow;

namespace toehold::window {

class Application;

/// What is agreed to holds at once and for every window, the language from the next start on.
void ask_preferences(wxWindow* parent, Application& application);

}  // namespace toehold::window
