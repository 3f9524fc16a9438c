// The program's windows: opening a file in one of its kind, starting a detail, and unsaved work of an earlier day.
#include "editing/document/project_document.h"
#include "editing/edits.h"
#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/project/project_frame.h"
#include "window/text.h"
#include "xml/document/file.h"

#include <wx/translation.h>

#include <algorithm>
#include <system_error>
#include <utility>

namespace toehold::window {

namespace fs = std::filesystem;

namespace {

wxString sentences(const model::Problems& problems) {
    constexpr std::size_t most = 12;
    wxString text;
    for (std::size_t number = 0; number < problems.size() && number < most; ++number) {
        text += text_of(model::sentence(problems[number])) + "\n";
    }
    if (problems.size() > most) text += wxString::FromUTF8("…");
    return text;
}

}  // namespace

void Application::tell_of_problems(wxWindow* parent, const wxString& headline, const model::Problems& problems) {
    prompts.tell(parent, headline, sentences(problems));
}

DocumentFrame* Application::open(const fs::path& file, DetailFrame* reuse) {
    std::error_code error;
    for (DocumentFrame* frame : windows()) {
        if (!frame->file().empty() && fs::equivalent(frame->file(), file, error)) {
            frame->Raise();
            return frame;
        }
    }
    if (xml::document_kind(file) == xml::DocumentKind::project) return open_project(file);
    return open_detail(file, reuse);
}

ProjectFrame* Application::open_project(const fs::path& file) {
    editing::OpenedProject opened = editing::open_project(file);
    if (!opened.project) {
        tell_of_problems(nullptr, wxString::Format(_("“%s” cannot be opened."), shown_path(file.filename())),
                         opened.problems);
        return nullptr;
    }
    remember(file);
    auto* frame = new ProjectFrame(*this, next_window_++, std::move(*opened.project), {file, opened.stamp});
    frame->Show();
    close_start_window();
    return frame;
}

DetailFrame* Application::open_detail(const fs::path& file, DetailFrame* reuse) {
    editing::Opened opened = editing::open_detail(file, catalog_);
    if (!opened.detail) {
        tell_of_problems(reuse, wxString::Format(_("“%s” cannot be opened."), shown_path(file.filename())),
                         opened.problems);
        return nullptr;
    }
    const bool plates = xml::document_kind(file) == xml::DocumentKind::plates;
    remember(file);
    Document document;
    if (!plates) document = {file, opened.stamp};
    if (reuse != nullptr && reuse->untouched()) {
        reuse->show(*opened.detail, document);
        return reuse;
    }
    auto* frame = new DetailFrame(*this, next_window_++, std::move(*opened.detail), std::move(document));
    frame->Show();
    close_start_window();
    return frame;
}

DetailFrame* Application::open_copy(model::BaseDetail detail, const wxString& words,
                                    std::function<void(DetailFrame&)> put_back) {
    Document document;
    document.copy = true;
    auto* frame = new DetailFrame(*this, next_window_++, std::move(detail), std::move(document));
    frame->Show();
    frame->be_copy(words, std::move(put_back));
    return frame;
}

DetailFrame* Application::start_on(const model::Plate& stock, DetailFrame* reuse) {
    return start(editing::starting_detail(stock, catalog_), reuse);
}

DetailFrame* Application::start_side_post(DetailFrame* reuse) {
    return start(editing::starting_side_detail(catalog_), reuse);
}

DetailFrame* Application::start(model::BaseDetail detail, DetailFrame* reuse) {
    if (reuse != nullptr && reuse->untouched()) {
        reuse->show(std::move(detail), {});
        return reuse;
    }
    auto* frame = new DetailFrame(*this, next_window_++, std::move(detail), {});
    frame->Show();
    close_start_window();
    return frame;
}

DetailFrame* Application::start_on_job(const job::Started& started, bool find_sizes) {
    Document document;
    document.told = true;
    auto* frame = new DetailFrame(*this, next_window_++, started.detail, std::move(document));
    frame->Show();
    frame->begin_from(started, find_sizes);
    close_start_window();
    return frame;
}

void Application::ask_and_open(wxWindow* parent, DetailFrame* reuse) {
    for (const fs::path& file : prompts.files_to_open(parent)) open(file, reuse);
}

DocumentFrame* Application::open_recent(std::size_t number, DetailFrame* reuse) {
    if (number >= recent_.GetCount()) return nullptr;
    const fs::path file = path_of(recent_.GetHistoryFile(number));
    std::error_code error;
    if (fs::exists(file, error)) return open(file, reuse);
    recent_.RemoveFileFromHistory(number);
    keep_recent();
    prompts.tell(reuse, _("The file is no longer there."), shown_path(file));
    return nullptr;
}

void Application::offer_recovery() {
    const std::vector<editing::RecoveryCopy> copies = editing::left_copies(recovery_folder());
    if (copies.empty()) return;
    for (const Recovery& choice : prompts.recover(nullptr, copies)) {
        if (choice.fate == Fate::open && recover(choice.copy) == nullptr) continue;
        if (choice.fate != Fate::keep) editing::drop_copy(choice.copy);
    }
}

DocumentFrame* Application::recover(const editing::RecoveryCopy& copy) {
    if (copy.project) return recover_project(copy);
    editing::Opened opened = editing::open_copy(copy, catalog_);
    if (!opened.detail) {
        tell_of_problems(nullptr, _("The copy cannot be read."), opened.problems);
        return nullptr;
    }
    Document document;
    if (!copy.of.empty()) document = {copy.of, opened.stamp};
    document.recovered = true;
    auto* frame = new DetailFrame(*this, next_window_++, std::move(*opened.detail), std::move(document));
    frame->Show();
    return frame;
}

ProjectFrame* Application::recover_project(const editing::RecoveryCopy& copy) {
    editing::OpenedProject opened = editing::open_project_copy(copy);
    if (!opened.project) {
        tell_of_problems(nullptr, _("The copy cannot be read."), opened.problems);
        return nullptr;
    }
    Document document;
    if (!copy.of.empty()) document = {copy.of, opened.stamp};
    document.recovered = true;
    auto* frame = new ProjectFrame(*this, next_window_++, std::move(*opened.project), std::move(document));
    frame->Show();
    return frame;
}

void Application::see_off(std::unique_ptr<solving::Projects> service) {
    service->stop();
    leaving_.emplace_back([leaves = std::move(service)]() mutable { leaves.reset(); });
}

}  // namespace toehold::window
