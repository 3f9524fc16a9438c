#include "review/project_review.h"

#include "demand/framing/together.h"
#include "demand/kept.h"
#include "model/line_geometry.h"
#include "model/member.h"
#include "review/line/project_words.h"
#include "review/line/review_line.h"
#include "review/posts_on_framing.h"

#include <algorithm>
#include <map>
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

Verdict gravest(const ProjectReview& review) {
    const auto has = [&review](Verdict verdict) {
        return line_with(review.lines, verdict) != nullptr ||
               std::any_of(review.posts.begin(), review.posts.end(),
                           [verdict](const PostReview& post) { return post.review.verdict == verdict; });
    };
    if (has(Verdict::inadequate)) return Verdict::inadequate;
    return has(Verdict::incomplete) || review.posts.empty() ? Verdict::incomplete : Verdict::adequate;
}

/// The posts under what their lines give them.
std::vector<ResolvedPost> loaded(std::vector<ResolvedPost> posts, const std::vector<SolvedLine>& lines) {
    for (std::size_t index = 0; index < posts.size(); ++index) {
        const LoadsOfLines loads = loads_of_lines(lines, index);
        model::BaseDetail& detail = posts[index].resolved.detail;
        detail = loaded_by_lines(std::move(detail), loads.counted, loads);
    }
    return posts;
}

/// That the post's concentrated load is not the whole push, or more than it.
void add_share_assumption(Review& review) {
    const std::optional<model::Sharing>& sharing = review.resolved.detail.loads.sharing;
    if (!sharing) return;
    if (sharing->factor > 1.0) {
        review.assumptions.push_back({phrase("By its rail, a push on guard line {} gives this post {:.2f} of it.",
                                             sharing->line, sharing->factor)});
        return;
    }
    const std::string clause =
        model::clause(model::building_code(review.resolved.detail.basis), model::Provision::concentrated_guard_load);
    review.assumptions.push_back(
        {phrase("The post is reviewed for {:.2f} of the concentrated load: its neighbors in guard line {} are counted "
                "on. {} says nothing of sharing: the building official must accept it. What it rests on, and the post "
                "by itself, stand with the line.",
                sharing->factor, sharing->line, Citation{clause})});
}

/// What a post comes to with no neighbor counted on.
struct Lone {
    Verdict verdict = Verdict::incomplete;
    Governing governing;
};

Lone lone(std::size_t post, const LoadsOfLines& loads, const PostsOnFraming& posts, const Review& counted,
          demand::Kept& kept) {
    if (loads.counted == loads.lone) return {counted.verdict, counted.governing};
    catalog::Resolved alone = posts.resolved(post);
    alone.detail.loads.sharing.reset();
    if (loads.lone != 1.0) alone.detail.loads.sharing = model::Sharing{loads.lone, loads.line};
    const Review review = posts.review(post, alone, demand::find_demand(alone, demand::Sampling::whole(), &kept));
    return {review.verdict, review.governing};
}

/// What each post that shares would come to by itself, and what length of rail each was reviewed for.
void add_posts_alone(ProjectReview& result, const std::vector<SolvedLine>& solved, const PostsOnFraming& posts,
                     demand::Kept& kept, const Stop& stopped) {
    std::map<std::size_t, Lone> known;  // found once, however many lines a post is in
    for (std::size_t number = 0; number < solved.size(); ++number) {
        LineReview& line = result.lines[number];
        for (std::size_t index = 0; index < line.posts.size(); ++index) {
            const std::size_t post = solved[number].posts[index];
            const model::BaseDetail& counted = posts.resolved(post).detail;
            PostShare& share = line.posts[index];
            share.reviewed_in = model::tributary_length_in(counted.guard, counted.loads).value_or(0.0);
            if (!line.sharing || !solved[number].demand) continue;
            if (stopped()) return;
            const auto [place, fresh] = known.try_emplace(post);
            if (fresh) place->second = lone(post, loads_of_lines(solved, post), posts, result.posts[post].review, kept);
            share.lone_verdict = place->second.verdict;
            share.lone = place->second.governing;
        }
    }
}

/// Tells how far the review is, and hears whether it is still wanted.
class Way {
  public:
    Way(const ProjectWatch& watch, std::size_t posts) : watch_(watch) { far_.posts = posts; }
    [[nodiscard]] bool stopped() const { return watch_.stop && watch_.stop(); }
    void forces_found() {
        ++far_.forces;
        tell();
    }
    void checked(const PostReview& post) {
        ++far_.checks;
        far_.reviewed = &post;
        tell();
    }

  private:
    void tell() const {
        if (watch_.progress) watch_.progress(far_);
    }
    const ProjectWatch& watch_;
    ProjectProgress far_;
};

}  // namespace

ProjectReview review_project(const model::Project& project, const std::vector<ResolvedPost>& posts,
                             const std::string& input_sha256, const std::vector<ResolvedLine>& lines, bool whole,
                             const ProjectWatch& watch) {
    Way way(watch, posts.size());
    demand::Kept kept;
    const std::vector<SolvedLine> solved = solve_lines(project, posts, lines, kept);
    const std::vector<ResolvedPost> all = loaded(posts, solved);
    std::vector<demand::Outcome> outcomes;
    outcomes.reserve(all.size());
    for (const ResolvedPost& post : all) {
        if (way.stopped()) return {};
        outcomes.push_back(demand::find_demand(post.resolved, demand::Sampling::whole(), &kept));
        way.forces_found();
    }

    ProjectReview result;
    result.project = project.name;
    result.input_sha256 = input_sha256;
    result.remarks = project.remarks;
    result.roles = model::count_roles(project);
    result.shared = shared_members(project, all, actions_by(outcomes));
    result.pushes_together = !result.shared.empty() && any_together(outcomes);
    const PostsOnFraming reviewed(project, all, outcomes, input_sha256);
    for (std::size_t index = 0; index < all.size(); ++index) {
        if (way.stopped()) return {};
        PostReview one;
        one.post = all[index].post;
        one.shares_with = sharing_with(one.post.id, result);
        one.review = reviewed.review(index, all[index].resolved, outcomes[index]);
        if (whole) {
            add_assumptions(one.review);
            add_share_assumption(one.review);
        } else {
            one.review.check_runs = nullptr;  // nobody asks them any more
        }
        result.posts.push_back(std::move(one));
        way.checked(result.posts.back());
    }
    for (std::size_t number = 0; number < solved.size(); ++number)
        result.lines.push_back(review_line(project, posts, solved, number));
    if (whole) add_posts_alone(result, solved, reviewed, kept, [&way] { return way.stopped(); });
    result.verdict = gravest(result);
    result.assumptions = assumptions_of_project(project, result);
    return result;
}

std::size_t posts_with(const ProjectReview& review, Verdict verdict) {
    return static_cast<std::size_t>(
        std::count_if(review.posts.begin(), review.posts.end(),
                      [verdict](const PostReview& one) { return one.review.verdict == verdict; }));
}

}  // namespace toehold::review
