#pragma once
// Help in a window of its own, which stays while the reader works.
#include "window/theme/theme.h"

class wxWindow;

namespace toehold::window {

enum class HelpPage { method, sources, keys };

void show_help(wxWindow* parent, const Theme& theme, HelpPage page);

}  // namespace toehold::window
