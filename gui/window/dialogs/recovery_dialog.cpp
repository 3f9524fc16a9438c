#include "window/dialogs/recovery_dialog.h"

#include "window/text.h"
#include "window/theme/theme.h"

#include <wx/button.h>
#include <wx/checklst.h>
#include <wx/dialog.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

namespace toehold::window {

namespace {

wxString line_of(const editing::RecoveryCopy& copy) {
    const wxString file = copy.of.empty() ? _("never saved") : shown_path(copy.of);
    return wxString::Format(_("%s, %s (%s)"), text_of(copy.name), text_of(copy.written), file);
}

class RecoveryDialog : public wxDialog {
  public:
    RecoveryDialog(wxWindow* parent, const std::vector<editing::RecoveryCopy>& copies)
        : wxDialog(parent, wxID_ANY, _("Unsaved work"), wxDefaultPosition, wxDefaultSize,
                   wxDEFAULT_DIALOG_STYLE | wxRESIZE_BORDER) {
        SetName("recovery");
        wxArrayString lines;
        for (const editing::RecoveryCopy& copy : copies) lines.Add(line_of(copy));
        list_ = new wxCheckListBox(this, wxID_ANY, wxDefaultPosition, FromDIP(wxSize(560, 160)), lines);
        list_->SetName("copies");
        for (unsigned number = 0; number < lines.size(); ++number) list_->Check(number);
        auto* words = new wxStaticText(
            this, wxID_ANY,
            _("Toehold closed before these details were saved. Each opens in its own window, unsaved."));
        auto* buttons = new wxBoxSizer(wxHORIZONTAL);
        add_button(*buttons, _("&Discard all"), Fate::discard);
        buttons->AddStretchSpacer();
        add_button(*buttons, _("&Later"), Fate::keep);
        add_button(*buttons, _("&Open checked"), Fate::open)->SetDefault();
        auto* page = new wxBoxSizer(wxVERTICAL);
        page->Add(words, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::wide)));
        page->Add(list_, wxSizerFlags(1).Expand().Border(wxLEFT | wxRIGHT, FromDIP(gap::wide)));
        page->Add(buttons, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::wide)));
        SetSizerAndFit(page);
        list_->SetFocus();
    }

    [[nodiscard]] Fate fate(unsigned number) const {
        if (chosen_ != Fate::open) return chosen_;
        return list_->IsChecked(number) ? Fate::open : Fate::keep;
    }

  private:
    wxButton* add_button(wxSizer& buttons, const wxString& words, Fate fate) {
        auto* button = new wxButton(this, wxID_ANY, words);
        button->Bind(wxEVT_BUTTON, [this, fate](wxCommandEvent&) {
            chosen_ = fate;
            EndModal(wxID_OK);
        });
        buttons.Add(button, wxSizerFlags().Border(wxLEFT, FromDIP(gap::normal)));
        return button;
    }

    wxCheckListBox* list_ = nullptr;
    Fate chosen_ = Fate::keep;
};

}  // namespace

std::vector<Recovery> ask_recovery(wxWindow* parent, const std::vector<editing::RecoveryCopy>& copies) {
    RecoveryDialog dialog(parent, copies);
    const bool answered = dialog.ShowModal() == wxID_OK;
    std::vector<Recovery> answers;
    for (unsigned number = 0; number < copies.size(); ++number) {
        answers.push_back({copies[number], answered ? dialog.fate(number) : Fate::keep});
    }
    return answers;
}

}  // namespace toehold::window
