#include "session/project_words.h"

#include "model/line_geometry.h"
#include "review/project_review.h"
#include "wording/line.h"

#include <algorithm>

namespace toehold::session {
namespace {

using format::Phrase;
using format::phrase;

Phrase counted(const model::RoleCount& count) {
    const bool one = count.posts == 1;
    switch (count.role) {
        case model::PostRole::line:
            return one ? phrase("1 line post") : phrase("{} line posts", count.posts);
        case model::PostRole::corner:
            return one ? phrase("1 corner") : phrase("{} corners", count.posts);
        case model::PostRole::end:
            return one ? phrase("1 end") : phrase("{} ends", count.posts);
        case model::PostRole::lone:
            break;
    }
    return one ? phrase("1 post in no guard line") : phrase("{} posts in no guard line", count.posts);
}

std::size_t count(const review::ProjectReview& review, review::Verdict verdict) {
    return static_cast<std::size_t>(
        std::count_if(review.posts.begin(), review.posts.end(),
                      [verdict](const review::PostReview& one) { return one.review.verdict == verdict; }));
}

Phrase reason_of(const review::ProjectReview& review) {
    using review::Verdict;
    const Phrase posts = phrase("{} posts: {} adequate, {} inadequate, {} incomplete.", review.posts.size(),
                                count(review, Verdict::adequate), count(review, Verdict::inadequate),
                                count(review, Verdict::incomplete));
    const Phrase of_line = wording::line_reason(review);
    return of_line.empty() ? posts : phrase("{} {}", posts, of_line);
}

}  // namespace

Phrase post_totals(const model::Project& project) {
    format::Listed all;
    for (const model::RoleCount& one : model::count_roles(project)) all.items.push_back(counted(one));
    return phrase("{}", std::move(all));
}

ProjectVerdict project_verdict(const ProjectSession& session) {
    ProjectVerdict told;
    if (session.state() == ProjectSession::State::failed) {
        told.reason = session.problems().empty() ? session.failure()
                                                 : format::verbatim(model::sentence(session.problems().front()));
        return told;
    }
    const review::ProjectReview* const review = session.review();
    if (review == nullptr) {
        told.reason = phrase("The first review of this project is running.");
        return told;
    }
    told.verdict = review->verdict;
    told.reason = reason_of(*review);
    told.stale = !session.review_is_current();
    return told;
}

Phrase progress_words(const ProjectSession& session) {
    const solving::ProjectNews& far = session.progress();
    switch (session.state()) {
        case ProjectSession::State::running:
            if (far.forces == 0) return phrase("Solving the guard lines");
            return far.forces < far.posts ? phrase("Forces: {} of {} posts", far.forces, far.posts)
                                          : phrase("Checks: {} of {} posts", far.checks, far.posts);
        case ProjectSession::State::stopped:
            return phrase("Stopped: {} of {} posts reviewed", far.checks, far.posts);
        case ProjectSession::State::done:
            return phrase("up to date");
        case ProjectSession::State::failed:
            break;
    }
    return {};
}

double progress_share(const ProjectSession& session) {
    const solving::ProjectNews& far = session.progress();
    if (session.state() == ProjectSession::State::done) return 1.0;
    if (far.posts == 0) return 0.0;
    // Solving the lines takes about as long as the forces on the posts do.
    const double lines = far.forces > 0 ? 1.0 : 0.0, posts = static_cast<double>(far.posts);
    return (lines + static_cast<double>(far.forces) / posts + static_cast<double>(far.checks) / posts) / 3.0;
}

}  // namespace toehold::session
