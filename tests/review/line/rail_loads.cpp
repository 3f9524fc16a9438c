// What pushes on a rail: wind in its combinations, and loads the user states, by hand.
#include "review/line/rail_loads.h"

#include "checks/run_check.h"
#include "review/line/line_example.h"
#include "support/compare.h"
#include "support/example_detail.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

namespace {

bool any_says(const std::vector<format::Phrase>& phrases, const std::string& words) {
    return std::any_of(phrases.begin(), phrases.end(),
                       [&words](const format::Phrase& one) { return test::says(one, words); });
}

/// 30 psf on a face 42 in high, half of it solid, its center at 21 in under a rail at 42 in: 30/144 x 42 x 0.5 x 0.5 =
/// 2.1875 lb/in of rail.
test::LineExample windy() {
    test::LineExample example = test::line_example(false);
    for (review::ResolvedPost& post : example.posts) {
        model::WindLoad& wind = post.resolved.detail.loads.wind.emplace();
        wind.pressure_psf = 30.0;
        wind.solid_ratio = 0.5;
        post.resolved.detail.guard.height_in = 42.0;
    }
    return example;
}

constexpr double wind_lb_per_in = 30.0 / 144.0 * 42.0 * 0.5 * 0.5;

}  // namespace

TEST_CASE("The rail takes its part of the infill's wind, alone and with the load, by ASCE 7", "[closed-form]") {
    const test::LineExample example = windy();
    const review::SolvedLine line = test::made_up_line(example);
    const model::BaseDetail& detail = example.posts.front().resolved.detail;
    CHECK_CLOSE(review::rail_wind_lb_per_in(line, detail), wind_lb_per_in, 1e-12, 0.0);
    const std::vector<review::RailCombination> all = review::rail_combinations(line, detail);
    REQUIRE(all.size() == 3);
    CHECK_CLOSE(all[0].loads.push_lb, 200.0, 1e-12, 0.0);
    CHECK(all[0].loads.wind_lb_per_in == 0.0);
    CHECK_CLOSE(all[1].loads.wind_lb_per_in, 0.6 * wind_lb_per_in, 1e-12, 0.0);
    CHECK(all[1].loads.push_lb == 0.0);
    CHECK_CLOSE(all[2].loads.push_lb, 0.75 * 200.0, 1e-12, 0.0);
    CHECK_CLOSE(all[2].loads.line_lb_per_in, 0.75 * 50.0 / 12.0, 1e-12, 0.0);
    CHECK_CLOSE(all[2].loads.wind_lb_per_in, 0.75 * 0.6 * wind_lb_per_in, 1e-12, 0.0);
    CHECK(all[2].duration == demand::LoadDuration::wind);
}

TEST_CASE("Wind on an area stated for a post is over the length the file states, whatever the post's rail", "[unit]") {
    test::LineExample example = windy();
    review::SolvedLine line = test::made_up_line(example);
    model::BaseDetail& detail = example.posts.front().resolved.detail;
    detail.loads.wind->area_ft2 = 14.0;
    detail.loads.line = model::LineLoad{};
    detail.loads.line->spacing_ft = 6.0;  // what its spans made of it
    // 30 psf x 14 ft2 / 2 at the rail over the shortest half span, and over 4 ft.
    CHECK_CLOSE(review::rail_wind_lb_per_in(line, detail), 210.0 / 24.0, 1e-12, 0.0);
    line.stated_length_in = 48.0;
    CHECK_CLOSE(review::rail_wind_lb_per_in(line, detail), 210.0 / 48.0, 1e-12, 0.0);
}

TEST_CASE("Under LRFD wind counts whole, with the whole of the guard's load", "[closed-form]") {
    test::LineExample example = windy();
    model::BaseDetail& detail = example.posts.front().resolved.detail;
    detail.basis.method = model::Method::lrfd;
    const review::SolvedLine line = test::made_up_line(example);
    const std::vector<review::RailCombination> all = review::rail_combinations(line, detail);
    REQUIRE(all.size() == 3);
    CHECK_CLOSE(all[0].loads.push_lb, 320.0, 1e-12, 0.0);
    CHECK_CLOSE(all[2].loads.push_lb, 200.0, 1e-12, 0.0);
    CHECK_CLOSE(all[2].loads.wind_lb_per_in, wind_lb_per_in, 1e-12, 0.0);
    detail.loads.wind->with_live_load = false;
    CHECK(review::rail_combinations(line, detail).size() == 2);
}

TEST_CASE("Wind bends the rail of a line, and the review says how much of it the rail takes", "[closed-form]") {
    test::LineExample example = windy();
    for (review::ResolvedPost& post : example.posts) post.resolved.detail.loads.wind->pressure_psf = 300.0;
    std::vector<review::SolvedLine> lines{test::made_up_line(example)};
    const review::LineReview review = review::review_line(example.project, example.posts, lines, 0);
    const auto bending = std::find_if(review.checks.begin(), review.checks.end(),
                                      [](const auto& one) { return one.id == "rail-bending"; });
    REQUIRE(bending != review.checks.end());
    // 0.75 x 13 x 200 = 1950 lb in of the solved push, over 0.75 x 200 x 48/4 = 1800; wind 9.844 lb/in: w L^2/8 = 2835
    // beside the simple span's 1800, more than 1950 alone.
    const double wind = 0.45 * 10.0 * wind_lb_per_in * 48.0 * 48.0 / 8.0;
    CHECK_CLOSE(bending->demand, 1800.0 + wind, 1e-9, 0.0);
    CHECK(any_says(review.assumptions, "0.50 of the wind on the infill"));
    CHECK(review.load_along);
}

TEST_CASE("A load the user states reaches the rail by its height, and without wind none is claimed", "[unit]") {
    test::LineExample example = test::line_example(false);
    for (review::ResolvedPost& post : example.posts) {
        post.resolved.detail.guard.height_in = 42.0;
        post.resolved.detail.loads.user = {{"banner", 900.0, 0.0, 21.0, "test"}, {"sign", 300.0, 0.0, {}, "test"}};
    }
    const std::vector<review::SolvedLine> lines{test::made_up_line(example)};
    const auto all = review::rail_combinations(lines[0], example.posts.front().resolved.detail);
    REQUIRE(all.size() == 1);
    CHECK_CLOSE(all[0].loads.push_lb, 450.0, 1e-12, 0.0);
    const review::LineReview review = review::review_line(example.project, example.posts, lines, 0);
    CHECK(review.push_lb == 200.0);  // what it moves under
    CHECK(any_says(review.assumptions, "No wind is specified in the file"));
    CHECK(any_says(review.assumptions, "Load banner is counted on the rail as a push at any point, 0.50"));
}
