// Projects: one post is the lone detail's review; posts on shared framing load it together, which statics must show.
#include "review/project_review.h"

#include "demand/framing/together.h"
#include "support/compare.h"
#include "support/shipped.h"
#include "support/three_posts.h"
#include "xml/detail/project_file.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <numbers>

using namespace toehold;

namespace {

namespace fs = std::filesystem;
const fs::path data = TOEHOLD_DATA_FOLDER;

using Prepared = test::ResolvedPosts;

Prepared prepared(const model::Project& project) { return test::resolved_posts(project); }

Prepared shipped(const fs::path& file) {
    const xml::ProjectRead read = xml::read_project(data / file);
    REQUIRE(read.project);
    return prepared(*read.project);
}

/// The project under the code's loads outward and down alone, which keeps the demand small: 50 plf on 2, 4 and 2 ft of
/// rail is 100, 200 and 100 lb, which the concentrated 200 lb at each post covers.
Prepared under_line_load() {
    Prepared all = shipped("projects/heron-landing-three-posts.xml");
    all.project.loads.directions = model::Directions::outward;
    all.project.guard.handrail = false;
    all.project.basis.code = model::BuildingCode::irc_2021;
    all.project.loads.concentrated.reset();
    all.project.basis.plate = model::PlateBehaviour::rigid;
    return prepared(all.project);
}

/// What the ledger and the beam put on the framing in one state: upward force, and moment about x through the posts'
/// axes, in which an upward force outward of the axis is positive. A ledger's hangers also hold the joists' ends
/// square.
struct Reactions {
    double up_lb = 0.0, moment_lb_in = 0.0;
};

Reactions reactions(const demand::Demand& demand, const model::Framing& framing, std::size_t state) {
    Reactions all;
    const demand::FramingDemand& found = demand.framing.value();
    for (std::size_t i = 0; i < found.supports.size(); ++i) {
        if (found.supports[i].kind != demand::MemberSupportKind::joist_support) continue;
        const demand::SupportReaction& on_support = found.states[state].reactions[i];
        all.up_lb -= on_support.up_lb;
        all.moment_lb_in -= on_support.up_lb * framing.supports.at(found.supports[i].joist_support.value()).at_in;
        all.moment_lb_in -= on_support.moment_lb_in;
    }
    return all;
}

}  // namespace

TEST_CASE("A project of one post is the lone detail's review", "[unit]") {
    const Prepared one = shipped("demo/heron-landing-lags-in-deep-blocks.xml");
    const review::ProjectReview project = review::review_project(one.project, one.posts, "digest");
    const review::Review lone = review::review(one.posts.front().resolved, "digest");
    REQUIRE(project.posts.size() == 1);
    const review::Review& post = project.posts.front().review;
    CHECK(project.verdict == lone.verdict);
    CHECK(project.shared.empty());
    CHECK(project.assumptions.empty());
    REQUIRE(post.checks.size() == lone.checks.size());
    for (std::size_t i = 0; i < lone.checks.size(); ++i) {
        CHECK(post.checks[i].id == lone.checks[i].id);
        CHECK(post.checks[i].demand == lone.checks[i].demand);
        CHECK(post.checks[i].ratio == lone.checks[i].ratio);
    }
}

TEST_CASE("Supports of shared framing balance the pushes of all posts at once", "[closed-form]") {
    const Prepared all = under_line_load();
    std::vector<demand::Demand> demands;
    for (const review::ResolvedPost& post : all.posts) {
        demands.push_back(demand::find_demand(post.resolved).demand.value());
    }
    const demand::Demand together = demand::acting_together(demands[0], {{&demands[1]}, {&demands[2]}});
    const model::Framing& framing = all.posts.front().resolved.detail.framing;
    // 100, 200 and 100 lb at 42 in; alone the concentrated 200 lb. The anchors hand the push to the blocks' tops, and
    // the blocks carry it at their axes, 7 1/4 in deep below 1 in of boards: the couple's arm is 42 + 1 + 7.25 / 2 in.
    constexpr double arm_in = 46.625;
    const std::size_t alone = demands[0].states.size(), pushed = demands[0].scenarios.size();
    REQUIRE(together.states.size() == alone + 2 * pushed);
    REQUIRE(together.framing->states.size() == alone + 2 * pushed);
    for (std::size_t state = 0; state < pushed; ++state) {
        const Reactions own = reactions(together, framing, state);
        const Reactions all_posts = reactions(together, framing, alone + 2 * state);
        CHECK_CLOSE(own.up_lb, 0.0, 0.0, 1e-3);
        CHECK_CLOSE(all_posts.up_lb, 0.0, 0.0, 1e-3);
        CHECK_CLOSE(own.moment_lb_in, 200.0 * arm_in, 1e-6, 0.0);
        CHECK_CLOSE(all_posts.moment_lb_in, 400.0 * arm_in, 1e-6, 0.0);
    }
}

