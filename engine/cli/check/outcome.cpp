#include "cli/check/outcome.h"

#include "cli/resolve_project.h"
#include "cli/review_file.h"
#include "search/remedies/remedies.h"
#include "wording/status.h"

#include <algorithm>
#include <utility>

namespace toehold::cli {
namespace {

using format::phrase;

Outcome unusable(Outcome outcome, model::Problems problems) {
    outcome.status = ExitStatus::unusable_input;
    outcome.row.trouble = problems.empty() ? format::Phrase() : problems.front().message;
    outcome.problems = std::move(problems);
    return outcome;
}

/// Where a rail makes the project's verdict, and no post does.
Headline headline_of_rail(const review::ProjectReview& review) {
    Headline headline;
    headline.verdict = review.verdict;
    const review::LineReview* const line = review::line_with(review.lines, review.verdict);
    if (line == nullptr) return headline;
    headline.cause = review::cause_of(*line);
    headline.ratio = headline.cause.ratio;
    headline.words = line->cause ? wording::result(headline.cause.title, headline.cause.part) : line->unsolved;
    return headline;
}

/// A project's row is its worst post's, or its rail's.
Headline headline_of(const review::ProjectReview& review) {
    const auto worst = std::find_if(review.posts.begin(), review.posts.end(), [&review](const review::PostReview& one) {
        return one.review.verdict == review.verdict;
    });
    Headline headline = worst == review.posts.end() ? headline_of_rail(review) : cli::headline(worst->review);
    headline.detail = review.project;
    return headline;
}

Outcome try_project(const std::string& file, const catalog::Catalog& catalog, const Form& form) {
    Outcome outcome;
    outcome.row.file = name_of(file);
    ResolvedProject input = resolve_project(file, catalog);
    if (!input.project) return unusable(std::move(outcome), std::move(input.problems));
    const review::ProjectReview review =
        review::review_project(*input.project, input.posts, input.sha256, input.lines, form.whole);
    outcome.text = form.project_text(file, review);
    outcome.row.headline = headline_of(review);
    if (review.verdict != review::Verdict::adequate) outcome.status = ExitStatus::not_adequate;
    return outcome;
}

/// Throws what `review` throws.
Outcome try_review(const std::string& file, const catalog::Catalog& catalog, const Form& form, demand::Kept& kept) {
    Outcome outcome;
    outcome.row.file = name_of(file);
    ResolvedFile input = resolve_file(file, catalog);
    if (!input.resolved) return unusable(std::move(outcome), std::move(input.problems));
    review::Review review = form.whole ? review::review(*input.resolved, input.sha256, &kept)
                                       : review::evaluate(*input.resolved, input.sha256, &kept);
    if (form.whole) review.remedies = search::find_remedies(review, catalog, {}, &kept);
    outcome.text = form.text(file, review);
    outcome.row.headline = headline(review);
    if (review.verdict != review::Verdict::adequate) outcome.status = ExitStatus::not_adequate;
    return outcome;
}

}  // namespace

Outcome outcome_of(const std::string& file, const catalog::Catalog& catalog, const Form& form, demand::Kept& kept) {
    try {
        return is_project(file) ? try_project(file, catalog, form) : try_review(file, catalog, form, kept);
    } catch (const std::exception& error) {
        Outcome outcome;
        outcome.row = {name_of(file), std::nullopt, phrase("program fault")};
        outcome.fault = error.what();
        outcome.status = ExitStatus::internal_fault;
        return outcome;
    }
}

Outcome not_begun(const std::string& file) {
    Outcome outcome;
    outcome.row = {name_of(file), std::nullopt, phrase("not reviewed: stopped before"), false};
    outcome.status = ExitStatus::stopped;
    return outcome;
}

}  // namespace toehold::cli
