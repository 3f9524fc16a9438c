#pragma once
// Where a day begins: a stock plate to start a detail on, or a file.
#include <wx/frame.h>

namespace toehold::window {

class Application;
class PlateList;

class StartFrame : public wxFrame {
  public:
    explicit StartFrame(Application& application);

  private:
    void add_heading(wxSizer& column);
    wxSizer* plates_side();
    wxSizer* files_side();
    void begin_on_chosen();

    Application& application_;
    PlateList* plates_ = nullptr;
};

}  // namespace toehold::window
