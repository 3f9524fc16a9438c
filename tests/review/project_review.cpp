// Projects: one post is the lone detail's review; posts on shared framing load it together, which statics must show.
#include "review/project_review.h"

#include "demand/framing/together.h"
#include "support/compare.h"
#include "xml/catalog/catalog_file.h"
#include "xml/detail/project_file.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <numbers>

using namespace toehold;

namespace {

namespace fs = std::filesystem;
const fs::path data = TOEHOLD_DATA_FOLDER;

struct Prepared {
    model::Project project;
    std::vector<review::ResolvedPost> posts;
};

Prepared prepared(const model::Project& project) {
    static const catalog::Catalog catalog = xml::read_catalog(data).catalog;
    Prepared all{project, {}};
    for (const model::PlacedPost& post : project.posts) {
        all.posts.push_back({post, catalog::resolve(model::detail_of(project, post), catalog).resolved.value()});
    }
    return all;
}

Prepared shipped(const fs::path& file) {
    const xml::ProjectRead read = xml::read_project(data / file);
    REQUIRE(read.project);
    return prepared(*read.project);
}

/// The project with every post under the load along the rail alone, outward, which keeps the demand small.
Prepared under_line_load() {
    Prepared all = shipped("projects/heron-landing-three-posts.xml");
    all.project.loads.directions = model::Directions::outward;
    all.project.loads.concentrated.reset();
    all.project.basis.plate = model::PlateBehaviour::rigid;
    return prepared(all.project);
}

/// What the supports of the joists put on the framing in one state: upward force, and moment about x through the
/// posts' axes, in which an upward force outward of the axis is positive.
struct Reactions {
    double up_lb = 0.0, moment_lb_in = 0.0;
};

Reactions reactions(const demand::Demand& demand, const model::Framing& framing, std::size_t state) {
    Reactions all;
    const demand::FramingDemand& found = demand.framing.value();
    for (std::size_t i = 0; i < found.supports.size(); ++i) {
        if (found.supports[i].kind != demand::MemberSupportKind::joist_support) continue;
        const double up_lb = -found.states[state].reactions[i].up_lb;  // held down: the support pulls down
        all.up_lb += up_lb;
        all.moment_lb_in += up_lb * framing.supports.at(found.supports[i].joist_support.value()).at_in;
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
    const demand::Demand together = demand::acting_together(demands[0], {&demands[1], &demands[2]});
    const model::Framing& framing = all.posts.front().resolved.detail.framing;
    REQUIRE(together.states.size() == demands[0].states.size());
    for (std::size_t state = 0; state < together.states.size(); ++state) {
        // 50 plf on 2, 4 and 2 ft of rail at 42 in: 100, 200 and 100 lb. The supports take the horizontal push
        // somewhere between the bearing plane and the joists' undersides, 10 1/4 in below it, so that the couple's arm
        // is known to that; four times the push makes four times the couple.
        const Reactions own = reactions(demands[0], framing, state), sum = reactions(together, framing, state);
        CHECK_CLOSE(own.up_lb, 0.0, 0.0, 1e-3);
        CHECK_CLOSE(sum.up_lb, 0.0, 0.0, 1e-3);
        CHECK(own.moment_lb_in >= 100.0 * 42.0);
        CHECK(own.moment_lb_in <= 100.0 * (42.0 + 10.25));
        CHECK(sum.moment_lb_in >= 400.0 * 42.0);
        CHECK(sum.moment_lb_in <= 400.0 * (42.0 + 10.25));
        CHECK_CLOSE(sum.moment_lb_in, 4.0 * own.moment_lb_in, 1e-4, 0.0);
    }
}

TEST_CASE("Posts under the concentrated load alone are not added up", "[unit]") {
    Prepared all = under_line_load();
    all.project.loads.concentrated = model::ConcentratedLoad{};
    all.project.loads.line.reset();
    all = prepared(all.project);
    const demand::Demand own = demand::find_demand(all.posts[0].resolved).demand.value();
    const demand::Demand other = demand::find_demand(all.posts[1].resolved).demand.value();
    const demand::Demand together = demand::acting_together(own, {&other});
    for (std::size_t state = 0; state < own.states.size(); ++state) {
        for (std::size_t hold = 0; hold < own.framing->supports.size(); ++hold) {
            CHECK(together.framing->states[state].reactions[hold].up_lb ==
                  own.framing->states[state].reactions[hold].up_lb);
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
        const auto largest = [](const review::Review& one, const char* id) {
            double ratio = 0.0;
            for (const checks::CheckResult& result : one.checks) {
                if (result.id == id) ratio = std::max(ratio, result.ratio);
            }
            return ratio;
        };
        CHECK(largest(review.posts[i].review, "member-bending") >= largest(lone, "member-bending"));
        CHECK(largest(review.posts[i].review, "anchor-withdrawal") == largest(lone, "anchor-withdrawal"));
    }
}
