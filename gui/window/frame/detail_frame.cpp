#include "window/frame/detail_frame.h"

#include "window/frame/application.h"
#include "window/frame/menus.h"
#include "window/panels/checks/checks_panel.h"
#include "window/panels/fields/fields_panel.h"
#include "window/panels/notes/notes_panel.h"
#include "window/panels/verdict_strip.h"
#include "window/paths.h"
#include "window/sheet/canvas.h"
#include "window/sheet/place_bar.h"
#include "window/sheet/tool_row.h"

#include <wx/dnd.h>
#include <wx/infobar.h>
#include <wx/notebook.h>
#include <wx/panel.h>
#include <wx/sizer.h>
#include <wx/translation.h>

#include <array>
#include <utility>

namespace toehold::window {

namespace {

const wxSize pane_size(430, 380);  // of a pane beside the sheet, DIP

/// Hands results from the solver's threads to the window, if it is still there.
std::function<void(solving::Result)> delivery(const std::shared_ptr<DetailFrame*>& frame) {
    return [waiting = std::weak_ptr<DetailFrame*>(frame)](const solving::Result& result) {
        wxTheApp->CallAfter([waiting, result] {
            if (const auto still = waiting.lock()) (*still)->session().receive(result);
        });
    };
}

class Drop : public wxFileDropTarget {
  public:
    Drop(Application& application, DetailFrame& frame) : application_(application), frame_(frame) {}
    bool OnDropFiles(wxCoord /*x*/, wxCoord /*y*/, const wxArrayString& names) override {
        std::vector<std::filesystem::path> files;
        for (const wxString& name : names) files.push_back(path_of(name));
        // Not inside the drop itself: a message about a bad file would hold up the desktop.
        frame_.CallAfter([this, files] {
            for (const auto& file : files) application_.open(file, &frame_);
        });
        return true;
    }

  private:
    Application& application_;
    DetailFrame& frame_;
};

}  // namespace

DetailFrame::DetailFrame(Application& application, int number, model::BaseDetail detail, Document document)
    : wxFrame(nullptr, wxID_ANY, "Toehold"),
      application_(application),
      number_(number),
      document_(std::move(document)),
      alive_(std::make_shared<DetailFrame*>(this)),
      solver_(application.catalog(), delivery(alive_)),
      session_(application.catalog(), std::move(detail),
               [this](solving::Request request) { solver_.submit(std::move(request)); }) {
    SetName("detail");
    give_icon(*this);
    SetSize(FromDIP(wxSize(application.preferences().width, application.preferences().height)));
    SetMenuBar(make_menu_bar(recent_));
    application_.recent().UseMenu(recent_);
    application_.recent().AddFilesToMenu(recent_);
    const wxAcceleratorEntry more_keys[] = {{wxACCEL_CTRL, 'Y', wxID_REDO}, {wxACCEL_CTRL, '=', wxID_ZOOM_IN}};
    SetAcceleratorTable(wxAcceleratorTable(static_cast<int>(std::size(more_keys)), more_keys));
    CreateStatusBar();
    make_panes();
    accept_drops();
    listener_ = session_.listen([this](session::Change change) { on_change(change); });
    Bind(wxEVT_MENU, &DetailFrame::on_command, this);
    Bind(wxEVT_CLOSE_WINDOW, &DetailFrame::on_close, this);
    Bind(wxEVT_ACTIVATE, [this](wxActivateEvent& event) {
        if (event.GetActive()) look_for_changes_outside();
        event.Skip();
    });
    start_timers();
    dress();
    refresh_title();
    sheet_->SetFocus();
}

DetailFrame::~DetailFrame() {
    alive_.reset();
    application_.recent().RemoveMenu(recent_);
    session_.stop_listening(listener_);
    panes_.UnInit();
    // The panes listen to the session, which goes before the toolkit would take them down.
    DestroyChildren();
}

session::Session& DetailFrame::session() { return session_; }
SheetCanvas& DetailFrame::sheet() { return *sheet_; }
ChecksPanel& DetailFrame::checks() { return *checks_; }
const std::filesystem::path& DetailFrame::file() const { return document_.file; }
bool DetailFrame::unsaved() const { return document_.recovered || session_.history().changed(); }
bool DetailFrame::untouched() const { return document_.file.empty() && !unsaved(); }

void DetailFrame::show(model::BaseDetail detail, Document document) {
    document_ = std::move(document);
    notice_->Dismiss();
    told_ = false;
    session_.replace(std::move(detail));
    sheet_->fit_all();
    refresh_title();
    refresh_menus();
}

wxPanel* DetailFrame::make_sheet_pane(wxWindow* parent) {
    auto* pane = new wxPanel(parent);
    sheet_ = new SheetCanvas(pane, session_);
    sheet_->SetName("sheet");
    tools_ = new ToolRow(pane, session_, *sheet_);
    place_ = new PlaceBar(pane, session_);
    tools_->MoveBeforeInTabOrder(sheet_);
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(tools_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT, FromDIP(6)));
    column->Add(sheet_, wxSizerFlags(1).Expand());
    column->Add(place_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT, FromDIP(6)));
    pane->SetSizer(column);
    return pane;
}

