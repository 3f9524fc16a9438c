#include "wording/line.h"

#include "format/figures.h"
#include "review/project_review.h"
#include "wording/status.h"

#include <cmath>

namespace toehold::wording {
namespace {

using format::Phrase;
using format::phrase;
using format::Quantity;

Phrase end_name(const std::string& post) { return post.empty() ? phrase("the wall") : format::verbatim(post); }

Phrase place_alone(const review::PushPlace& place) {
    constexpr double at_the_end = 0.02, at_the_middle = 0.02;
    const double share = place.span_in > 0.0 ? place.along_in / place.span_in : 0.0;
    if (share <= at_the_end) return phrase("at {}", end_name(place.from));
    if (share >= 1.0 - at_the_end) return phrase("at {}", end_name(place.to));
    if (std::abs(share - 0.5) <= at_the_middle)
        return phrase("middle of {} to {}", end_name(place.from), end_name(place.to));
    return phrase("{} from {} toward {}", Quantity{std::round(place.along_in), "in"}, end_name(place.from),
                  end_name(place.to));
}

/// `Rail bending, rail P1-P2: 1.34`
Phrase named_cause(const review::CheckFact& cause) {
    return phrase("{}: {}", result(cause.title, cause.part), ratio(cause.status, cause.ratio));
}

Phrase failing(const review::LineReview& line) {
    if (line.sharing)
        return phrase(
            "Guard line {} counts on its rail to share the push, and the rail cannot carry it. The first "
            "cause: {}.",
            line.id, named_cause(*line.cause));
    return phrase("The rail of guard line {} cannot carry the push on it. The first cause: {}.", line.id,
                  named_cause(*line.cause));
}

Phrase incomplete(const review::LineReview& line) {
    if (!line.cause && !line.sharing)
        return phrase("Guard line {}: what a push does along its rail is not known. {}", line.id, line.unsolved);
    if (!line.cause)
        return phrase("Guard line {} counts on its rail to share the push, and how it is shared is not known. {}",
                      line.id, line.unsolved);
    const Phrase what = result(line.cause->title, line.cause->part);
    if (line.sharing)
        return phrase("Guard line {} counts on its rail to share the push. Not specified: {}. {}", line.id, what,
                      line.cause->note);
    return phrase("Guard line {}. Not specified: {}. {}", line.id, what, line.cause->note);
}

Phrase counted(const model::RoleCount& count) {
    const std::size_t posts = count.posts;
    switch (count.role) {
        case model::PostRole::line:
            return posts == 1 ? phrase("1 line post") : phrase("{} line posts", posts);
        case model::PostRole::corner:
            return posts == 1 ? phrase("1 corner") : phrase("{} corners", posts);
        case model::PostRole::end:
            return posts == 1 ? phrase("1 end") : phrase("{} ends", posts);
        case model::PostRole::lone:
            break;
    }
    return posts == 1 ? phrase("1 post in no line") : phrase("{} posts in no line", posts);
}

}  // namespace

Phrase role_counts(const std::vector<model::RoleCount>& counts) {
    Phrase all;
    for (const model::RoleCount& count : counts)
        all = all.empty() ? counted(count) : phrase("{}, {}", std::move(all), counted(count));
    return all;
}

Phrase role(model::PostRole role) {
    switch (role) {
        case model::PostRole::line:
            return phrase("line");
        case model::PostRole::corner:
            return phrase("corner");
        case model::PostRole::end:
            return phrase("end");
        case model::PostRole::lone:
            break;
    }
    return phrase("lone");
}

Phrase push_place(const review::PushPlace& place) {
    return phrase("{}, toward {}\u00b0", place_alone(place),
                  format::degrees_text(std::round(format::degrees(place.direction_rad))));
}

Phrase line_title(const review::LineReview& line) {
    if (!line.rail) return phrase("Guard line {}: rail not described", line.id);
    if (line.sharing)
        return line.continuous ? phrase("Guard line {}: continuous rail, sharing counted", line.id)
                               : phrase("Guard line {}: rail jointed at its posts, sharing counted", line.id);
    return line.continuous ? phrase("Guard line {}: continuous rail, sharing not counted", line.id)
                           : phrase("Guard line {}: rail jointed at its posts, sharing not counted", line.id);
}

Phrase line_proof(const review::LineReview& line) {
    if (!line.proof) return {};
    return phrase(
        "Proof: {} frames of rail and posts solved, in equilibrium to {}; a solve above 10^-7 would stop the "
        "review.",
        line.proof->frames, Quantity{line.proof->residual, ""});
}

Phrase line_reason(const review::LineReview& line) {
    if (line.verdict == review::Verdict::adequate) return {};
    return line.verdict == review::Verdict::inadequate ? failing(line) : incomplete(line);
}

Phrase line_reason(const review::ProjectReview& review) {
    if (review.verdict == review::Verdict::adequate) return {};
    const review::LineReview* const line = review::line_with(review.lines, review.verdict);
    return line == nullptr ? Phrase() : line_reason(*line);
}

}  // namespace toehold::wording
