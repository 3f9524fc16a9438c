#include "window/frame/document_file.h"

#include "window/frame/application.h"
#include "window/text.h"

#include <wx/frame.h>
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

std::string file_name_of(std::string name, const std::string& unnamed) {
    std::replace_if(
        name.begin(), name.end(), [](char letter) { return letter == '/' || letter == ' ' || letter == '\\'; }, '-');
    return name.empty() ? unnamed : name;
}

/// The notice hands its buttons' words to the toolkit as they are, mnemonic and all.
wxString notice_words(wxString words) {
#ifdef __WXGTK__
    words.Replace("&", "_");
#endif
    return words;
}

}  // namespace

DocumentFile::DocumentFile(wxFrame& frame, Application& application, wxInfoBar& notice, int number, Document document,
                           Held held)
    : frame_(frame),
      application_(application),
      notice_(notice),
      number_(number),
      document_(std::move(document)),
      held_(std::move(held)) {
    watch_.Start(watch_ms);
    watch_.Bind(wxEVT_TIMER, [this](wxTimerEvent&) {
        look_for_changes_outside();
        if (++watches_ >= watches_a_copy) keep_copy();
    });
    rest_.Bind(wxEVT_TIMER, [this](wxTimerEvent&) { keep_copy(); });
    notice_.Bind(wxEVT_BUTTON, [this](wxCommandEvent& event) {
        notice_.Dismiss();
        if (event.GetId() == notice_reload) read_again();
    });
}

bool DocumentFile::unsaved() const { return document_.recovered || document_.told || held_.changed(); }

void DocumentFile::take(Document document) {
    document_ = std::move(document);
    notice_.Dismiss();
    told_ = false;
}

void DocumentFile::copy_soon() { rest_.StartOnce(rest_ms); }

void DocumentFile::end() {
    editing::drop_copy(application_.recovery_folder(), number_);
    watch_.Stop();
    rest_.Stop();
}

void DocumentFile::keep_copy() {
    watches_ = 0;
    if (unsaved()) {
        copied_ = held_.keep_copy(application_.recovery_folder(), number_, document_.file);
        if (!copied_) held_.say(said(_("No recovery copy could be saved. Save often.")));
    } else if (copied_) {
        editing::drop_copy(application_.recovery_folder(), number_);
        copied_ = false;
    }
}

bool DocumentFile::save() { return document_.file.empty() ? save_as() : save_to(document_.file); }

fs::path DocumentFile::suggested_file() const {
    if (!document_.file.empty()) return document_.file;
    std::error_code error;
    return fs::current_path(error) / (file_name_of(held_.name(), held_.unnamed) + ".xml");
}

bool DocumentFile::save_as() {
    const std::optional<fs::path> file = application_.prompts.file_to_save(&frame_, suggested_file());
    if (!file) return false;
    if (*file != document_.file) document_.stamp = {};
    return save_to(*file);
}

bool DocumentFile::save_to(const fs::path& file) {
    if (!held_.commit()) return false;
    const bool ours = file == document_.file && !document_.stamp.sha256.empty();
    if (ours && editing::changed_outside(file, document_.stamp) &&
        !application_.prompts.confirm(&frame_, _("The file has been changed by another program. Save over it?"),
                                      shown_path(file), _("&Save over it"))) {
        return false;
    }
    const editing::Saved saved = held_.write(file);
    if (!saved.stamp) {
        application_.prompts.tell(&frame_, held_.not_saved, text_of(saved.refusal));
        return false;
    }
    document_ = {file, *saved.stamp};
    held_.mark_saved();
    application_.remember(file);
    notice_.Dismiss();
    told_ = false;
    keep_copy();
    held_.refresh();
    held_.say(said(wxString::Format(_("Saved to %s."), shown_path(file))));
    return true;
}

bool DocumentFile::revert() {
    if (document_.file.empty()) return false;
    if (unsaved() && !application_.prompts.confirm(&frame_, _("Discard all changes since the last save?"),
                                                   shown_path(document_.file), _("&Revert"))) {
        return false;
    }
    read_again();
    return true;
}

void DocumentFile::read_again() {
    const editing::FileStamp stamp = editing::stamp_of(document_.file);
    const wxString why_not = held_.read_again(document_.file);
    if (!why_not.empty()) return application_.prompts.tell(&frame_, held_.not_read, why_not);
    take({document_.file, stamp});
    held_.refresh();
    keep_copy();
}

void DocumentFile::look_for_changes_outside() {
    if (document_.file.empty() || !editing::changed_outside(document_.file, document_.stamp)) return;
    std::error_code error;
    const bool there = fs::exists(document_.file, error);
    const editing::FileStamp now = editing::stamp_of(document_.file);
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

void DocumentFile::tell_of_change(const wxString& words, bool can_reload) {
    for (const int button : {notice_reload, notice_keep}) {
        if (notice_.HasButtonId(button)) notice_.RemoveButton(button);
    }
    if (can_reload) {
        notice_.AddButton(notice_reload, notice_words(_("&Reload")));
        notice_.AddButton(notice_keep, notice_words(_("&Keep mine")));
    }
    notice_.ShowMessage(words, wxICON_WARNING);
}

bool DocumentFile::may_close() {
    if (!held_.commit()) return false;
    if (!unsaved()) return true;
    switch (application_.prompts.unsaved(&frame_, text_of(held_.name()))) {
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