TEST_CASE("The load along part of the rail gives no force that the worst of its posts does not", "[closed-form]") {
    const Prepared all = under_line_load();
    std::vector<demand::Demand> demands;
    for (const review::ResolvedPost& post : all.posts) {
        demands.push_back(demand::find_demand(post.resolved).demand.value());
    }
    const demand::Demand together = demand::acting_together(demands[0], {{&demands[1]}, {&demands[2]}});
    const std::size_t alone = demands[0].states.size();
    const double parts[] = {0.5, 1.0, 0.5};  // of the 200 lb that was solved
    for (std::size_t state = 0; state < demands[0].scenarios.size(); ++state) {
        const demand::FramingState& worst = together.framing->states.at(alone + 2 * state + 1);
        for (std::size_t support = 0; support < worst.reactions.size(); ++support) {
            const auto up_lb = [&](std::size_t post) {
                return parts[post] * demands[post].framing->states.at(state).reactions[support].up_lb;
            };
            // By enumeration: the first post with each choice of the other two.
            double largest_lb = 0.0, sign = up_lb(0) < 0.0 ? -1.0 : 1.0;
            for (const double one : {0.0, 1.0}) {
                for (const double other : {0.0, 1.0})
                    largest_lb = std::max(largest_lb, sign * (up_lb(0) + one * up_lb(1) + other * up_lb(2)));
            }
            CHECK_CLOSE(sign * worst.reactions[support].up_lb, largest_lb, 1e-12, 1e-9);
        }
    }
}

TEST_CASE("Posts under the concentrated load alone are not added up", "[unit]") {
    Prepared all = under_line_load();
    all.project.guard.occupancy = model::Occupancy::one_and_two_family;
    all.project.loads.concentrated = model::ConcentratedLoad{};
    all.project.loads.line.reset();
    all = prepared(all.project);
    const demand::Demand own = demand::find_demand(all.posts[0].resolved).demand.value();
    const demand::Demand other = demand::find_demand(all.posts[1].resolved).demand.value();
    const demand::Demand together = demand::acting_together(own, {{&other}});
    for (std::size_t state = 0; state < own.states.size(); ++state) {
        for (std::size_t support = 0; support < own.framing->supports.size(); ++support) {
            CHECK(together.framing->states[state].reactions[support].up_lb ==
                  own.framing->states[state].reactions[support].up_lb);
        }
    }
    const review::ProjectReview review = review::review_project(all.project, all.posts, "digest");
    CHECK_FALSE(review.pushes_together);
    const bool said = std::any_of(review.assumptions.begin(), review.assumptions.end(), [](const format::Phrase& one) {
        return format::english(one).find("one post at a time") != std::string::npos;
    });
    CHECK(said);
}

TEST_CASE("Posts that share framing are named, and none is better off for its neighbors", "[unit]") {
    const Prepared all = under_line_load();
    const review::ProjectReview review = review::review_project(all.project, all.posts, "digest");
    CHECK(review.pushes_together);
    REQUIRE_FALSE(review.shared.empty());
    for (std::size_t i = 0; i < review.posts.size(); ++i) {
        const review::Review lone = review::evaluate(all.posts[i].resolved, "digest");
        for (const checks::CheckResult& alone : lone.checks) {
            const auto same = std::find_if(review.posts[i].review.checks.begin(), review.posts[i].review.checks.end(),
                                           [&alone](const checks::CheckResult& one) {
                                               return one.id == alone.id && one.part == alone.part &&
                                                      one.title == alone.title && one.aspect == alone.aspect;
                                           });
            INFO(alone.id << " " << model::key(alone.part));
            REQUIRE(same != review.posts[i].review.checks.end());
            CHECK(same->ratio >= alone.ratio);
            if (alone.id.rfind("anchor-", 0) == 0) CHECK(same->ratio == alone.ratio);
        }
    }
}

namespace {

/// The ledger's hangers with this share of what they may take; their stiffness stays, so that the forces do.
/// The deck's own load, which presses all of them, is left out.
Prepared with_hangers(model::Project project, double share) {
    project.framing.deck = {0.0, 0.0};
    for (model::JoistSupport& support : project.framing.supports) {
        if (support.kind != model::JoistSupport::Kind::ledger) continue;
        auto& hanger = std::get<model::ReportedConnector>(support.connection);
        hanger.stiffness_lb_per_in = 4000.0;
        for (double* const value : {&hanger.uplift_lb, &hanger.down_lb, &hanger.lateral_lb, &hanger.pull_lb})
            *value *= share;
    }
    return prepared(project);
}

double worst_hanger(const review::Review& review) {
    double ratio = 0.0;
    for (const checks::CheckResult& result : review.checks) {
        const bool hanger = result.id == "member-end-connection" && result.part.at_kind == model::PartKind::ledger;
        if (hanger) ratio = std::max(ratio, result.ratio);
    }
    return ratio;
}

}  // namespace

TEST_CASE("A hanger that holds for one post and not for three makes the project inadequate", "[closed-form]") {
    const model::Project project = under_line_load().project;
    const Prepared whole = with_hangers(project, 1.0);
    const double alone = worst_hanger(review::evaluate(whole.posts[1].resolved, "digest"));
    const double together = worst_hanger(review::review_project(whole.project, whole.posts, "digest").posts[1].review);
    CAPTURE(alone, together);
    REQUIRE(alone > 0.0);
    REQUIRE(together > 1.001 * alone);
    // A ratio is in proportion to the inverse of what the hanger may take.
    const Prepared weaker = with_hangers(project, 0.5 * (alone + together));
    CHECK(worst_hanger(review::evaluate(weaker.posts[1].resolved, "digest")) < 1.0);
    const review::ProjectReview after = review::review_project(weaker.project, weaker.posts, "digest");
    CHECK(worst_hanger(after.posts[1].review) > 1.0);
    CHECK(after.verdict == review::Verdict::inadequate);
}
