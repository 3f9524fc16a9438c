#include "window/frame/start_frame.h"

#include "window/dialogs/plate_list.h"
#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/text.h"

#include <wx/button.h>
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

}  // namespace

StartFrame::StartFrame(Application& application) : wxFrame(nullptr, wxID_ANY, "Toehold"), application_(application) {
    SetName("start");
    give_icon(*this);
    const Theme theme = application_.theme();
    SetBackgroundColour(theme.paper);
    auto* column = new wxBoxSizer(wxVERTICAL);
    add_heading(*column);
    auto* sides = new wxBoxSizer(wxHORIZONTAL);
    sides->Add(plates_side(), wxSizerFlags(3).Expand().Border(wxALL, FromDIP(gap::page)));
    sides->Add(new wxStaticLine(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxLI_VERTICAL),
               wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, FromDIP(gap::page)));
    sides->Add(files_side(), wxSizerFlags(2).Expand().Border(wxALL, FromDIP(gap::page)));
    column->Add(sides, wxSizerFlags(1).Expand());
    SetSizer(column);
    SetClientSize(FromDIP(wxSize(940, 620)));
    SetDropTarget(new Drop(application_));
    plates_->SetFocus();
}

void StartFrame::add_heading(wxSizer& column) {
    const Theme theme = application_.theme();
    column.Add(words(this, "TOEHOLD", points::display, true, theme.ink),
               wxSizerFlags().Border(wxLEFT | wxRIGHT | wxTOP, FromDIP(gap::page)));
    column.Add(words(this, _("The base of a guard post on a wood deck, designed and checked down to the joists."),
                     points::lead, false, theme.faded),
               wxSizerFlags().Border(wxLEFT | wxRIGHT | wxBOTTOM, FromDIP(gap::page)));
    column.Add(new wxStaticLine(this), wxSizerFlags().Expand());
}

wxSizer* StartFrame::plates_side() {
    const Theme theme = application_.theme();
    auto* side = new wxBoxSizer(wxVERTICAL);
    side->Add(words(this, _("START ON A STOCK PLATE"), points::body, true, theme.ink),
              wxSizerFlags().Border(wxBOTTOM, FromDIP(gap::normal)));
    plates_ = new PlateList(this, application_.catalog(), application_.theme());
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
    side->Add(begin, wxSizerFlags().Border(wxTOP, FromDIP(gap::wide)));
    auto* note = words(this, _("The rest of the detail is filled with starting values. Check every one."),
                       points::small, false, theme.faded);
    side->Add(note, wxSizerFlags().Border(wxTOP, FromDIP(gap::normal)));
    return side;
}

wxSizer* StartFrame::files_side() {
    const Theme theme = application_.theme();
    auto* side = new wxBoxSizer(wxVERTICAL);
    side->Add(words(this, _("OPEN A DETAIL"), points::body, true, theme.ink),
              wxSizerFlags().Border(wxBOTTOM, FromDIP(gap::normal)));
    auto* open = new wxButton(this, wxID_OPEN, _("&Open a file..."));
    open->SetName("open");
    open->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { application_.ask_and_open(this); });
    side->Add(open);
    side->Add(words(this, _("or drop one on this window"), points::small, false, theme.faded),
              wxSizerFlags().Border(wxTOP | wxBOTTOM, FromDIP(gap::small)));
    side->AddSpacer(FromDIP(gap::wide));
    wxFileHistory& recent = application_.recent();
    if (recent.GetCount() > 0) {
        side->Add(words(this, _("RECENT"), points::body, true, theme.ink),
                  wxSizerFlags().Border(wxBOTTOM, FromDIP(gap::small)));
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

}  // namespace toehold::window
