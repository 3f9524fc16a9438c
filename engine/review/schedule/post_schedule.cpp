#include "review/schedule/post_schedule.h"

#include <algorithm>
#include <utility>

namespace toehold::review {
namespace {

bool alike(const ScheduleRow& row, const PostReview& post, const Cause& cause) {
    return row.mount == post.post.mount && row.facing == post.post.facing && row.verdict == post.review.verdict &&
           (row.verdict == Verdict::adequate || row.cause.id == cause.id);
}

void take_tension(ScheduleRow& row, const PostReview& post) {
    const std::optional<LargestTension>& tension = post.review.facts.largest_tension;
    if (!tension || (row.tension && row.tension->tension_lb >= tension->tension_lb)) return;
    row.tension = tension;
    row.tension_post = post.post.id;
}

void take_share(ScheduleRow& row, const std::optional<double>& share) {
    if (share) row.share = std::max(share.value(), row.share.value_or(0.0));
}

}  // namespace

std::optional<double> share_of(const ProjectReview& review, const std::string& post) {
    std::optional<double> largest;
    for (const LineReview& line : review.lines) {
        if (!line.rail || !line.unsolved.empty()) continue;
        for (const PostShare& one : line.posts) {
            if (one.post == post) largest = std::max(one.share, largest.value_or(0.0));
        }
    }
    return largest;
}

std::vector<ScheduleRow> post_schedule(const ProjectReview& review) {
    std::vector<ScheduleRow> rows;
    for (std::size_t index = 0; index < review.posts.size(); ++index) {
        const PostReview& post = review.posts[index];
        Cause cause = cause_of(post.review);
        auto row =
            std::find_if(rows.begin(), rows.end(), [&](const ScheduleRow& one) { return alike(one, post, cause); });
        if (row == rows.end()) {
            row = rows.insert(rows.end(), ScheduleRow{});
            row->mount = post.post.mount;
            row->facing = post.post.facing;
            row->verdict = post.review.verdict;
            row->worst = index;
            row->cause = cause;
        }
        row->posts.push_back(index);
        row->marks.push_back(post.post.id);
        if (cause.ratio.value_or(0.0) > row->cause.ratio.value_or(0.0)) {
            row->worst = index;
            row->cause = std::move(cause);
        }
        take_tension(*row, post);
        take_share(*row, share_of(review, post.post.id));
    }
    return rows;
}

}  // namespace toehold::review
