// Spans, turns, roles and lengths of rail, by hand on a line with a corner, a stair, a wall and a neighbor line.
#include "model/line_geometry.h"

#include "support/compare.h"

#include <catch2/catch.hpp>

#include <numbers>

using namespace toehold;
using model::PostRole;

namespace {

/// P1 to P3 along x 40 and 50 in apart, a corner at P3, P4 30 in outward of it, then down a stair to P5: 40 in outward
/// and 30 in down, which is 50 in of rail. A wall 12 in before P1. P6 stands alone; P7 and P8 make a line of their own.
model::Project project() {
    model::Project all;
    all.guard.height_in = 42.0;
    all.mounts = {{"M1", {}, {}}, {"M2", {}, {}}};
    all.posts = {{"P1", {0.0, 0.0}, "M1"},   {"P2", {40.0, 0.0}, "M1"},  {"P3", {90.0, 0.0}, "M2"},
                 {"P4", {90.0, 30.0}, "M1"}, {"P5", {90.0, 70.0}, "M1"}, {"P6", {0.0, 90.0}, "M1"},
                 {"P7", {0.0, 50.0}, "M1"},  {"P8", {60.0, 50.0}, "M1"}};
    all.posts[4].rise_in = -30.0;
    model::GuardLine line;
    line.id = "L1";
    line.posts = {"P1", "P2", "P3", "P4", "P5"};
    line.first_wall = model::WallEnd{12.0, std::nullopt};
    all.guard_lines = {line, {"L2", {"P7", "P8"}}};
    return all;
}

double half_in(const model::Project& all, const std::string& post) { return model::half_spans_in(all, post).value(); }

}  // namespace

TEST_CASE("Spans of a line, with the wall's stretch and the stair's slope", "[closed-form]") {
    const model::Project all = project();
    const std::vector<model::Span> spans = model::spans_of(all, all.guard_lines.front());
    REQUIRE(spans.size() == 5);
    CHECK(spans[0] == model::Span{"", "P1", 12.0, 0.0, 0.0});
    CHECK(spans[1] == model::Span{"P1", "P2", 40.0, 0.0, 0.0});
    CHECK(spans[4].rise_in == -30.0);
    CHECK_CLOSE(model::length_in(spans[4]), 50.0, 0.0, 1e-12);
    CHECK_CLOSE(model::slope_rad(spans[4]), std::atan(0.75), 0.0, 1e-12);
    CHECK_CLOSE(spans[4].heading_rad, 0.5 * std::numbers::pi, 0.0, 1e-12);
    CHECK(model::stations_in(all, all.guard_lines.front()) == std::vector<double>{0.0, 40.0, 90.0, 120.0, 160.0});
}

TEST_CASE("The rail to a wall goes on as steep as the span before it", "[closed-form]") {
    model::Project all = project();
    all.guard_lines[0].first_wall.reset();
    all.guard_lines[0].last_wall = model::WallEnd{20.0, std::nullopt};
    const model::Span span = model::spans_of(all, all.guard_lines[0]).back();
    CHECK(span.from == "P5");
    CHECK(span.to.empty());
    CHECK_CLOSE(span.rise_in, -15.0, 0.0, 1e-12);
    CHECK_CLOSE(half_in(all, "P5"), 0.5 * 50.0 + 0.5 * 25.0, 0.0, 1e-12);
    CHECK(model::role_of(all, "P5") == PostRole::line);
    CHECK(model::role_of(all, "P1") == PostRole::end);
}

TEST_CASE("Turns are to the left of the line where it turns counterclockwise", "[closed-form]") {
    model::Project all = project();
    const std::vector<double> turns = model::turns_rad(all, all.guard_lines.front());
    REQUIRE(turns.size() == 5);
    CHECK_CLOSE(turns[2], 0.5 * std::numbers::pi, 0.0, 1e-12);
    for (const std::size_t straight : std::vector<std::size_t>{0, 1, 3, 4}) CHECK(turns[straight] == 0.0);
    all.posts[3].at.y_in = -30.0;
    all.posts[4].at.y_in = -70.0;
    CHECK_CLOSE(model::turns_rad(all, all.guard_lines.front())[2], -0.5 * std::numbers::pi, 0.0, 1e-12);
}

TEST_CASE("Roles follow from the places, and make quantities", "[unit]") {
    const model::Project all = project();
    const std::vector<PostRole> roles{PostRole::line, PostRole::line, PostRole::corner, PostRole::line,
                                      PostRole::end,  PostRole::lone, PostRole::end,    PostRole::end};
    for (std::size_t post = 0; post < roles.size(); ++post) {
        CAPTURE(all.posts[post].id);
        CHECK(model::role_of(all, all.posts[post].id) == roles[post]);
    }
    CHECK(model::count_roles(all) ==
          std::vector<model::RoleCount>{
              {PostRole::line, 3}, {PostRole::corner, 1}, {PostRole::end, 3}, {PostRole::lone, 1}});
    CHECK(model::post_kinds(all) == std::vector<model::PostKind>{{"M1", PostRole::line, {"P1", "P2", "P4"}},
                                                                 {"M1", PostRole::end, {"P5", "P7", "P8"}},
                                                                 {"M1", PostRole::lone, {"P6"}},
                                                                 {"M2", PostRole::corner, {"P3"}}});
}

