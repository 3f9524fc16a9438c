// Two posts on one walkway of which one faces the other way: what their pushes put on the framing together is the sum
// by hand, whichever post one looks from.
#include "demand/framing/together.h"
#include "model/member.h"
#include "review/project_review.h"
#include "support/compare.h"
#include "support/shipped.h"
#include "support/three_posts.h"
#include "xml/detail/project_file.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace toehold;
using model::PostFacing;

namespace {

constexpr double across_deck_in = -84.0;  // where the second post stands
/// 42 in of guard, 1 in of boards and half of the blocks' 7 1/4 in: the push's arm about the blocks' axes.
constexpr double arm_in = 46.625;

/// A post at either edge of the shipped deck, each on its own two blocks; the second faces as said. 50 plf on 4 ft.
model::Project two_posts(PostFacing second) {
    const std::filesystem::path file =
        std::filesystem::path(TOEHOLD_DATA_FOLDER) / "projects" / "heron-landing-three-posts.xml";
    model::Project project = xml::read_project(file).project.value();
    project.guard_lines.clear();
    project.posts = {{"P1", {0.0, 0.0}, "line-post"}, {"P2", {0.0, across_deck_in}, "line-post"}};
    project.posts[1].facing = second;
    std::vector<model::Block>& blocks = project.framing.blocks;
    blocks.resize(2);
    for (const char* const id : {"B3", "B4"}) {
        blocks.push_back(blocks[blocks.size() - 2]);
        blocks.back().id = id;
        blocks.back().across_in += across_deck_in;
    }
    project.guard.handrail = false;
    project.basis.code = model::BuildingCode::irc_2021;
    project.basis.plate = model::PlateBehaviour::rigid;
    project.loads.concentrated.reset();
    return project;
}

/// On the framing by ledger and beam, about the own post: up, and the moments about its x and y.
struct Balance {
    double up_lb = 0.0, about_x_lb_in = 0.0, about_y_lb_in = 0.0;
};

Balance balance(const demand::Demand& demand, const model::Framing& framing, std::size_t state) {
    Balance all;
    const demand::FramingDemand& found = demand.framing.value();
    const std::vector<model::Member> members = model::members(framing);
    for (std::size_t i = 0; i < found.supports.size(); ++i) {
        const demand::MemberSupport& support = found.supports[i];
        if (support.kind != demand::MemberSupportKind::joist_support) continue;
        // Joists run along y: r x F with F up at (across, at), then the couples the joist hands over.
        const demand::SupportReaction& on_support = found.states[state].reactions[i];
        const double at_in = framing.supports.at(support.joist_support.value()).at_in;
        all.up_lb -= on_support.up_lb;
        all.about_x_lb_in -= at_in * on_support.up_lb + on_support.moment_lb_in;
        all.about_y_lb_in += members[support.member].across_in * on_support.up_lb - on_support.torque_lb_in;
    }
    return all;
}

/// Level force across all blocks, which lie along x: what they take outward of the own post.
double outward_of_blocks_lb(const demand::Demand& demand, std::size_t state) {
    double sum = 0.0;
    for (std::size_t i = 0; i < demand.framing->supports.size(); ++i) {
        if (demand.framing->supports[i].kind == demand::MemberSupportKind::block_end)
            sum += demand.framing->states[state].reactions[i].across_lb;
    }
    return sum;
}

void check_balance(const demand::Demand& demand, const model::Framing& framing, std::size_t state, double push_x_lb,
                   double push_y_lb) {
    const Balance on_framing = balance(demand, framing, state);
    CHECK_CLOSE(on_framing.up_lb, 0.0, 0.0, 1e-3);
    // A push at the height h turns the framing by (-h Fy, h Fx); what holds it turns it back.
    CHECK_CLOSE(on_framing.about_x_lb_in, arm_in * push_y_lb, 1e-6, 0.1);
    CHECK_CLOSE(on_framing.about_y_lb_in, -arm_in * push_x_lb, 1e-6, 0.1);
    CHECK_CLOSE(outward_of_blocks_lb(demand, state), push_y_lb, 1e-6, 1e-3);
}

}  // namespace

