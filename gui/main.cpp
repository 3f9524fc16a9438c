#include <wx/app.h>
#include <wx/frame.h>

namespace {

class Application : public wxApp {
  public:
    bool OnInit() override {
        auto* frame = new wxFrame(nullptr, wxID_ANY, "Toehold");
        frame->Show();
        return true;
    }
};

}  // namespace

wxIMPLEMENT_APP(Application);