TEST_CASE("A rail that turns a little is no corner, and where two lines meet at an angle is one", "[unit]") {
    model::Project all = project();
    all.posts[2].at.y_in = 8.7;  // 50 in on: 9.87 degrees; P3 itself still turns by 80
    CHECK(model::role_of(all, "P2") == PostRole::line);
    all.posts[2].at.y_in = 8.9;  // 10.09 degrees
    CHECK(model::role_of(all, "P2") == PostRole::corner);
    all.guard_lines = {{"L1", {"P1", "P2"}}, {"L2", {"P1", "P7"}}};
    CHECK(model::role_of(all, "P1") == PostRole::corner);
    all.guard_lines.push_back({"L3", {"P1", "P6"}});
    CHECK(model::role_of(all, "P1") == PostRole::corner);
}

TEST_CASE("A post takes half of the spans beside it, along the rail", "[closed-form]") {
    const model::Project all = project();
    CHECK_CLOSE(half_in(all, "P1"), 6.0 + 20.0, 0.0, 1e-12);  // half of the wall's stretch and of the span
    CHECK_CLOSE(half_in(all, "P2"), 20.0 + 25.0, 0.0, 1e-12);
    CHECK_CLOSE(half_in(all, "P3"), 25.0 + 15.0, 0.0, 1e-12);
    CHECK_CLOSE(half_in(all, "P4"), 15.0 + 25.0, 0.0, 1e-12);
    CHECK_CLOSE(half_in(all, "P5"), 25.0, 0.0, 1e-12);
    CHECK_FALSE(model::half_spans_in(all, "P6"));
}

TEST_CASE("Of half the spans and what the loads say the greater counts, unless the post has its own", "[unit]") {
    using From = model::RailLength::From;
    model::Project all = project();
    const model::PlacedPost middle = all.posts[1], lone = all.posts[5];
    CHECK(model::rail_length(all, middle) == model::RailLength{45.0, From::spans});
    CHECK_FALSE(model::rail_length(all, lone));
    CHECK(model::detail_of(all, middle).guard.tributary_length_in == 45.0);
    all.guard.tributary_length_in = 44.0;
    CHECK(model::rail_length(all, middle) == model::RailLength{45.0, From::spans});
    CHECK(model::rail_length(all, lone) == model::RailLength{44.0, From::loads});
    all.guard.tributary_length_in = 48.0;
    CHECK(model::rail_length(all, middle) == model::RailLength{48.0, From::loads});
    CHECK(model::detail_of(all, middle).guard.tributary_length_in == 48.0);
    all.loads.line = model::LineLoad{50.0, 3.0, 0.0};  // 36 in, less than half of the spans
    const model::BaseDetail raised = model::detail_of(all, middle);
    CHECK(raised.guard.tributary_length_in == 48.0);
    CHECK_CLOSE(raised.loads.line->spacing_ft, 4.0, 1e-12, 0.0);
    model::PlacedPost own = middle;
    own.rail_length_ft = 2.0;
    CHECK(model::rail_length(all, own) == model::RailLength{24.0, From::post});
    CHECK(model::detail_of(all, own).guard.tributary_length_in == 24.0);
    CHECK(model::detail_of(all, own).loads.line->spacing_ft == 2.0);
}

TEST_CASE("A line of posts that are not there is refused aloud", "[bad-input]") {
    model::Project all = project();
    all.guard_lines[1].posts.push_back("P99");
    CHECK_THROWS_AS(model::spans_of(all, all.guard_lines[1]), std::out_of_range);
    CHECK(model::spans_of(all, {"L3", {"P1"}}).empty());
}

TEST_CASE("A corner post, and one under a rail that runs askew, do not face their rails", "[unit]") {
    model::Project all = project();
    const auto faces = [&all](const char* id) { return model::faces_its_rails(all, *model::find_post(all, id)); };
    CHECK(faces("P1"));
    CHECK(faces("P2"));
    CHECK_FALSE(faces("P3"));  // the corner
    CHECK_FALSE(faces("P4"));  // its rail runs along +y, where it faces
    CHECK(faces("P6"));        // in no line
    all.posts[3].facing = model::PostFacing::plus_x;
    CHECK(faces("P4"));
    all.posts[7].at = {60.0, 53.0};  // 2.9 degrees
    CHECK_FALSE(faces("P7"));
}

TEST_CASE("Under fewer directions a corner post is pushed square to both of its rails", "[property]") {
    model::Project all = project();
    all.loads.directions = model::Directions::across;
    all.loads.wind.emplace();
    const auto loads = [&all](const char* id) { return model::detail_of(all, *model::find_post(all, id)).loads; };
    CHECK(loads("P2").directions == model::Directions::across);
    CHECK(loads("P3").directions == model::Directions::all_round);
    CHECK(all.loads.directions == model::Directions::across);
}

TEST_CASE("The infill's solid part is that of the line, where its wind states none", "[unit]") {
    model::Project all = project();
    all.loads.wind.emplace();
    const auto ratio = [&all] { return model::detail_of(all, all.posts[1]).loads.wind->solid_ratio; };
    CHECK_FALSE(ratio());
    all.guard_lines[0].infill = model::Infill{model::InfillKind::pickets, 0.3};
    CHECK(ratio() == 0.3);
    all.guard_lines.push_back(all.guard_lines[0]);
    all.guard_lines.back().infill->solid_ratio = 0.5;
    CHECK(ratio() == 0.5);
    all.guard_lines.back().infill.reset();
    CHECK_FALSE(ratio());  // one of its lines does not say: all of it counts
    all.loads.wind->solid_ratio = 0.7;
    CHECK(ratio() == 0.7);
}