wxNotebook* DetailFrame::make_review_pane(wxWindow* parent) {
    auto* book = new wxNotebook(parent, wxID_ANY);
    book->SetName("review");
    checks_ = new ChecksPanel(book, session_);
    notes_ = new NotesPanel(book, session_);
    book->AddPage(checks_, _("Checks"));
    book->AddPage(notes_, _("Findings and remedies"));
    // The toolkit complains of scroll bars in pages that have not had a size yet.
    for (wxWindow* page : std::array<wxWindow*, 2>{checks_, notes_}) {
        page->SetSize(FromDIP(pane_size));
        page->Layout();
    }
    return book;
}

void DetailFrame::make_panes() {
    notice_ = new wxInfoBar(this);
    notice_->SetName("notice");
    board_ = new wxPanel(this);
    panes_.SetManagedWindow(board_);
    fields_ = new FieldsPanel(board_, session_);
    review_ = make_review_pane(board_);
    panes_.AddPane(make_sheet_pane(board_), wxAuiPaneInfo().Name("sheet").CenterPane().PaneBorder(false));
    const wxAuiPaneInfo beside = wxAuiPaneInfo()
                                     .Right()
                                     .CloseButton(true)
                                     .Floatable(false)
                                     .BestSize(FromDIP(pane_size))
                                     .MinSize(FromDIP(wxSize(300, 140)));
    panes_.AddPane(review_, wxAuiPaneInfo(beside).Name("review").Position(0));
    panes_.AddPane(fields_, wxAuiPaneInfo(beside).Name("fields").Position(1));
    verdict_ = new VerdictStrip(this, session_);
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(notice_, wxSizerFlags().Expand());
    column->Add(board_, wxSizerFlags(1).Expand());
    column->Add(verdict_, wxSizerFlags().Expand());
    SetSizer(column);
    // The panes take a share of the board, which must have its size before they are first set.
    Layout();
    arrange();
    first_layout_ = panes_.SavePerspective();
    if (!application_.preferences().layout.empty()) panes_.LoadPerspective(application_.preferences().layout, false);
    arrange();
    panes_.Bind(wxEVT_AUI_PANE_CLOSE, [this](wxAuiManagerEvent& event) {
        event.Skip();
        CallAfter([this] { refresh_menus(); });
    });
}

/// A layout remembers captions too, in the language it was saved in.
void DetailFrame::arrange() {
    panes_.GetPane("fields").Caption(_("PROPERTIES"));
    panes_.GetPane("review").Caption(_("REVIEW"));
    panes_.GetPane("sheet").Show();
    panes_.Update();
}

void DetailFrame::dress() {
    const Preferences& preferences = application_.preferences();
    const drawing::Ground ground = application_.ground();
    const Look dress = look(ground);
    const std::array<wxWindow*, 5> surfaces{this, board_, tools_, place_, tools_->GetParent()};
    for (wxWindow* surface : surfaces) {
        surface->SetBackgroundColour(dress.paper);
        surface->SetForegroundColour(dress.ink);
    }
    window::dress(panes_, dress);
    sheet_->set_ground(ground);
    fields_->set_ground(ground);
    checks_->set_ground(ground);
    notes_->set_ground(ground);
    verdict_->set_ground(ground);
    NudgeSteps nudge = customary_nudge(preferences.system);
    nudge.plain = nudge_in(preferences);
    sheet_->set_nudge(nudge);
    session::Display display = session_.display();
    display.system = preferences.system;
    session_.show(display);
    panes_.Update();
    refresh_menus();
    Refresh();
}

void DetailFrame::on_change(session::Change change) {
    if (change == session::Change::detail || change == session::Change::file) {
        refresh_title();
        rest_.StartOnce(2000);
    }
    if (change == session::Change::display) SetStatusText(shown_text(session_.message()));
    if (change != session::Change::results) refresh_menus();
}

void DetailFrame::refresh_title() {
    const wxString name = shown_text(session_.detail().name);
    const wxString file = document_.file.empty() ? _("not saved yet") : shown_path(document_.file.filename());
    const wxString title =
        (unsaved() ? "*" : "") + name + wxString::FromUTF8(" – ") + file + wxString::FromUTF8(" – Toehold");
    if (GetTitle() != title) SetTitle(title);
}

void DetailFrame::refresh_menus() {
    refresh(*GetMenuBar(), {session_, application_.preferences().ground, !document_.file.empty(), unsaved()});
    GetMenuBar()->Check(command_show_fields, panes_.GetPane("fields").IsShown());
    GetMenuBar()->Check(command_show_review, panes_.GetPane("review").IsShown());
}

void DetailFrame::accept_drops() { SetDropTarget(new Drop(application_, *this)); }

void DetailFrame::on_close(wxCloseEvent& event) {
    if (event.CanVeto() && !may_close()) {
        event.Veto();
        return;
    }
    const wxSize size = ToDIP(GetSize());
    application_.remember_layout(panes_.SavePerspective(), size.GetWidth(), size.GetHeight());
    editing::drop_copy(application_.recovery_folder(), number_);
    watch_.Stop();
    rest_.Stop();
    Destroy();
}

}  // namespace toehold::window
