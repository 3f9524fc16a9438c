#include "window/project/project_frame.h"

#include "review/project_review.h"
#include "session/project_words.h"
#include "window/controls/progress_line.h"
#include "window/delivery.h"
#include "window/dialogs/file_drop.h"
#include "window/frame/application.h"
#include "window/panels/fields/fields_panel.h"
#include "window/panels/verdict_strip.h"
#include "window/project/line_checks.h"
#include "window/project/line_pane.h"
#include "window/project/project_fields_source.h"
#include "window/project/project_menus.h"
#include "window/project/project_verdict.h"
#include "window/project/schedule_panel.h"
#include "window/text.h"

#include <wx/button.h>
#include <wx/display.h>
#include <wx/infobar.h>
#include <wx/notebook.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <utility>

namespace toehold::window {

using Change = session::ProjectSession::Change;

ProjectFrame::ProjectFrame(Application& application, int number, model::Project project, Document document)
    : DocumentFrame(nullptr, wxID_ANY, "Toehold"),
      application_(application),
      alive_(std::make_shared<ProjectFrame*>(this)),
      service_(std::make_unique<solving::Projects>(
          application.catalog(),
          delivery<solving::ProjectNews>(
              alive_, [](ProjectFrame& frame, const auto& news) { frame.session().receive(news); }))),
      session_(
          application.catalog(), std::move(project),
          {[this](model::Project asked) { return service_->begin(std::move(asked)); }, [this] { service_->stop(); }},
          [this](Change change) { on_change(change); }) {
    SetName("project");
    give_icon(*this);
    const Preferences& preferences = application_.preferences();
    wxSize size = FromDIP(wxSize(preferences.width, preferences.height));
    size.DecTo(wxDisplay(this).GetClientArea().GetSize());
    SetSize(size);
    CreateStatusBar();
    recent_ = give_project_menu_bar(*this);
    application_.recent().UseMenu(recent_);
    application_.recent().AddFilesToMenu(recent_);
    build();
    file_ = std::make_unique<DocumentFile>(*this, application_, *notice_, number, std::move(document), held());
    built_ = true;
    SetDropTarget(new FileDrop(*this, [this](const auto& dropped) { application_.open(dropped); }));
    Bind(wxEVT_MENU, &ProjectFrame::on_command, this);
    Bind(wxEVT_CLOSE_WINDOW, &ProjectFrame::on_close, this);
    Bind(wxEVT_ACTIVATE, [this](wxActivateEvent& event) {
        if (event.GetActive()) file_->look_for_changes_outside();
        event.Skip();
    });
    apply_preferences();
    schedule_->focus();
}

ProjectFrame::~ProjectFrame() {
    alive_.reset();
    built_ = false;
    application_.see_off(std::move(service_));
    application_.recent().RemoveMenu(recent_);
    // The panels read the session, which goes before the toolkit would take them down.
    DestroyChildren();
}

void ProjectFrame::build() {
    notice_ = new wxInfoBar(this);
    notice_->SetName("notice");
    board_ = new wxPanel(this);
    line_ = new LinePane(
        board_, session_, [this] { return locale(); }, [this] { open_base(); });
    auto* right = new wxBoxSizer(wxVERTICAL);
    right->Add(line_, wxSizerFlags(3).Expand());
    auto* sides = new wxBoxSizer(wxHORIZONTAL);
    wxPanel* const list = left(board_);
    line_->MoveAfterInTabOrder(list);
    right->Add(book(board_), wxSizerFlags(2).Expand());
    sides->Add(list, wxSizerFlags(4).Expand());
    sides->Add(right, wxSizerFlags(5).Expand().Border(wxLEFT, FromDIP(gap::small)));
    board_->SetSizer(sides);
    verdict_ = new VerdictStrip(this, [this] { return verdict_words(session_, locale()); });
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(notice_, wxSizerFlags().Expand());
    column->Add(board_, wxSizerFlags(1).Expand());
    column->Add(verdict_, wxSizerFlags().Expand());
    SetSizer(column);
}

/// The schedule, and above it how far the review is.
wxPanel* ProjectFrame::left(wxWindow* parent) {
    auto* pane = new wxPanel(parent);
    far_ = new wxStaticText(pane, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, wxST_ELLIPSIZE_END);
    far_->SetName("project-progress");
    progress_ = new ProgressLine(pane, "project-line");
    stop_ = new wxButton(pane, wxID_ANY, _("&Review again"));  // the longer of its two labels
    stop_->SetMinSize(stop_->GetBestSize());
    stop_->SetName("project-stop");
    stop_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        if (session_.state() == session::ProjectSession::State::running) return session_.stop();
        session_.begin();
    });
    schedule_ = new SchedulePanel(
        pane, session_, [this] { return locale(); }, [this] { open_base(); });
    auto* words = new wxBoxSizer(wxVERTICAL);
    words->Add(far_, wxSizerFlags().Expand());
    words->Add(progress_, wxSizerFlags().Expand().Border(wxTOP, FromDIP(gap::hair)));
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(words, wxSizerFlags(1).CenterVertical());
    row->Add(stop_, wxSizerFlags().CenterVertical().Border(wxLEFT, FromDIP(gap::normal)));
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(row, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::small)));
    column->Add(schedule_, wxSizerFlags(1).Expand());
    pane->SetSizer(column);
    return pane;
}

