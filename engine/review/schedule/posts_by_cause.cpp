#include "review/schedule/posts_by_cause.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace toehold::review {
namespace {

void add_post(std::vector<PostsOfCause>& all, const ProjectReview& review, std::size_t index) {
    const PostReview& post = review.posts[index];
    Cause cause = cause_of(post.review);
    auto group = std::find_if(all.begin(), all.end(), [&](const PostsOfCause& one) {
        return one.verdict == post.review.verdict && one.cause.id == cause.id;
    });
    if (group == all.end()) group = all.insert(all.end(), {post.review.verdict, cause, index, {}, {}});
    group->posts.push_back(index);
    group->marks.push_back(post.post.id);
    if (cause.ratio.value_or(0.0) <= group->cause.ratio.value_or(0.0)) return;
    group->worst = index;
    group->cause = std::move(cause);
}

}  // namespace

std::vector<PostsOfCause> posts_by_cause(const ProjectReview& review) {
    std::vector<PostsOfCause> all;
    for (std::size_t index = 0; index < review.posts.size(); ++index) {
        if (review.posts[index].review.verdict != Verdict::adequate) add_post(all, review, index);
    }
    std::stable_sort(all.begin(), all.end(), [](const PostsOfCause& one, const PostsOfCause& other) {
        return std::make_tuple(gravity(other.verdict), other.posts.size(), format::english(one.cause.title)) <
               std::make_tuple(gravity(one.verdict), one.posts.size(), format::english(other.cause.title));
    });
    return all;
}

}  // namespace toehold::review
