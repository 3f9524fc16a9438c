// What the menus of a project's window do, and the base of one of its posts.
#include "editing/project/put_back.h"
#include "review/project_review.h"
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
    const bool done = run_in_text(id) || run_document_command(id, {*this, application_, *file_}) ||
                      run_project_command(id) || run_preference_command(id, application_) ||
                      run_help_command(id, *this, application_);
    if (!done) event.Skip();
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

/// What the copy's own review may let pass and the project's does not.
std::vector<wxString> ProjectFrame::milder_than_project(const model::BaseDetail& base) const {
    std::vector<wxString> all;
    if (!session_.review_is_current())
        all.push_back(_("The project has not been reviewed as it stands: the length of rail is the file's own."));
    const review::ProjectReview* const review = session_.review();
    const auto brings_more = [](const review::PostReview& one) {
        const auto& sharing = one.review.resolved.detail.loads.sharing;
        return sharing && sharing->factor > 1.0;
    };
    if (review != nullptr &&
        std::any_of(review->posts.begin(), review->posts.end(), [&](const review::PostReview& one) {
            return one.post.id == session_.selected() && brings_more(one);
        }))
        all.push_back(_("In the project its rail brings this post more than the whole push."));
    if (base.loads.wind && base.loads.wind->both_axes)
        all.push_back(_("A file of a detail keeps wind along one axis; in the project it blows along both."));
    return all;
}

void ProjectFrame::open_base() {
    const model::PlacedPost* const post = model::find_post(session_.project(), session_.selected());
    if (post == nullptr) return session_.say(said(_("Select a post first.")));
    model::BaseDetail base = base_of(*post);
    wxString words = wxString::Format(_("Copy of post %s of “%s”, reviewed alone under the whole push. The "
                                        "project changes only by File, Put into the "
                                        "project."),
                                      text_of(post->id), text_of(session_.project().name));
    for (const wxString& milder : milder_than_project(base)) words += " " + milder;
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
