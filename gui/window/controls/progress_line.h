#pragma once
// How far a piece of work is: a thin bar in an outline.
#include "window/theme/theme.h"

#include <wx/window.h>

namespace toehold::window {

class ProgressLine : public wxWindow {
  public:
    ProgressLine(wxWindow* parent, const wxString& name);
    void show(double share);  ///< 0 to 1
    void apply_theme(const Theme& theme);

  private:
    void paint();
    double share_ = 0.0;
    Theme theme_ = theme_of(drawing::Ground::paper);
};

}  // namespace toehold::window
