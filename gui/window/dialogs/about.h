#pragma once
// What this program is, in a small window.

class wxWindow;

namespace toehold::window {

void show_about(wxWindow* parent);

}  // namespace toehold::window
