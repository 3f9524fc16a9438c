#include "review/project_review.h"

#include "demand/framing/together.h"
#include "model/member.h"

#include <algorithm>
#include <utility>

namespace toehold::review {
namespace {

using format::Citation;
using format::phrase;

using Actions = std::vector<demand::MemberActions>;

constexpr double named_share = 0.05;

std::vector<Actions> actions_by(const std::vector<demand::Outcome>& outcomes) {
    std::vector<Actions> all;
    all.reserve(outcomes.size());
    for (const demand::Outcome& outcome : outcomes) {
        all.push_back(outcome.demand ? demand::largest_actions(*outcome.demand) : Actions{});
    }
    return all;
}

/// Whether the post's part in some action on the member is worth naming.
bool loads_member(const std::vector<Actions>& by_post, std::size_t post, std::size_t member) {
    return std::any_of(demand::actions_of_a_member.begin(), demand::actions_of_a_member.end(), [&](auto action) {
        constexpr double nothing = 1e-6;
        double largest = nothing;
        for (const Actions& actions : by_post) {
            if (member < actions.size()) largest = std::max(largest, actions[member].*action);
        }
        return member < by_post[post].size() && by_post[post][member].*action > named_share * largest;
    });
}

std::vector<SharedMember> shared_members(const model::Project& project, const std::vector<ResolvedPost>& posts,
                                         const std::vector<Actions>& by_post) {
    std::vector<SharedMember> shared;
    const std::vector<model::Member> members = model::members(project.framing);
    for (std::size_t index = 0; index < members.size(); ++index) {
        SharedMember one{model::part_of(members[index]), {}};
        for (std::size_t post = 0; post < posts.size(); ++post) {
            if (loads_member(by_post, post, index)) one.posts.push_back(posts[post].post.id);
        }
        if (one.posts.size() > 1) shared.push_back(std::move(one));
    }
    return shared;
}

std::vector<std::string> sharing_with(const std::string& post, const ProjectReview& review) {
    std::vector<std::string> others;
    const auto is_in = [](const std::vector<std::string>& all, const std::string& id) {
        return std::find(all.begin(), all.end(), id) != all.end();
    };
    for (const SharedMember& member : review.shared) {
        if (!is_in(member.posts, post)) continue;
        for (const std::string& other : member.posts) {
            if (other != post && !is_in(others, other)) others.push_back(other);
        }
    }
    return others;
}

bool any_together(const std::vector<demand::Outcome>& outcomes) {
    return std::any_of(outcomes.begin(), outcomes.end(), [](const demand::Outcome& outcome) {
        return outcome.demand &&
               std::any_of(outcome.demand->cases.begin(), outcome.demand->cases.end(), demand::acts_on_all_posts);
    });
}

std::vector<format::Phrase> assumptions_of(const ProjectReview& review) {
    if (review.posts.size() < 2) return {};
    if (review.shared.empty())
        return {phrase("No two posts load the same framing member: each is reviewed by itself.")};
    std::vector<format::Phrase> all;
    if (review.pushes_together) {
        all.push_back(phrase(
            "A load along the rail acts on all posts at once, in one direction: framing that posts share is checked "
            "for the load on the post alone, on all posts, and on those posts that make each force larger. Along a "
            "member the largest forces of each post are added even where they stand apart, which is conservative."));
    }
    const std::string clause = model::clause(model::building_code(review.posts.front().review.resolved.detail.basis),
                                             model::Provision::concentrated_guard_load);
    all.push_back(
        phrase("The concentrated load stands at one post at a time, so that loads of other posts are not added to it "
               "({}). A load stated by the user is taken as one post's own.",
               Citation{clause}));
    all.push_back(phrase("Anchor tension, bearing and movement of the guard's top count the post's own loads alone."));
    return all;
}

Verdict gravest(const std::vector<PostReview>& posts) {
    const auto has = [&posts](Verdict verdict) {
        return std::any_of(posts.begin(), posts.end(),
                           [verdict](const PostReview& post) { return post.review.verdict == verdict; });
    };
    if (has(Verdict::inadequate)) return Verdict::inadequate;
    return has(Verdict::incomplete) || posts.empty() ? Verdict::incomplete : Verdict::adequate;
}

}  // namespace

ProjectReview review_project(const model::Project& project, const std::vector<ResolvedPost>& posts,
                             const std::string& input_sha256) {
    std::vector<demand::Outcome> outcomes;
    outcomes.reserve(posts.size());
    for (const ResolvedPost& post : posts) outcomes.push_back(demand::find_demand(post.resolved));

    ProjectReview result;
    result.project = project.name;
    result.input_sha256 = input_sha256;
    result.remarks = project.remarks;
    result.shared = shared_members(project, posts, actions_by(outcomes));
    result.pushes_together = !result.shared.empty() && any_together(outcomes);
    for (std::size_t index = 0; index < posts.size(); ++index) {
        PostReview one;
        one.post = posts[index].post;
        one.shares_with = sharing_with(one.post.id, result);
        std::vector<const demand::Demand*> others;
        for (std::size_t other = 0; other < posts.size(); ++other) {
            if (other != index && outcomes[other].demand) others.push_back(&*outcomes[other].demand);
        }
        demand::Outcome outcome = outcomes[index];
        if (outcome.demand) outcome.demand = demand::acting_together(*outcome.demand, others);
        one.review = evaluate(posts[index].resolved, std::move(outcome), input_sha256);
        add_assumptions(one.review);
        result.posts.push_back(std::move(one));
    }
    result.verdict = gravest(result.posts);
    result.assumptions = assumptions_of(result);
    return result;
}

}  // namespace toehold::review