TEST_CASE("Posts that face opposite ways load their framing together as statics says", "[closed-form]") {
    const test::ResolvedPosts deck = test::resolved_posts(two_posts(PostFacing::minus_y));
    const std::vector<model::Member> members = model::members(deck.project.framing);
    std::vector<demand::Demand> demands;
    for (const review::ResolvedPost& post : deck.posts)
        demands.push_back(demand::find_demand(post.resolved).demand.value());
    for (const std::size_t own : std::vector<std::size_t>{0, 1}) {
        const demand::Demand& demand = demands[own];
        const model::Framing& framing = deck.posts[own].resolved.detail.framing;
        const demand::Demand together =
            demand::acting_together(demand, {demand::neighbor(members, demand, deck.posts[own].post.facing,
                                                              demands[1 - own], deck.posts[1 - own].post.facing)});
        std::size_t looked_at = 0;
        for (std::size_t state = demand.states.size(); state < together.states.size(); state += 3) {
            const double direction = together.states[state].direction_rad;
            // Both posts are asked in steps of 5 degrees; between them the nearest of the other's counts.
            const double steps = direction * 36.0 / std::numbers::pi;
            if (std::abs(steps - std::round(steps)) > 1e-9) continue;
            ++looked_at;
            const double push = together.cases[together.states[state].load_case].push_lb;
            CHECK_CLOSE(push, 200.0, 1e-12, 0.0);
            // The same way in plan: twice the push. The same way as each sees it: one against the other.
            check_balance(together, framing, state, 2.0 * push * std::cos(direction), 2.0 * push * std::sin(direction));
            check_balance(together, framing, state + 2, 0.0, 0.0);
        }
        CHECK(looked_at >= 72);
    }
}

TEST_CASE("What a rail keeps from a post stands on the one beside it at the same time", "[closed-form]") {
    const test::ResolvedPosts deck = test::resolved_posts(two_posts(PostFacing::minus_y));
    const demand::Demand own = demand::find_demand(deck.posts[0].resolved).demand.value();
    const demand::Demand other = demand::find_demand(deck.posts[1].resolved).demand.value();
    demand::Neighbor beside =
        demand::neighbor(model::members(deck.project.framing), own, PostFacing::plus_y, other, PostFacing::minus_y);
    beside.times = 0.5;
    const demand::Demand together = demand::acting_together(own, {}, {beside});
    const model::Framing& framing = deck.posts[0].resolved.detail.framing;
    std::size_t looked_at = 0;
    for (std::size_t state = own.states.size(); state < together.states.size(); state += 3) {
        const double direction = together.states[state].direction_rad, steps = direction * 36.0 / std::numbers::pi;
        CHECK(demand::may_be_shared(together.cases[together.states[state].load_case]));
        if (std::abs(steps - std::round(steps)) > 1e-9) continue;
        ++looked_at;
        const double push = together.cases[together.states[state].load_case].push_lb;
        check_balance(together, framing, state, 1.5 * push * std::cos(direction), 1.5 * push * std::sin(direction));
        check_balance(together, framing, state + 2, 0.5 * push * std::cos(direction), 0.5 * push * std::sin(direction));
    }
    CHECK(looked_at >= 72);
}

TEST_CASE("Wind along a corner post's rail blows across the one that faces that way", "[closed-form]") {
    model::Project project = two_posts(PostFacing::plus_x);
    model::WindLoad& wind = project.loads.wind.emplace();
    wind.pressure_psf = 20.0;
    wind.area_ft2 = 10.0;
    wind.centroid_in = 21.0;
    wind.with_live_load = false;
    test::ResolvedPosts deck = test::resolved_posts(project);
    deck.posts[0].resolved.detail.loads.wind->both_axes = true;
    const demand::Demand own = demand::find_demand(deck.posts[0].resolved).demand.value();
    const demand::Demand other = demand::find_demand(deck.posts[1].resolved).demand.value();
    const demand::Demand together = demand::acting_together(
        own,
        {demand::neighbor(model::members(deck.project.framing), own, PostFacing::plus_y, other, PostFacing::plus_x)});
    const model::Framing& framing = deck.posts[0].resolved.detail.framing;
    // 21 in of wind, 1 in of boards and half of the blocks' 7 1/4 in: its arm about the blocks' axes.
    constexpr double wind_arm_in = 25.625;
    const double both_lb = 2.0 * 0.6 * 20.0 * 10.0;
    std::size_t looked_at = 0;
    for (std::size_t state = own.states.size(); state < together.states.size(); ++state) {
        if (together.cases[together.states[state].load_case].id != "wind-along") continue;
        const demand::State &now = together.states[state], &before = together.states[state - 1];
        // Of the two or three that stand for one push, all posts at once the same way in plan is the first.
        if (before.load_case == now.load_case && before.scenario == now.scenario &&
            before.direction_rad == now.direction_rad)
            continue;
        ++looked_at;
        const double toward_x = std::cos(now.direction_rad);
        const Balance all = balance(together, framing, state);
        CHECK_CLOSE(all.up_lb, 0.0, 0.0, 1e-3);
        CHECK_CLOSE(all.about_x_lb_in, 0.0, 0.0, 0.1);
        CHECK_CLOSE(all.about_y_lb_in, -wind_arm_in * both_lb * toward_x, 1e-6, 0.1);
    }
    CHECK(looked_at >= 2);
}

