#pragma once
// Where a day begins: a job told in a few answers, a stock plate, or a file.
#include <wx/frame.h>

namespace toehold::window {

class Application;
class JobPage;

class StartFrame : public wxFrame {
  public:
    explicit StartFrame(Application& application);

  private:
    wxSizer* heading();
    wxSizer* files_row();
    void add_recent(wxSizer& row);

    Application& application_;
    JobPage* job_ = nullptr;
};

}  // namespace toehold::window
