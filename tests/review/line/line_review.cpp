// What a line of guard changes in its posts' loads, and what its review comes to.
#include "checks/post/post_stiffness.h"
#include "checks/rail/rail.h"
#include "checks/run_check.h"
#include "demand/kept.h"
#include "demand/loads/load_cases.h"
#include "review/line/line_example.h"
#include "support/compare.h"
#include "support/example_detail.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace toehold;
using review::Verdict;

namespace {

model::RailConnection bracket(double across_lb) { return {"bracket", "test report", across_lb, 500.0, 500.0}; }

review::LineReview reviewed(test::LineExample& example, const std::optional<model::RailConnection>& connection) {
    example.project.guard_lines.front().rail->connection = connection;
    example.rail.rail.connection = connection;
    const std::vector<review::SolvedLine> lines{test::made_up_line(example)};
    return review::review_line(example.project, example.posts, lines, 0);
}

const demand::LoadCase& case_of(const std::vector<demand::LoadCase>& cases, const std::string& id) {
    const auto found = std::find_if(cases.begin(), cases.end(), [&id](const auto& one) { return one.id == id; });
    REQUIRE(found != cases.end());
    return *found;
}

bool any_says(const std::vector<format::Phrase>& phrases, const std::string& words) {
    return std::any_of(phrases.begin(), phrases.end(),
                       [&words](const format::Phrase& one) { return test::says(one, words); });
}

/// Top of the post over a pound there: its own bending and the base's turn.
double softness(const demand::PostFlexibility& post, double base_lb_in_per_rad, double height_in) {
    return post.along_y_in_per_lb + height_in * height_in / base_lb_in_per_rad;
}

}  // namespace

TEST_CASE("Sharing off, a post counts the whole push; on, its share of it", "[unit]") {
    for (const bool sharing : {false, true}) {
        const test::LineExample example = test::line_example(sharing);
        const std::vector<review::SolvedLine> lines{test::made_up_line(example)};
        const review::LoadsOfLines middle = review::loads_of_lines(lines, 1);
        CHECK(middle.lone == 1.0);
        CHECK(middle.counted == (sharing ? 0.6 : 1.0));
        CHECK(middle.length_in == 60.0);
    }
}

TEST_CASE("The share is on the concentrated push alone, never on user loads or a proof test", "[unit]") {
    const test::LineExample example = test::line_example(true);
    model::BaseDetail detail = example.posts[1].resolved.detail;
    detail.loads.concentrated = model::ConcentratedLoad{300.0, 50.0};
    detail.loads.user = {{"banner", 120.0, 0.0, {}, "test"}};
    detail.loads.proof_push_lb = 500.0;
    const std::vector<review::SolvedLine> lines{test::made_up_line(example)};
    const review::LoadsOfLines loads = review::loads_of_lines(lines, 1);
    detail = review::loaded_by_lines(detail, loads.counted, loads);
    const std::vector<demand::LoadCase> cases = demand::load_cases(detail);
    CHECK_CLOSE(case_of(cases, "concentrated").push_lb, 120.0, 1e-12, 0.0);
    CHECK_CLOSE(case_of(cases, "file-concentrated").push_lb, 180.0, 1e-12, 0.0);
    CHECK_CLOSE(case_of(cases, "file-concentrated-with-vertical").down_lb, 50.0, 1e-12, 0.0);
    CHECK_CLOSE(case_of(cases, "user-1").push_lb, 120.0, 1e-12, 0.0);
    CHECK_CLOSE(demand::proof_case(detail).value().push_lb, 500.0, 1e-12, 0.0);
    // 50 lb/ft over 60 in, by continuity: 250 lb, whether the line shares or not.
    CHECK_CLOSE(case_of(cases, "line").push_lb, 250.0, 1e-12, 0.0);
}

TEST_CASE("A post of two lines shares only where both do", "[unit]") {
    const test::LineExample shares = test::line_example(true), does_not = test::line_example(false);
    std::vector<review::SolvedLine> lines{test::made_up_line(shares), test::made_up_line(does_not)};
    CHECK(review::loads_of_lines(lines, 1).counted == 1.0);
    CHECK(review::loads_of_lines(lines, 1).length_in == 120.0);
    lines[1].line = lines[0].line;
    CHECK(review::loads_of_lines(lines, 1).counted == 0.6);
}

