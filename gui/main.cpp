// The window. For now it only says what the engine can do from the command line; it is here so that its build, and its
// view of the engine's public headers alone, are in place.
#include "checks/registry.h"

#include <wx/app.h>
#include <wx/frame.h>
#include <wx/sizer.h>
#include <wx/stattext.h>

namespace {

class Application : public wxApp {
  public:
    bool OnInit() override {
        auto* frame = new wxFrame(nullptr, wxID_ANY, "Toehold");
        const auto count = toehold::checks::registered_checks().size();
        const wxString words = wxString::Format(
            "The drawing sheet is not here yet.\n\nThe engine behind it has %zu checks: run `toehold check FILE` in a "
            "terminal.",
            count);
        auto* sizer = new wxBoxSizer(wxVERTICAL);
        sizer->Add(new wxStaticText(frame, wxID_ANY, words), wxSizerFlags().Border(wxALL, frame->FromDIP(24)));
        frame->SetSizerAndFit(sizer);
        frame->Show();
        return true;
    }
};

}  // namespace

wxIMPLEMENT_APP(Application);
