#include "review/line/project_words.h"

#include "model/line_geometry.h"
#include "review/line/solve_line.h"

#include <algorithm>
#include <utility>

namespace toehold::review {
namespace {

using format::Citation;
using format::phrase;

bool face_different_ways(const std::vector<PostReview>& posts) {
    return std::any_of(posts.begin(), posts.end(),
                       [&](const PostReview& one) { return one.post.facing != posts.front().post.facing; });
}

std::vector<format::Phrase> assumptions_of(const ProjectReview& review) {
    if (review.posts.size() < 2) return {};
    if (review.shared.empty())
        return {phrase("No two posts load the same framing member: each is reviewed by itself.")};
    std::vector<format::Phrase> all;
    if (review.pushes_together) {
        all.push_back(phrase(
            "A load along the rail, or wind, acts on all posts at once, in one direction: framing that posts share is "
            "checked "
            "for the load on the post alone, on all posts, and on those posts that make each force larger. Along a "
            "member the largest forces of each post are added even where they stand apart, which is conservative."));
    }
    if (review.pushes_together && face_different_ways(review.posts)) {
        all.push_back(
            phrase("Posts that face different ways are taken as pushed the same way in plan, and as pushed the "
                   "same way as each faces; the worse counts."));
    }
    const std::string clause = model::clause(model::building_code(review.posts.front().review.resolved.detail.basis),
                                             model::Provision::concentrated_guard_load);
    all.push_back(
        phrase("The concentrated load stands at one post at a time, so that loads of other posts are not added to it "
               "({}). A load stated by the user is taken as one post's own.",
               Citation{clause}));
    if (std::any_of(review.lines.begin(), review.lines.end(), [](const LineReview& line) { return line.sharing; }))
        all.push_back(phrase(
            "Where a rail shares the concentrated load, what it keeps from a post stands on one of the two beside "
            "it at the same time: framing that both load is checked for that too."));
    all.push_back(phrase("Anchor tension, bearing and movement of the guard's top count the post's own loads alone."));
    return all;
}

/// Which posts are pushed from more sides than the file says.
std::vector<format::Phrase> assumptions_of_directions(const model::Project& project) {
    std::string askew;
    for (const model::PlacedPost& post : project.posts) {
        if (!model::faces_its_rails(project, post)) askew += (askew.empty() ? "" : ", ") + post.id;
    }
    std::vector<format::Phrase> all;
    if (askew.empty()) return all;
    if (project.loads.directions != model::Directions::all_round)
        all.push_back(
            phrase("The file's loads push from fewer sides than all. Where a post's rails do not run square to it, "
                   "it is pushed from every side, and so square to each of its rails: {}.",
                   format::verbatim(askew)));
    if (project.loads.wind)
        all.push_back(
            phrase("Wind on the infill is taken on these posts along the way each faces alone, with all of its infill, "
                   "though their rails do not run square to them; wind the other way is not checked: {}.",
                   format::verbatim(askew)));
    return all;
}

/// Which posts take half of the rail beside them since nothing says more, and which are given less than that.
std::vector<format::Phrase> assumptions_of_rail(const model::Project& project) {
    std::string by_spans, given_less;
    for (const model::PlacedPost& post : project.posts) {
        const std::optional<model::RailLength> rail = model::rail_length(project, post);
        const std::optional<double> half_in = model::half_spans_in(project, post.id);
        if (!rail || !half_in) continue;
        const auto add = [&post](std::string& ids) { ids += (ids.empty() ? "" : ", ") + post.id; };
        constexpr double nothing_in = 1e-6;
        if (rail->from == model::RailLength::From::spans) add(by_spans);
        if (rail->from == model::RailLength::From::post && rail->length_in < *half_in - nothing_in) add(given_less);
    }
    std::vector<format::Phrase> all;
    if (!by_spans.empty())
        all.push_back(
            phrase("A load along the rail is taken on half of the spans beside each post where that is more "
                   "than the project's loads say: {}.",
                   format::verbatim(by_spans)));
    if (!given_less.empty())
        all.push_back(phrase("The length of rail given for these posts is less than half of the spans beside them: {}.",
                             format::verbatim(given_less)));
    return all;
}

}  // namespace

std::vector<format::Phrase> assumptions_of_project(const model::Project& project, const ProjectReview& review) {
    std::vector<format::Phrase> all = assumptions_of(review);
    for (format::Phrase& one : assumptions_of_directions(project)) all.push_back(std::move(one));
    if (review.posts.empty() || !asks_for_a_length(review.posts.front().review.resolved.detail)) return all;
    for (format::Phrase& one : assumptions_of_rail(project)) all.push_back(std::move(one));
    return all;
}

}  // namespace toehold::review
