#include "window/frame/detail_file.h"

#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/frame/panes.h"
#include "window/panels/fields/fields_panel.h"
#include "window/text.h"

#include <wx/infobar.h>
#include <wx/translation.h>

#include <algorithm>
#include <string>
#include <system_error>
#include <utility>

namespace toehold::window {

namespace fs = std::filesystem;

namespace {

constexpr int watch_ms = 3000;
constexpr int rest_ms = 2000;
constexpr int watches_a_copy = 7;  // about 20 seconds
constexpr int notice_reload = wxID_HIGHEST + 80, notice_keep = wxID_HIGHEST + 81;

std::string file_name_of(std::string name) {
    std::replace_if(
        name.begin(), name.end(), [](char letter) { return letter == '/' || letter == ' ' || letter == '\\'; }, '-');
    return name.empty() ? "base-detail" : name;
}

/// The notice hands its buttons' words to the toolkit as they are, mnemonic and all.
wxString notice_words(wxString words) {
#ifdef __WXGTK__
    words.Replace("&", "_");
#endif
    return words;
}

}  // namespace

DetailFile::DetailFile(DetailFrame& frame, Application& application, session::Session& session, Panes& panes,
                       int number, Document document)
    : frame_(frame),
      application_(application),
      session_(session),
      panes_(panes),
      number_(number),
      document_(std::move(document)) {
    watch_.Start(watch_ms);
    watch_.Bind(wxEVT_TIMER, [this](wxTimerEvent&) {
        look_for_changes_outside();
        if (++watches_ >= watches_a_copy) keep_copy();
    });
    rest_.Bind(wxEVT_TIMER, [this](wxTimerEvent&) { keep_copy(); });
    panes_.notice().Bind(wxEVT_BUTTON, [this](wxCommandEvent& event) {
        panes_.notice().Dismiss();
        if (event.GetId() == notice_reload) read_again();
    });
}

bool DetailFile::unsaved() const { return document_.recovered || document_.told || session_.history().changed(); }

void DetailFile::take(Document document) {
    document_ = std::move(document);
    panes_.notice().Dismiss();
    told_ = false;
}

void DetailFile::copy_soon() { rest_.StartOnce(rest_ms); }

void DetailFile::end() {
    editing::drop_copy(application_.recovery_folder(), number_);
    watch_.Stop();
    rest_.Stop();
}

void DetailFile::keep_copy() {
    watches_ = 0;
    if (unsaved()) {
        copied_ = editing::keep_copy(application_.recovery_folder(), number_, document_.file, session_.detail());
        if (!copied_) session_.say(said(_("No recovery copy could be saved. Save often.")));
    } else if (copied_) {
        editing::drop_copy(application_.recovery_folder(), number_);
        copied_ = false;
    }
}

bool DetailFile::save() { return document_.file.empty() ? save_as() : save_to(document_.file); }

fs::path DetailFile::suggested_file() const {
    if (!document_.file.empty()) return document_.file;
    std::error_code error;
    return fs::current_path(error) / (file_name_of(session_.detail().name) + ".xml");
}

bool DetailFile::save_as() {
    const std::optional<fs::path> file = application_.prompts.file_to_save(&frame_, suggested_file());
    if (!file) return false;
    if (*file != document_.file) document_.stamp = {};
    return save_to(*file);
}

bool DetailFile::save_to(const fs::path& file) {
    if (!panes_.fields().commit()) return false;
    const bool ours = file == document_.file && !document_.stamp.sha256.empty();
    if (ours && editing::changed_outside(file, document_.stamp) &&
        !application_.prompts.confirm(&frame_, _("The file has been changed by another program. Save over it?"),
                                      shown_path(file), _("&Save over it"))) {
        return false;
    }
    session_.rest();
    const editing::Saved saved = editing::save_detail(file, session_.detail(), started_ ? &*started_ : nullptr);
    if (!saved.stamp) {
        application_.prompts.tell(&frame_, _("The detail was not saved."), text_of(saved.refusal));
        return false;
    }
    document_ = {file, *saved.stamp};
    session_.mark_saved();
    application_.remember(file);
    panes_.notice().Dismiss();
    told_ = false;
    keep_copy();
    frame_.refresh();
    session_.say(said(wxString::Format(_("Saved to %s."), shown_path(file))));
    return true;
}

bool DetailFile::revert() {
    if (document_.file.empty()) return false;
    if (unsaved() && !application_.prompts.confirm(&frame_, _("Discard all changes since the last save?"),
                                                   shown_path(document_.file), _("&Revert"))) {
        return false;
    }
    read_again();
    return true;
}

void DetailFile::read_again() {
    editing::Opened opened = editing::open_detail(document_.file, application_.catalog());
    if (!opened.detail) {
        const wxString why = opened.problems.empty() ? wxString() : text_of(model::sentence(opened.problems.front()));
        application_.prompts.tell(&frame_, _("The file cannot be read. The detail is unchanged."), why);
        return;
    }
    frame_.show(std::move(*opened.detail), {document_.file, opened.stamp});
    keep_copy();
}

void DetailFile::look_for_changes_outside() {
    if (document_.file.empty() || !editing::changed_outside(document_.file, document_.stamp)) return;
    std::error_code error;
    const bool there = fs::exists(document_.file, error);
    const editing::FileStamp now =
        there ? editing::open_detail(document_.file, application_.catalog()).stamp : editing::FileStamp();
    if (told_ && now == told_of_) return;
    told_ = true;
    told_of_ = now;
    if (!there) {
        tell_of_change(_("The file has been moved or deleted. Saving will create it again."), false);
    } else if (unsaved()) {
        tell_of_change(_("Another program has changed the file. Reloading it discards your changes here."), true);
    } else {
        tell_of_change(_("Another program has changed the file."), true);
    }
}

void DetailFile::tell_of_change(const wxString& words, bool can_reload) {
    for (const int button : {notice_reload, notice_keep}) {
        if (panes_.notice().HasButtonId(button)) panes_.notice().RemoveButton(button);
    }
    if (can_reload) {
        panes_.notice().AddButton(notice_reload, notice_words(_("&Reload")));
        panes_.notice().AddButton(notice_keep, notice_words(_("&Keep mine")));
    }
    panes_.notice().ShowMessage(words, wxICON_WARNING);
}

bool DetailFile::may_close() {
    if (!panes_.fields().commit()) return false;
    if (!unsaved()) return true;
    switch (application_.prompts.unsaved(&frame_, text_of(session_.detail().name))) {
        case Unsaved::save:
            return save();
        case Unsaved::discard:
            return true;
        case Unsaved::cancel:
            return false;
    }
    return false;
}

}  // namespace toehold::window
