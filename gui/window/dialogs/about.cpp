#include "window/dialogs/about.h"

#include "checks/registry.h"
#include "window/theme/theme.h"

#include <wx/dialog.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

namespace toehold::window {

void show_about(wxWindow* parent) {
    wxDialog dialog(parent, wxID_ANY, _("About Toehold"));
    dialog.SetName("about");
    auto* column = new wxBoxSizer(wxVERTICAL);
    const auto add = [&dialog, column](const wxString& words, double points, bool bold) {
        auto* text = new wxStaticText(&dialog, wxID_ANY, words);
        text->SetFont(lettering(points, bold));
        text->Wrap(dialog.FromDIP(420));
        column->Add(text, wxSizerFlags().Border(wxLEFT | wxRIGHT | wxTOP, dialog.FromDIP(gap::wide)));
    };
    add("TOEHOLD", points::display, true);
    add(wxString::Format(_("Version %s, with %zu checks"), TOEHOLD_VERSION, checks::registered_checks().size()),
        points::body, false);
    add(_("Designs and checks the base of a guard post on a wood deck, on a plate or fastened by its side: the tension "
          "on every anchor for a push from any direction, and every link from the post down to the supports of the "
          "joists."),
        points::body, false);
    add(_("It assists the engineer responsible for the detail and does not replace one."), points::body, true);
    column->Add(dialog.CreateButtonSizer(wxOK), wxSizerFlags().Expand().Border(wxALL, dialog.FromDIP(gap::wide)));
    dialog.SetSizerAndFit(column);
    dialog.CentreOnParent();
    dialog.ShowModal();
}

}  // namespace toehold::window
