#pragma once
// The sheet by keyboard alone.
#include <wx/event.h>
#include <wx/timer.h>

namespace toehold::window {

class SheetCanvas;
struct SheetState;

class SheetKeyboard {
  public:
    /// Both outlive this.
    SheetKeyboard(SheetCanvas& canvas, SheetState& sheet);

    // False: the key means nothing here.
    bool key(const wxKeyEvent& event);
    bool character(const wxKeyEvent& event);
    /// A row of nudges is one step of history: it ends here, or by itself after a rest.
    void end_nudges();

  private:
    bool nudge(const wxKeyEvent& event);
    /// To the next part; false: past the last one.
    bool cycle(bool backward);
    void erase();
    void escape();

    SheetCanvas& canvas_;
    SheetState& sheet_;
    wxTimer rest_;
};

}  // namespace toehold::window