TEST_CASE("The worst of a turned neighbor is no less than either way it may be pushed", "[property]") {
    const test::ResolvedPosts deck = test::resolved_posts(two_posts(PostFacing::minus_y));
    const std::vector<model::Member> members = model::members(deck.project.framing);
    const demand::Demand own = demand::find_demand(deck.posts[0].resolved).demand.value();
    const demand::Demand other = demand::find_demand(deck.posts[1].resolved).demand.value();
    const demand::Demand together =
        demand::acting_together(own, {demand::neighbor(members, own, PostFacing::plus_y, other, PostFacing::minus_y)});
    REQUIRE((together.states.size() - own.states.size()) % 3 == 0);
    for (std::size_t state = own.states.size(); state < together.states.size(); state += 3) {
        for (std::size_t support = 0; support < together.framing->supports.size(); ++support) {
            const double worst = together.framing->states[state + 1].reactions[support].up_lb;
            for (const std::size_t all_at_once : {state, state + 2}) {
                const double both = together.framing->states[all_at_once].reactions[support].up_lb;
                if (both * worst > 0.0 && std::abs(both) > std::abs(worst) + 1e-6)
                    FAIL_CHECK(both << " over " << worst);
            }
        }
    }
}

TEST_CASE("Posts that face one way need no turning, and posts of a turned sheet are reviewed alike", "[property]") {
    const model::Project as_drawn = two_posts(PostFacing::plus_y);
    model::Project turned = as_drawn;  // on a sheet turned by a quarter
    turned.framing = model::turned(as_drawn.framing, PostFacing::plus_x);
    for (model::PlacedPost& post : turned.posts) {
        post.at = {-post.at.y_in, post.at.x_in};
        post.facing = PostFacing::minus_x;
    }
    const review::ProjectReview before =
        review::review_project(as_drawn, test::resolved_posts(as_drawn).posts, "digest");
    const review::ProjectReview after = review::review_project(turned, test::resolved_posts(turned).posts, "digest");
    REQUIRE(before.pushes_together);
    CHECK(before.verdict == after.verdict);
    for (std::size_t post = 0; post < before.posts.size(); ++post) {
        const auto& one = before.posts[post].review.checks;
        const auto& two = after.posts[post].review.checks;
        REQUIRE(one.size() == two.size());
        for (std::size_t i = 0; i < one.size(); ++i) {
            CAPTURE(one[i].id, model::key(one[i].part));
            CHECK(one[i].id == two[i].id);
            CHECK(one[i].part == two[i].part);
            CHECK_CLOSE(two[i].ratio, one[i].ratio, 1e-9, 1e-12);
        }
    }
}

TEST_CASE("A review says which posts face and which take rail by their spans", "[unit]") {
    model::Project project = two_posts(PostFacing::minus_y);
    project.posts[1].at.x_in = 0.0;
    project.guard_lines = {{"L1", {"P1", "P2"}}};  // 84 in apart: 42 in each, less than the 48 in the loads say
    const auto says = [](const model::Project& of, const std::string& words) {
        const review::ProjectReview review = review::review_project(of, test::resolved_posts(of).posts, "digest");
        return std::any_of(review.assumptions.begin(), review.assumptions.end(), [&](const format::Phrase& one) {
            return format::english(one).find(words) != std::string::npos;
        });
    };
    CHECK(says(project, "Posts that face different ways"));
    project.posts[1].facing = PostFacing::plus_y;
    CHECK_FALSE(says(project, "half of the spans"));
    project.guard.tributary_length_in = 40.0;
    project.loads.line->spacing_ft = 3.0;
    CHECK(says(project, "than the project's loads say: P1, P2."));
    project.posts[0].rail_length_ft = 2.0;
    CHECK(says(project, "less than half of the spans beside them: P1."));
}
