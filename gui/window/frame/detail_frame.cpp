#include "window/frame/detail_frame.h"

#include "window/delivery.h"
#include "window/dialogs/file_drop.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/menus.h"
#include "window/panels/fields/fields_panel.h"
#include "window/sheet/canvas.h"
#include "window/text.h"

#include <wx/display.h>
#include <wx/infobar.h>
#include <wx/translation.h>

#include <utility>

namespace toehold::window {

namespace {

wxFrame& prepared(wxFrame& frame, const Preferences& preferences) {
    frame.SetName("detail");
    give_icon(frame);
    wxSize size = frame.FromDIP(wxSize(preferences.width, preferences.height));
    size.DecTo(wxDisplay(&frame).GetClientArea().GetSize());
    frame.SetSize(size);
    frame.CreateStatusBar();
    return frame;
}

}  // namespace

DetailFrame::DetailFrame(Application& application, int number, model::BaseDetail detail, Document document)
    : DocumentFrame(nullptr, wxID_ANY, "Toehold"),
      application_(application),
      alive_(std::make_shared<DetailFrame*>(this)),
      solver_(application.catalog(),
              delivery<solving::Result>(
                  alive_, [](DetailFrame& frame, const auto& result) { frame.session().receive(result); })),
      session_(
          application.catalog(), std::move(detail),
          [this](solving::Request request) { solver_.submit(std::move(request)); }, application.locale().catalogue),
      recent_(give_menu_bar(*this)),
      panes_(prepared(*this, application.preferences()), session_, application.preferences().layout,
             [this] { refresh_menus(); }),
      file_(*this, application, panes_.notice(), number, std::move(document), held()) {
    application_.recent().UseMenu(recent_);
    application_.recent().AddFilesToMenu(recent_);
    const wxAcceleratorEntry more_keys[] = {{wxACCEL_CTRL, 'Y', wxID_REDO}, {wxACCEL_CTRL, '=', wxID_ZOOM_IN}};
    SetAcceleratorTable(wxAcceleratorTable(static_cast<int>(std::size(more_keys)), more_keys));
    SetDropTarget(new FileDrop(*this, [this](const auto& file) { application_.open(file, this); }));
    listener_ = session_.listen([this](session::Change change) { on_change(change); });
    Bind(wxEVT_MENU, &DetailFrame::on_command, this);
    Bind(wxEVT_CLOSE_WINDOW, &DetailFrame::on_close, this);
    Bind(wxEVT_ACTIVATE, [this](wxActivateEvent& event) {
        if (event.GetActive()) file_.look_for_changes_outside();
        event.Skip();
    });
    apply_preferences();
    refresh_title();
    sheet().SetFocus();
}

DetailFrame::~DetailFrame() {
    alive_.reset();
    application_.recent().RemoveMenu(recent_);
    session_.stop_listening(listener_);
    panes_.end();
    // The panes listen to the session, which goes before the toolkit would take them down.
    DestroyChildren();
}

Held DetailFrame::held() {
    Held held;
    held.changed = [this] { return session_.history().changed(); };
    held.name = [this] { return session_.detail().name; };
    held.commit = [this] { return panes_.fields().commit(); };
    held.write = [this](const std::filesystem::path& file) {
        session_.rest();
        return editing::save_detail(file, session_.detail(), started_ ? &*started_ : nullptr);
    };
    held.mark_saved = [this] { session_.mark_saved(); };
    held.read_again = [this](const std::filesystem::path& file) {
        editing::Opened opened = editing::open_detail(file, application_.catalog());
        if (opened.detail) {
            session_.replace(std::move(*opened.detail));
            sheet().fit_all();
            return wxString();
        }
        return opened.problems.empty() ? shown_path(file) : text_of(model::sentence(opened.problems.front()));
    };
    held.keep_copy = [this](const std::filesystem::path& folder, int number, const std::filesystem::path& of) {
        return editing::keep_copy(folder, number, of, session_.detail());
    };
    held.refresh = [this] { refresh(); };
    held.say = [this](format::Phrase words) { session_.say(std::move(words)); };
    held.not_saved = _("The detail was not saved.");
    held.not_read = _("The file cannot be read. The detail is unchanged.");
    held.unnamed = "base-detail";
    return held;
}

void DetailFrame::show(model::BaseDetail detail, Document document) {
    file_.take(std::move(document));
    session_.replace(std::move(detail));
    sheet().fit_all();
    refresh();
}

void DetailFrame::begin_from(const job::Started& started, bool find_sizes) {
    started_ = started;
    panes_.list_assumed(started);
    if (find_sizes) panes_.find_sizes();
    refresh();
}

void DetailFrame::be_copy(const wxString& words, std::function<void(DetailFrame&)> put_back) {
    put_back_ = std::move(put_back);
    panes_.notice().ShowMessage(words, wxICON_INFORMATION);
    refresh_menus();
}

void DetailFrame::put_back() {
    if (put_back_ && panes_.fields().commit()) put_back_(*this);
}

void DetailFrame::apply_preferences() {
    const Preferences& preferences = application_.preferences();
    const Theme theme = application_.theme();
    SetBackgroundColour(theme.paper);
    SetForegroundColour(theme.ink);
    panes_.apply_theme(theme);
    NudgeSteps nudge = customary_nudge(preferences.system);
    nudge.plain = nudge_in(preferences);
    sheet().set_nudge(nudge);
    session::Display display = session_.display();
    display.system = preferences.system;
    session_.show(display);
    refresh_menus();
    Refresh();
}

void DetailFrame::refresh() {
    refresh_title();
    refresh_menus();
}

void DetailFrame::on_change(session::Change change) {
    if (change == session::Change::detail || change == session::Change::file) {
        refresh_title();
        file_.copy_soon();
    }
    if (change == session::Change::display || change == session::Change::detail)
        SetStatusText(text_of(session_.message(), session_.locale()));
    if (change != session::Change::results) refresh_menus();
}

void DetailFrame::on_command(wxCommandEvent& event) {
    if (!run_command(event.GetId(), {*this, application_, session_, panes_, file_})) event.Skip();
}

void DetailFrame::on_close(wxCloseEvent& event) {
    if (event.CanVeto() && !file_.may_close()) {
        event.Veto();
        return;
    }
    const wxSize size = ToDIP(GetSize());
    application_.remember_layout(panes_.layout(), size.GetWidth(), size.GetHeight());
    file_.end();
    Destroy();
}

void DetailFrame::refresh_title() {
    const wxString name = text_of(session_.detail().name);
    wxString file = file_.path().empty() ? _("not saved yet") : shown_path(file_.path().filename());
    if (file_.is_copy()) file = _("copy, not saved yet");
    const wxString title = (unsaved() ? "*" : "") + name + text_of(" – ") + file + text_of(" – Toehold");
    if (GetTitle() != title) SetTitle(title);
}

void DetailFrame::refresh_menus() {
    refresh_menu_bar(*GetMenuBar(), {session_, application_.preferences().ground, !file_.path().empty(), unsaved(),
                                     panes_.fields_shown(), panes_.review_shown(), static_cast<bool>(put_back_)});
}

}  // namespace toehold::window
