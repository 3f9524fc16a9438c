#include "export/csv/posts_csv.h"

#include "export/csv/cells.h"
#include "export/json/keys.h"
#include "review/schedule/marks.h"
#include "review/schedule/post_schedule.h"

#include <utility>

namespace toehold::exporting {
namespace {

using Cells = std::vector<std::string>;

/// Verdict, first cause, largest tension, share and role.
Cells judged(const review::Review& review, const std::optional<double>& share = std::nullopt,
             const std::string& role = {}) {
    const review::Cause cause = review::cause_of(review);
    const std::optional<review::LargestTension>& tension = review.facts.largest_tension;
    return {std::string(key(review.verdict)),
            csv_cell(cause.id),
            csv_cell(format::english(cause.title)),
            csv_cell(model::key(cause.part)),
            csv_number(cause.ratio),
            tension ? csv_number(tension->tension_lb) : std::string(),
            tension ? csv_cell(model::key(tension->part)) : std::string(),
            csv_number(share),
            role};
}

std::string role_of(const review::ProjectReview& review, const std::string& post) {
    for (const review::LineReview& line : review.lines) {
        for (const review::PostShare& one : line.posts) {
            if (one.post == post) return std::string(model::word(one.role));
        }
    }
    return std::string(model::word(model::PostRole::lone));
}

std::string line(Cells first, Cells second) {
    first.insert(first.end(), std::make_move_iterator(second.begin()), std::make_move_iterator(second.end()));
    return csv_line(first);
}

}  // namespace

std::string posts_csv_heading() {
    return csv_line({"file", "project", "mark", "x (in)", "y (in)", "faces", "mount", "marks alike", "quantity alike",
                     "verdict", "first cause", "title", "subject", "demand over capacity", "largest tension (lb)", "on",
                     "share of push", "role"});
}

std::string posts_csv_rows(const std::string& file, const review::ProjectReview& review) {
    std::vector<std::string> lines(review.posts.size());
    for (const review::ScheduleRow& row : review::post_schedule(review)) {
        for (const std::size_t index : row.posts) {
            const review::PostReview& one = review.posts[index];
            lines[index] =
                line({csv_cell(file), csv_cell(review.project), csv_cell(one.post.id), csv_number(one.post.at.x_in),
                      csv_number(one.post.at.y_in), csv_cell(std::string(model::word(one.post.facing))),
                      csv_cell(one.post.mount), csv_cell(review::joined_marks(row.marks, " to ")),
                      std::to_string(row.posts.size())},
                     judged(one.review, review::share_of(review, one.post.id), role_of(review, one.post.id)));
        }
    }
    std::string text;
    for (const std::string& one : lines) text += one;
    return text;
}

std::string posts_csv_row(const std::string& file, const review::Review& review) {
    return line({csv_cell(file), csv_cell(review.detail), "", "", "", "", "", "", "1"}, judged(review));
}

}  // namespace toehold::exporting
