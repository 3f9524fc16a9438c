#pragma once
// Help in a window of its own, which stays while the reader works.
#include "drawing/render/palette.h"

class wxWindow;

namespace toehold::window {

enum class HelpPage { method, sources, keys };

void show_help(wxWindow* parent, drawing::Ground ground, HelpPage page);

}  // namespace toehold::window
