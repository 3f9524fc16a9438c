#include "window/start/start_frame.h"

#include "window/dialogs/file_drop.h"
#include "window/dialogs/plate_list.h"
#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/start/job_page.h"
#include "window/text.h"

#include <wx/button.h>
#include <wx/display.h>
#include <wx/sizer.h>
#include <wx/statline.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <algorithm>

namespace toehold::window {

namespace {

constexpr std::size_t recent_shown = 3;

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
    SetBackgroundColour(application_.theme().paper);
    // The window closes when a detail opens: not before the button that asked for it has ended.
    const auto open = [this](bool find_sizes) {
        return [this, find_sizes](const job::Started& started) {
            Application& program = application_;
            program.CallAfter([&program, started, find_sizes] { program.start_on_job(started, find_sizes); });
        };
    };
    job_ = new JobPage(this, application_.catalog(), application_.theme(), application_.locale(),
                       {open(false), open(true)});
    auto* column = new wxBoxSizer(wxVERTICAL);
    const int side = FromDIP(gap::page);
    column->Add(heading(), wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT | wxTOP, side));
    column->Add(new wxStaticLine(this), wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, FromDIP(gap::normal)));
    column->Add(job_, wxSizerFlags(1).Expand().Border(wxLEFT | wxRIGHT, side));
    column->Add(new wxStaticLine(this), wxSizerFlags().Expand().Border(wxTOP, FromDIP(gap::wide)));
    column->Add(files_row(), wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT | wxBOTTOM, side));
    SetSizer(column);
    wxSize size = FromDIP(wxSize(1020, 690));
    size.DecTo(wxDisplay(this).GetClientArea().GetSize());
    SetSize(size);
    SetMinSize(FromDIP(wxSize(760, 520)));
    SetDropTarget(new FileDrop(*this, [&application](const auto& file) {
        application.CallAfter([&application, file] { application.open(file); });
    }));
    job_->begin();
}

wxSizer* StartFrame::heading() {
    const Theme theme = application_.theme();
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(words(this, "TOEHOLD", points::display, true, theme.ink), wxSizerFlags().Bottom());
    row->Add(words(this, _("The base of a guard post on a wood deck, designed and checked down to the joists."),
                   points::lead, false, theme.faded),
             wxSizerFlags().Bottom().Border(wxLEFT | wxBOTTOM, FromDIP(gap::wide)));
    return row;
}

wxSizer* StartFrame::files_row() {
    const Theme theme = application_.theme();
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    const auto add = [this, row](wxWindow* what) {
        row->Add(what, wxSizerFlags().CenterVertical().Border(wxRIGHT | wxTOP, FromDIP(gap::normal)));
    };
    add(words(this, _("OR OPEN"), points::body, true, theme.ink));
    auto* open = new wxButton(this, wxID_OPEN, _("&A file..."));
    open->SetName("open");
    open->SetToolTip(_("Open a base detail or a project, or drop one on this window"));
    open->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { application_.ask_and_open(this); });
    add(open);
    auto* plate = new wxButton(this, wxID_ANY, _("A stock &plate..."));
    plate->SetName("start-on-plate");
    plate->SetToolTip(_("A new detail on a plate of the stock list"));
    plate->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        Application& program = application_;
        if (const auto chosen = ask_stock_plate(this, program))
            program.CallAfter([&program, plate = *chosen] { program.start_on(plate); });
    });
    add(plate);
    auto* side = new wxButton(this, wxID_ANY, _("A p&ost on the side"));
    side->SetName("start-on-side");
    side->SetToolTip(_("A new detail of a wood post bolted to the side of a rim, as an example to change"));
    side->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        Application& program = application_;
        program.CallAfter([&program] { program.start_side_post(); });
    });
    add(side);
    row->AddSpacer(FromDIP(gap::wide));
    add_recent(*row);
    return row;
}

void StartFrame::add_recent(wxSizer& row) {
    wxFileHistory& recent = application_.recent();
    if (recent.GetCount() == 0) return;
    row.Add(words(this, _("RECENT"), points::body, true, application_.theme().ink),
            wxSizerFlags().CenterVertical().Border(wxRIGHT | wxTOP, FromDIP(gap::normal)));
    for (std::size_t number = 0; number < std::min(recent.GetCount(), recent_shown); ++number) {
        const wxString file = recent.GetHistoryFile(number);
        const wxString name = wxControl::EscapeMnemonics(shown_path(path_of(file).stem()));
        auto* button =
            new wxButton(this, wxID_ANY, name, wxDefaultPosition, FromDIP(wxSize(150, -1)), wxBU_LEFT | wxBORDER_NONE);
        button->SetToolTip(file);
        button->Bind(wxEVT_BUTTON, [this, number](wxCommandEvent&) {
            Application& program = application_;
            program.CallAfter([&program, number] { program.open_recent(number); });
        });
        row.Add(button, wxSizerFlags(1).CenterVertical().Border(wxRIGHT | wxTOP, FromDIP(gap::small)));
    }
}

}  // namespace toehold::window
