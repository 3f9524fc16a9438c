// The window's program. What it does is in window/application.h, so that tests can begin it too.
#include "window/application.h"

wxIMPLEMENT_APP(toehold::window::Application);
