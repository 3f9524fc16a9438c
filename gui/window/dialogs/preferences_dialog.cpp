#include "window/dialogs/preferences_dialog.h"

#include "editing/fields.h"
#include "window/frame/application.h"
#include "window/text.h"

#include <wx/choice.h>
#include <wx/dialog.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <wx/translation.h>

#include <initializer_list>

namespace toehold::window {

namespace {

class PreferencesDialog : public wxDialog {
  public:
    PreferencesDialog(wxWindow* parent, const Preferences& now)
        : wxDialog(parent, wxID_ANY, _("Preferences")), preferences_(now) {
        SetName("preferences");
        auto* grid = new wxFlexGridSizer(2, wxSize(FromDIP(gap::wide), FromDIP(gap::normal)));
        grid->AddGrowableCol(1);
        system_ = add_choice(*grid, _("&Units"), "units", {_("Inches and pounds"), _("Millimeters and newtons")},
                             static_cast<int>(now.system));
        ground_ =
            add_choice(*grid, _("&Background"), "ground",
                       {_("As the desktop"), _("Drafting paper"), _("Night negative")}, static_cast<int>(now.ground));
        language_ = add_choice(*grid, _("&Language, from the next start"), "language",
                               {_("As the desktop"), "English", wxString::FromUTF8("Français")},
                               static_cast<int>(now.language));
        nudge_us_ = add_length(*grid, _("&Arrow key, US units"), "nudge-us", now.nudge_us_in, units::System::us);
        nudge_si_ = add_length(*grid, _("A&rrow key, SI units"), "nudge-si", now.nudge_si_in, units::System::si);
        refusal_ = new wxStaticText(this, wxID_ANY, "");
        refusal_->SetName("refusal");
        auto* column = new wxBoxSizer(wxVERTICAL);
        column->Add(grid, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::wide)));
        column->Add(refusal_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT, FromDIP(gap::wide)));
        column->Add(CreateButtonSizer(wxOK | wxCANCEL), wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::wide)));
        SetSizerAndFit(column);
        Bind(
            wxEVT_BUTTON, [this](wxCommandEvent&) { finish(); }, wxID_OK);
        // The toolkit takes the focus of a choice away again while the dialog is being shown.
        CallAfter([this] { system_->SetFocus(); });
    }

    [[nodiscard]] const Preferences& preferences() const { return preferences_; }

  private:
    wxChoice* add_choice(wxSizer& grid, const wxString& label, const wxString& name,
                         std::initializer_list<wxString> words, int chosen) {
        grid.Add(new wxStaticText(this, wxID_ANY, label), wxSizerFlags().CenterVertical());
        auto* choice = new wxChoice(this, wxID_ANY);
        for (const wxString& each : words) choice->Append(each);
        choice->SetSelection(chosen);
        choice->SetName(name);
        grid.Add(choice, wxSizerFlags().Expand());
        return choice;
    }

    wxTextCtrl* add_length(wxSizer& grid, const wxString& label, const wxString& name, double length_in,
                           units::System system) {
        grid.Add(new wxStaticText(this, wxID_ANY, label), wxSizerFlags().CenterVertical());
        auto* entry = new wxTextCtrl(this, wxID_ANY, text_of(editing::shown(length_in, units::Kind::length, system)));
        entry->SetName(name);
        grid.Add(entry, wxSizerFlags().Expand());
        return entry;
    }

    /// Takes a length over zero; else says what is wanted.
    bool take(const wxTextCtrl& entry, units::System system, double& length_in) {
        const auto typed = editing::typed(utf8(entry.GetValue()), units::Kind::length, system);
        if (typed && *typed > 0.0) {
            length_in = *typed;
            return true;
        }
        refusal_->SetLabel(
            wxString::Format(_("Not readable. Enter %s."), text_of(units::accepted(units::Kind::length))));
        refusal_->Wrap(FromDIP(360));
        GetSizer()->Fit(this);
        return false;
    }

    void finish() {
        preferences_.system = static_cast<units::System>(system_->GetSelection());
        preferences_.ground = static_cast<GroundChoice>(ground_->GetSelection());
        preferences_.language = static_cast<Language>(language_->GetSelection());
        if (take(*nudge_us_, units::System::us, preferences_.nudge_us_in) &&
            take(*nudge_si_, units::System::si, preferences_.nudge_si_in)) {
            EndModal(wxID_OK);
        }
    }

    Preferences preferences_;
    wxChoice* system_ = nullptr;
    wxChoice* ground_ = nullptr;
    wxChoice* language_ = nullptr;
    wxTextCtrl* nudge_us_ = nullptr;
    wxTextCtrl* nudge_si_ = nullptr;
    wxStaticText* refusal_ = nullptr;
};

}  // namespace

void ask_preferences(wxWindow* parent, Application& application) {
    PreferencesDialog dialog(parent, application.preferences());
    dialog.CentreOnParent();
    if (dialog.ShowModal() == wxID_OK) application.prefer(dialog.preferences());
}

}  // namespace toehold::window
