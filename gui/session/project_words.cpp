#include "session/project_words.h"

#include "review/project_review.h"
#include "wording/line.h"
#include "wording/project.h"

namespace toehold::session {
namespace {

using format::Phrase;
using format::phrase;

Phrase reason_of(const review::ProjectReview& review) {
    const Phrase posts = wording::verdict_counts(review);
    const Phrase of_line = wording::line_reason(review);
    return of_line.empty() ? posts : phrase("{} {}", posts, of_line);
}

/// The place that moves most; of a rail's span or of a post.
const review::LineMovementAt* largest_movement(const review::LineReview& line, model::PartKind kind) {
    const review::LineMovementAt* largest = nullptr;
    for (const review::LineMovementAt& one : line.movements) {
        if (one.part.kind != kind) continue;
        if (largest == nullptr || one.movement.total_in() > largest->movement.total_in()) largest = &one;
    }
    return largest;
}

void add_movement(std::vector<Phrase>& all, const review::LineReview& line) {
    for (const model::PartKind kind : {model::PartKind::post, model::PartKind::rail}) {
        const review::LineMovementAt* const most = largest_movement(line, kind);
        if (most == nullptr) continue;
        const format::Quantity push{line.push_lb, "lb"}, moves{most->movement.total_in(), "in"};
        all.push_back(most->limit_in ? phrase("Movement under {} level, at most {} at {}; limit there {}.", push, moves,
                                              model::part_name(most->part), format::Quantity{*most->limit_in, "in"})
                                     : phrase("Movement under {} level, at most {} at {}; no limit is invoked.", push,
                                              moves, model::part_name(most->part)));
    }
}

}  // namespace

ProjectVerdict project_verdict(const ProjectSession& session) {
    ProjectVerdict told;
    if (session.state() == ProjectSession::State::failed) {
        told.reason = session.problems().empty() ? session.failure()
                                                 : format::verbatim(model::sentence(session.problems().front()));
        return told;
    }
    const review::ProjectReview* const review = session.review();
    if (review == nullptr) {
        told.reason = session.state() == ProjectSession::State::stopped
                          ? phrase("The first review of this project was stopped.")
                          : phrase("The first review of this project is running.");
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

std::vector<Phrase> line_sentences(const review::LineReview& line) {
    std::vector<Phrase> all;
    if (const Phrase reason = wording::line_reason(line); !reason.empty()) all.push_back(reason);
    if (!line.unsolved.empty() && (all.empty() || all.front() != line.unsolved)) all.push_back(line.unsolved);
    add_movement(all, line);
    return all;
}

std::vector<Phrase> resting_sentences(const review::LineReview& line) {
    if (line.rests_on.empty()) return {};
    std::vector<Phrase> all{line.sharing ? phrase("Sharing rests on:") : phrase("Counting on sharing would rest on:")};
    all.insert(all.end(), line.rests_on.begin(), line.rests_on.end());
    return all;
}

}  // namespace toehold::session