TEST_CASE("What the rail adds to a push counts, shared or not", "[unit]") {
    const test::LineExample example = test::line_example(false);
    std::vector<review::SolvedLine> lines{test::made_up_line(example)};
    lines[0].demand->posts[0].share.value = 1.25;
    const review::LoadsOfLines end = review::loads_of_lines(lines, 0);
    CHECK(end.lone == 1.25);
    CHECK(end.counted == 1.25);
    const review::LineReview review = review::review_line(example.project, example.posts, lines, 0);
    CHECK(any_says(review.assumptions, "post P1 gets 1.25"));
}

TEST_CASE("A line that counts on its neighbors needs values of its connection, and says so first", "[unit]") {
    test::LineExample example = test::line_example(true);
    const review::LineReview lacking = reviewed(example, std::nullopt);
    CHECK(lacking.verdict == Verdict::incomplete);
    REQUIRE(lacking.cause);
    CHECK(lacking.cause->check == "rail-connection");
    // The middle post's line load gives most across: 60 in x 4.1667 lb/in = 250 lb, over 0.8 x 200 lb elsewhere.
    const review::LineReview weak = reviewed(example, bracket(240.0));
    CHECK(weak.verdict == Verdict::inadequate);
    REQUIRE(weak.cause);
    CHECK(weak.cause->check == "rail-connection");
    CHECK(model::key(weak.cause->part) == "post P2");
    // With 200 lb of 500 lb upright, for a load between the two.
    CHECK_CLOSE(weak.cause->ratio, std::hypot(250.0 / 240.0, 0.4), 1e-9, 0.0);
    CHECK(reviewed(example, bracket(300.0)).verdict == Verdict::adequate);
}

TEST_CASE("A line that does not share asks for no values it was not given", "[unit]") {
    test::LineExample example = test::line_example(false);
    const review::LineReview review = reviewed(example, std::nullopt);
    CHECK(review.verdict == Verdict::adequate);
    CHECK(any_says(review.assumptions, "not specified and not checked"));
    CHECK(any_says(review.assumptions, "P2: 60 in"));
    CHECK(any_says(review.rests_on, "building official must accept"));
    REQUIRE(review.posts.size() == 3);
    CHECK(review.posts[1].share == 0.6);
    CHECK(review.posts[1].counted == 1.0);
    CHECK(review.posts[0].role == model::PostRole::end);
}

TEST_CASE("A rail too weak for the push fails the line whether it shares or not", "[unit]") {
    for (const bool sharing : {false, true}) {
        test::LineExample example = test::line_example(sharing);
        std::get<catalog::Metal>(example.rail.material).yield_psi = 12000.0;  // 12000 x 0.305/1.67 = 2192 < 2600 lb in
        const review::LineReview review = reviewed(example, bracket(300.0));
        CHECK(review.verdict == Verdict::inadequate);
        REQUIRE(review.cause);
        CHECK(review.cause->check == "rail-bending");
    }
}

TEST_CASE("A line that could not be solved is incomplete where it is counted on", "[unit]") {
    for (const bool sharing : {false, true}) {
        test::LineExample example = test::line_example(sharing);
        std::vector<review::SolvedLine> lines{test::made_up_line(example)};
        lines[0].demand.reset();
        lines[0].unsolved = format::verbatim("Nothing holds the rail.");
        const review::LineReview review = review::review_line(example.project, example.posts, lines, 0);
        CHECK(review::loads_of_lines(lines, 1).counted == 1.0);
        if (sharing) CHECK(review.verdict == Verdict::incomplete);
        CHECK(review.movements.empty());
        // The rail itself is still checked as simple spans: 200 x 48/4.
        CHECK_CLOSE(review.checks.back().demand, 200.0, 1e-12, 0.0);
    }
}

TEST_CASE("Movement is the push times that of a pound, with limits only where they are invoked", "[unit]") {
    test::LineExample example = test::line_example(false);
    review::LineReview review = reviewed(example, std::nullopt);
    REQUIRE(review.movements.size() == 5);
    CHECK_CLOSE(review.movements[1].movement.total_in(), 200.0 * 3e-3, 1e-12, 0.0);
    CHECK_CLOSE(review.movements[4].movement.rail_in, 0.8, 1e-12, 0.0);
    CHECK_FALSE(review.movements[0].limit_in);
    for (review::ResolvedPost& post : example.posts)
        post.resolved.detail.basis.movement_limit = model::MovementLimit::astm_e985;
    review = reviewed(example, std::nullopt);
    CHECK_CLOSE(review.movements[0].limit_in.value(), 3.5, 1e-12, 0.0);         // 42/12
    CHECK_CLOSE(review.movements[4].limit_in.value(), 1.75 + 0.5, 1e-12, 0.0);  // 42/24 + 48/96
}