wxNotebook* ProjectFrame::book(wxWindow* parent) {
    book_ = new wxNotebook(parent, wxID_ANY);
    book_->SetName("project-pages");
    checks_ = new LineChecks(book_, session_, [this] { return locale(); });
    fields_ = new FieldsPanel(book_, project_fields_source(session_, [this] { return locale(); }));
    // The toolkit complains of scroll bars in pages that have not had a size yet.
    for (wxWindow* page : std::initializer_list<wxWindow*>{checks_, fields_}) {
        page->SetSize(FromDIP(wxSize(520, 300)));
        page->Layout();
    }
    book_->AddPage(checks_, _("Guard line"));
    book_->AddPage(fields_, _("Properties"));
    return book_;
}

Held ProjectFrame::held() {
    Held held;
    held.changed = [this] { return session_.history().changed(); };
    held.name = [this] { return session_.project().name; };
    held.commit = [this] { return fields_->commit(); };
    held.write = [this](const std::filesystem::path& to) { return editing::save_project(to, session_.project()); };
    held.mark_saved = [this] { session_.mark_saved(); };
    held.read_again = [this](const std::filesystem::path& from) {
        editing::OpenedProject opened = editing::open_project(from);
        if (opened.project) {
            session_.replace(std::move(*opened.project));
            return wxString();
        }
        return opened.problems.empty() ? shown_path(from) : text_of(model::sentence(opened.problems.front()));
    };
    held.keep_copy = [this](const std::filesystem::path& folder, int number, const std::filesystem::path& of) {
        return editing::keep_copy(folder, number, of, session_.project());
    };
    held.refresh = [this] { refresh(); };
    held.say = [this](format::Phrase words) { session_.say(std::move(words)); };
    held.not_saved = _("The project was not saved.");
    held.not_read = _("The file cannot be read. The project is unchanged.");
    held.unnamed = "project";
    return held;
}

format::Locale ProjectFrame::locale() const { return application_.locale(); }

void ProjectFrame::apply_preferences() {
    const Theme theme = application_.theme();
    for (wxWindow* surface : std::initializer_list<wxWindow*>{this, board_, book_, schedule_->GetParent(), far_})
        window::apply_theme(*surface, theme);
    far_->SetFont(lettering(points::small));
    schedule_->apply_theme(theme);
    line_->apply_theme(theme);
    checks_->apply_theme(theme);
    fields_->apply_theme(theme);
    progress_->apply_theme(theme);
    verdict_->apply_theme(theme);
    session_.show_in(application_.preferences().system);
    refresh_results();
    refresh();
    Refresh();
}

void ProjectFrame::on_change(Change change) {
    if (!built_) return;
    if (change == Change::project || change == Change::file) file_->copy_soon();
    if (change == Change::selection) {
        schedule_->refresh_selection();
        line_->refresh_selection();
        checks_->refresh();
    } else {
        refresh_results_soon();
    }
    if (change != Change::results) fields_->update_soon();
    refresh();
    SetStatusText(text_of(session_.message(), locale()));
}

/// Many posts may be done between two paintings.
void ProjectFrame::refresh_results_soon() {
    if (std::exchange(results_wait_, true)) return;
    CallAfter([this] {
        results_wait_ = false;
        refresh_results();
    });
}

void ProjectFrame::refresh_results() {
    schedule_->refresh();
    line_->refresh();
    checks_->refresh();
    verdict_->refresh();
    const bool running = session_.state() == session::ProjectSession::State::running;
    far_->SetLabel(text_of(session::progress_words(session_), locale()));
    progress_->show(session::progress_share(session_));
    stop_->SetLabel(running ? _("&Stop") : _("&Review again"));
}

void ProjectFrame::refresh() {
    const wxString name = text_of(session_.project().name);
    const wxString shown = file().empty() ? _("not saved yet") : shown_path(file().filename());
    const wxString title = (unsaved() ? "*" : "") + name + text_of(" – ") + shown + text_of(" – Toehold");
    if (GetTitle() != title) SetTitle(title);
    refresh_project_menu_bar(*GetMenuBar(),
                             {session_, locale(), application_.preferences().ground, !file().empty(), unsaved()});
}

}  // namespace toehold::window
