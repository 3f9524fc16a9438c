#pragma once
// The sheet on paper.
#include "desk/desk.h"

class wxWindow;

namespace toehold::window {

class Application;

void set_up_page(wxWindow* parent, Application& application);
void preview(wxWindow* parent, Application& application, const desk::Desk& desk);
void print(wxWindow* parent, Application& application, const desk::Desk& desk);

}  // namespace toehold::window
