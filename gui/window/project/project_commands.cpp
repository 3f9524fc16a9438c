// What the menus of a project's window do, and the base of one of its posts.
#include "editing/project/put_back.h"
#include "review/project_review.h"
#include "window/dialogs/preferences_dialog.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/project/project_frame.h"
#include "window/text.h"
#include "wording/marks.h"

#include <wx/translation.h>

#include <algorithm>

namespace toehold::window {

void ProjectFrame::on_command(wxCommandEvent& event) {
    const int id = event.GetId();
    const bool done = run_in_text(id) || run_file_command(id) || run_project_command(id) ||
                      run_preference_command(id, application_) || run_help_command(id, *this, application_);
    if (!done) event.Skip();
}

bool ProjectFrame::run_file_command(int id) {
    if (id >= wxID_FILE1 && id <= wxID_FILE9) {
        application_.open_recent(static_cast<std::size_t>(id - wxID_FILE1));
        return true;
    }
    switch (id) {
        case command_new:
            application_.show_start_window();
            return true;
        case wxID_OPEN:
            application_.ask_and_open(this);
            return true;
        case wxID_SAVE:
            file_->save();
            return true;
        case wxID_SAVEAS:
            file_->save_as();
            return true;
        case command_revert:
            file_->revert();
            return true;
        case wxID_CLOSE:
            Close();
            return true;
        case wxID_EXIT:
            application_.close_all();
            return true;
        case wxID_PREFERENCES:
            ask_preferences(this, application_);
            return true;
        default:
            return false;
    }
}

bool ProjectFrame::run_project_command(int id) {
    switch (id) {
        case wxID_UNDO:
            session_.undo();
            return true;
        case wxID_REDO:
            session_.redo();
            return true;
        case command_open_base:
            open_base();
            return true;
        case command_review_project:
            session_.begin();
            return true;
        case command_stop_review:
            session_.stop();
            return true;
        default:
            return false;
    }
}

/// As the project's review has it, with the length of rail its lines give the post, but under the whole push: no file
/// of a detail says that neighbors share it.
model::BaseDetail ProjectFrame::base_of(const model::PlacedPost& post) const {
    model::BaseDetail base = model::detail_of(session_.project(), post);
    if (!session_.review_is_current()) return base;
    for (const review::PostReview& one : session_.review()->posts) {
        if (one.post.id != post.id) continue;
        base.guard = one.review.resolved.detail.guard;
        base.loads = one.review.resolved.detail.loads;
        base.loads.sharing.reset();
    }
    return base;
}

void ProjectFrame::open_base() {
    const model::PlacedPost* const post = model::find_post(session_.project(), session_.selected());
    if (post == nullptr) return session_.say(said(_("Select a post first.")));
    model::BaseDetail base = base_of(*post);
    const wxString words = wxString::Format(_("Copy of post %s of “%s”, reviewed alone under the whole push. The "
                                              "project changes only by File, Put into the "
                                              "project."),
                                            text_of(post->id), text_of(session_.project().name));
    const auto put_back = [waiting = std::weak_ptr<ProjectFrame*>(alive_), mark = post->id, base,
                           &application = application_](DetailFrame& frame) {
        if (const auto still = waiting.lock()) return (*still)->put_back(mark, base, frame);
        application.prompts.tell(&frame, _("The project's window is closed."),
                                 _("Open the project and the base of this post again, or save this copy as a file."));
    };
    application_.open_copy(base, words, put_back);
}

void ProjectFrame::put_back(const std::string& post, const model::BaseDetail& before, DetailFrame& base) {
    editing::PutBack made = editing::put_back(session_.project(), post, before, base.session().detail());
    if (!made.project)
        return application_.prompts.tell(&base, _("The project is unchanged."), text_of(made.refusal, locale()));
    const format::Phrase what = made.posts.size() == 1
                                    ? format::phrase("Post {} stands on it. {}", made.posts.front(), made.left_behind)
                                    : format::phrase("Posts {} stand on it, and all of them change. {}",
                                                     wording::marks(made.posts), made.left_behind);
    if (!application_.prompts.confirm(&base, text_of(made.step, locale()) + "?", text_of(what, locale()), _("&Change")))
        return;
    session_.change(made.step, std::move(*made.project));
    session_.select(post);
    Raise();
}

void ProjectFrame::on_close(wxCloseEvent& event) {
    if (event.CanVeto() && !file_->may_close()) {
        event.Veto();
        return;
    }
    file_->end();
    Destroy();
}

}  // namespace toehold::window
