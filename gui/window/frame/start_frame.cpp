#include "window/frame/start_frame.h"

#include "window/dialogs/plate_list.h"
#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/paths.h"

#include <wx/button.h>
#include <wx/dialog.h>
#include <wx/dnd.h>
#include <wx/sizer.h>
#include <wx/statline.h>
#include <wx/stattext.h>
#include <wx/translation.h>

namespace toehold::window {

namespace {

class Drop : public wxFileDropTarget {
  public:
    explicit Drop(Application& application) : application_(application) {}
    bool OnDropFiles(wxCoord /*x*/, wxCoord /*y*/, const wxArrayString& names) override {
        Application& application = application_;
        application.CallAfter([&application, names] {
            for (const wxString& name : names) application.open(path_of(name));
        });
        return true;
    }

  private:
    Application& application_;
};

wxStaticText* words(wxWindow* parent, const wxString& text, double points, bool bold, const wxColour& colour) {
    auto* made = new wxStaticText(parent, wxID_ANY, text);
    made->SetFont(lettering(points, bold));
    made->SetForegroundColour(colour);
    return made;
}

class PlateDialog : public wxDialog {
  public:
    PlateDialog(wxWindow* parent, Application& application)
        : wxDialog(parent, wxID_ANY, _("Stock plates"), wxDefaultPosition, wxDefaultSize,
                   wxDEFAULT_DIALOG_STYLE | wxRESIZE_BORDER) {
        SetName("plate-dialog");
        list_ = new PlateList(this, application.catalog(), application.ground());
        list_->Bind(wxEVT_LISTBOX_DCLICK, [this](wxCommandEvent&) { EndModal(wxID_OK); });
        auto* column = new wxBoxSizer(wxVERTICAL);
        column->Add(list_, wxSizerFlags(1).Expand().Border(wxALL, FromDIP(14)));
        column->Add(CreateButtonSizer(wxOK | wxCANCEL), wxSizerFlags().Expand().Border(wxALL, FromDIP(10)));
        SetSizerAndFit(column);
        list_->SetFocus();
    }
    [[nodiscard]] const model::Plate* chosen() const { return list_->chosen(); }

  private:
    PlateList* list_ = nullptr;
};

}  // namespace

StartFrame::StartFrame(Application& application) : wxFrame(nullptr, wxID_ANY, "Toehold"), application_(application) {
    SetName("start");
    give_icon(*this);
    const Look dress = look(application_.ground());
    SetBackgroundColour(dress.paper);
    auto* column = new wxBoxSizer(wxVERTICAL);
    add_heading(*column);
    auto* sides = new wxBoxSizer(wxHORIZONTAL);
    sides->Add(plates_side(), wxSizerFlags(3).Expand().Border(wxALL, FromDIP(22)));
    sides->Add(new wxStaticLine(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxLI_VERTICAL),
               wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, FromDIP(22)));
    sides->Add(files_side(), wxSizerFlags(2).Expand().Border(wxALL, FromDIP(22)));
    column->Add(sides, wxSizerFlags(1).Expand());
    SetSizer(column);
    SetClientSize(FromDIP(wxSize(940, 620)));
    SetDropTarget(new Drop(application_));
    plates_->SetFocus();
}

void StartFrame::add_heading(wxSizer& column) {
    const Look dress = look(application_.ground());
    column.Add(words(this, "TOEHOLD", 26.0, true, dress.ink),
               wxSizerFlags().Border(wxLEFT | wxRIGHT | wxTOP, FromDIP(22)));
    column.Add(words(this, _("The base of a guard post on a wood deck, designed and checked down to the joists."), 10.5,
                     false, dress.faded),
               wxSizerFlags().Border(wxLEFT | wxRIGHT | wxBOTTOM, FromDIP(22)));
    column.Add(new wxStaticLine(this), wxSizerFlags().Expand());
}

wxSizer* StartFrame::plates_side() {
    const Look dress = look(application_.ground());
    auto* side = new wxBoxSizer(wxVERTICAL);
    side->Add(words(this, _("START ON A STOCK PLATE"), 9.0, true, dress.ink),
              wxSizerFlags().Border(wxBOTTOM, FromDIP(8)));
    plates_ = new PlateList(this, application_.catalog(), application_.ground());
    plates_->Bind(wxEVT_LISTBOX_DCLICK, [this](wxCommandEvent&) { begin_on_chosen(); });
    plates_->Bind(wxEVT_CHAR, [this](wxKeyEvent& event) {
        if (event.GetKeyCode() == WXK_RETURN || event.GetKeyCode() == WXK_NUMPAD_ENTER) {
            begin_on_chosen();
        } else {
            event.Skip();
        }
    });
    side->Add(plates_, wxSizerFlags(1).Expand());
    auto* begin = new wxButton(this, wxID_ANY, _("&Start on this plate"));
    begin->SetName("start-on-plate");
    begin->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { begin_on_chosen(); });
    side->Add(begin, wxSizerFlags().Border(wxTOP, FromDIP(12)));
    auto* note = words(this, _("The rest of the detail is filled in as a start and nothing more: check every value."),
                       8.5, false, dress.faded);
    side->Add(note, wxSizerFlags().Border(wxTOP, FromDIP(8)));
    return side;
}

wxSizer* StartFrame::files_side() {
    const Look dress = look(application_.ground());
    auto* side = new wxBoxSizer(wxVERTICAL);
    side->Add(words(this, _("OPEN A DETAIL"), 9.0, true, dress.ink), wxSizerFlags().Border(wxBOTTOM, FromDIP(8)));
    auto* open = new wxButton(this, wxID_OPEN, _("&Open a file..."));
    open->SetName("open");
    open->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { application_.ask_and_open(this); });
    side->Add(open);
    side->Add(words(this, _("or drop one on this window"), 8.5, false, dress.faded),
              wxSizerFlags().Border(wxTOP | wxBOTTOM, FromDIP(6)));
    side->AddSpacer(FromDIP(16));
    wxFileHistory& recent = application_.recent();
    if (recent.GetCount() > 0) {
        side->Add(words(this, _("RECENT"), 9.0, true, dress.ink), wxSizerFlags().Border(wxBOTTOM, FromDIP(6)));
    }
    for (std::size_t number = 0; number < recent.GetCount(); ++number) {
        const wxString file = recent.GetHistoryFile(number);
        auto* button = new wxButton(this, wxID_ANY, shown_path(path_of(file).stem()), wxDefaultPosition, wxDefaultSize,
                                    wxBU_LEFT | wxBORDER_NONE);
        button->SetToolTip(file);
        button->Bind(wxEVT_BUTTON, [this, number](wxCommandEvent&) {
            Application& program = application_;
            program.CallAfter([&program, number] { program.open_recent(number); });
        });
        side->Add(button, wxSizerFlags().Expand());
    }
    return side;
}

void StartFrame::begin_on_chosen() {
    if (const model::Plate* plate = plates_->chosen()) application_.start_on(*plate);
}

std::optional<model::Plate> ask_stock_plate(wxWindow* parent, Application& application) {
    PlateDialog dialog(parent, application);
    dialog.CentreOnParent();
    if (dialog.ShowModal() != wxID_OK || dialog.chosen() == nullptr) return std::nullopt;
    return *dialog.chosen();
}

}  // namespace toehold::window
