// The window's program. What it does is in window/application.h, so that tests can begin it too.
#include "window/frame/application.h"

wxIMPLEMENT_APP(toehold::window::Application);
