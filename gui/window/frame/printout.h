#pragma once
// The sheet on paper.
#include "session/session.h"

class wxWindow;

namespace toehold::window {

class Application;

void set_up_page(wxWindow* parent, Application& application);
void preview(wxWindow* parent, Application& application, const session::Session& session);
void print(wxWindow* parent, Application& application, const session::Session& session);

}  // namespace toehold::window