TEST_CASE("A base that may be softer than it is known to be lets nothing be counted on its line", "[unit]") {
    for (const bool sharing : {false, true}) {
        // The example says nothing of its joists' lengths.
        const test::LineExample example = test::line_example(sharing);
        const std::vector<review::ResolvedLine> rails{{"L1", example.rail}};
        demand::Kept kept;
        const std::vector<review::SolvedLine> lines = review::solve_lines(example.project, example.posts, rails, kept);
        CHECK(lines[0].demand.has_value() == !sharing);
        CHECK(review::loads_of_lines(lines, 1).counted == 1.0);
        const review::LineReview review = review::review_line(example.project, example.posts, lines, 0);
        if (sharing) CHECK(review.verdict == Verdict::incomplete);
    }
}

// Three posts, two spans of L, the rail in one piece of E I, pushed outward alone. The outer posts give c_e for a pound
// at their tops, the middle one c_m. Of a push at the middle post X goes into it; the rest bends the rail as a beam on
// the outer posts: (P - X)(L^3/(6 E I) + c_e/2) = X c_m. With c = h^3/(3 E I) for all: (L^3 + h^3)/(L^3 + 3 h^3), the
// closed form of rigid bases. The middle post counts at its stiffest, the others at their softest.
TEST_CASE("The middle of three posts shares as the closed form says", "[closed-form]") {
    test::LineExample example = test::line_example(false);
    for (review::ResolvedPost& post : example.posts) {
        test::push_outward_alone(post.resolved.detail);
        post.resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    }
    const std::vector<review::ResolvedLine> rails{{"L1", example.rail}};
    demand::Kept kept;
    const std::vector<review::SolvedLine> lines = review::solve_lines(example.project, example.posts, rails, kept);
    REQUIRE(lines.size() == 1);
    REQUIRE(lines[0].demand);
    const catalog::Resolved& base = example.posts.front().resolved;
    const demand::BaseStiffnessRange range = demand::find_base_stiffness(base).range.value();
    const double height_in = model::lever_height_in(base.detail);
    const double bent = checks::bent_in(checks::post_stiffness(base).value(), 1.0, height_in, height_in, 1.0);
    const demand::PostFlexibility post{bent, bent};
    const double soft = softness(post, std::min(range.soft.outward, range.soft.inward), height_in);
    const double stiff = softness(post, std::max(range.stiff.outward, range.stiff.inward), height_in);
    const double rail =
        std::pow(48.0, 3) / (6.0 * checks::rail_stiffness(example.rail, base.detail.basis).level_lb_in2);
    const double expected = (rail + 0.5 * soft) / (rail + 0.5 * soft + stiff);
    CHECK_CLOSE(lines[0].demand->posts[1].share.value, expected, 2e-3, 0.0);
    CHECK(expected < 1.0);
}

TEST_CASE("A line is pushed from every side that any of its posts is", "[unit]") {
    test::LineExample example = test::line_example(false);
    for (review::ResolvedPost& post : example.posts) {
        test::push_outward_alone(post.resolved.detail);
        post.resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    }
    const std::vector<review::ResolvedLine> rails{{"L1", example.rail}};
    const auto along = [&] {
        demand::Kept kept;
        return review::solve_lines(example.project, example.posts, rails, kept)[0]
            .demand.value()
            .posts[0]
            .connection.push_along.value;
    };
    CHECK(along() < 1e-6);
    example.posts[1].resolved.detail.loads.directions = model::Directions::all_round;
    CHECK(along() > 0.2);  // a third of it where the rail did not stretch
}

TEST_CASE("A rail that could not be solved is not known to hold, shared or not", "[unit]") {
    for (const bool sharing : {false, true}) {
        test::LineExample example = test::line_example(sharing);
        example.project.guard_lines.front().rail->connection = bracket(900.0);
        example.rail.rail.connection = bracket(900.0);
        review::SolvedLine line = test::made_up_line(example);
        line.demand.reset();
        line.unsolved = format::phrase("A part can move freely.");
        const review::LineReview review = review::review_line(example.project, example.posts, {line}, 0);
        CHECK(review.verdict == Verdict::incomplete);
        CHECK_FALSE(review.cause);
    }
}

TEST_CASE("A connection is said to be checked only where it has values", "[unit]") {
    test::LineExample example = test::line_example(false);
    model::RailConnection across_alone = bracket(900.0);
    across_alone.along_lb = across_alone.vertical_lb = 0.0;
    CHECK(any_says(reviewed(example, across_alone).assumptions, "only in the directions it has"));
    CHECK_FALSE(any_says(reviewed(example, bracket(900.0)).assumptions, "only in the directions it has"));
}
