// A line of guard drawn: every post and its mark, its share, the rail's spans, corners and walls.
#include "drawing/line/line_drawings.h"

#include "drawing/scene_reading.h"
#include "review/line/line_review.h"
#include "support/example_detail.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace toehold;

namespace {

struct Drawn {
    model::Project project;
    review::LineReview review;
    [[nodiscard]] drawing::LineSubject subject() const { return {project, project.guard_lines.front(), &review, {}}; }
};

/// P1 and P2 along x, P3 and P4 round a corner; a wall before P1.
Drawn corner_line() {
    Drawn drawn;
    drawn.project = model::project_of(test::example_detail());
    const std::string mount = drawn.project.mounts.front().id;
    drawn.project.posts.clear();
    const model::Position places[] = {{0.0, 0.0}, {72.0, 0.0}, {72.0, -60.0}, {72.0, -120.0}};
    const double shares[] = {0.84, 0.62, 0.71, 0.93};
    model::GuardLine line;
    line.id = "L1";
    drawn.review.id = "L1";
    drawn.review.rail = drawn.review.continuous = true;
    for (std::size_t index = 0; index < 4; ++index) {
        model::PlacedPost post;
        post.id = "P" + std::to_string(index + 1);
        post.at = places[index];
        post.mount = mount;
        post.facing = index < 2 ? model::PostFacing::plus_y : model::PostFacing::plus_x;
        drawn.project.posts.push_back(post);
        line.posts.push_back(post.id);
        review::PostShare share;
        share.post = post.id;
        share.share = shares[index];
        drawn.review.posts.push_back(share);
    }
    line.rail = model::Rail{model::RectangularTube{2.0, 1.5, 0.125, "steel"}, model::RailRun::continuous};
    line.rail->splices_in = {100.0};
    line.first_wall = model::WallEnd{30.0};
    drawn.project.guard_lines = {line};
    return drawn;
}

const model::PartId second{model::PartKind::post, "P2"};

}  // namespace

TEST_CASE("The plan of a line shows each post with its share", "[unit]") {
    const Drawn drawn = corner_line();
    const drawing::Scene scene = drawing::line_plan(drawn.subject());
    CHECK(test::sound(scene));
    for (const char* words : {"P1", "P2", "P3", "P4", "0.84", "0.62", "0.71", "0.93", "72", "60"})
        CHECK(test::says(scene, words));
    CHECK(test::parts_drawn(scene).contains(model::rail_part("P1", "P2")));
    // From the wall to the corner, and down the return.
    CHECK(scene.bounds.low.x == Approx(-30.0));
    CHECK(scene.bounds.high.x == Approx(72.0));
    CHECK(scene.bounds.low.y == Approx(-120.0));
    CHECK_FALSE(test::circles(scene, {model::PartKind::rail}).empty());
}

TEST_CASE("A share's bar is as long against its frame as the share", "[property]") {
    const Drawn drawn = corner_line();
    const drawing::Scene scene = drawing::line_plan(drawn.subject());
    const auto length_mm = [](const drawing::Path& path) {
        const auto& corners = path.contours.front();
        return std::hypot(corners[1].paper_mm.x - corners[0].paper_mm.x, corners[1].paper_mm.y - corners[0].paper_mm.y);
    };
    double whole_mm = 0.0, share_mm = 0.0;
    for (const drawing::Path& path : test::paths(scene, second)) {
        if (path.pen == drawing::Pen::capacity && path.closed) whole_mm = length_mm(path);
        if (path.fill == drawing::Fill::demand || path.fill == drawing::Fill::demand_pale) share_mm = length_mm(path);
    }
    REQUIRE(whole_mm > 0.0);
    CHECK(share_mm / whole_mm == Approx(0.62));
}

TEST_CASE("The elevation unrolls the line and names its corner", "[unit]") {
    const Drawn drawn = corner_line();
    const drawing::Scene scene = drawing::line_elevation(drawn.subject());
    CHECK(test::sound(scene));
    CHECK(test::says(scene, "P4"));
    CHECK(test::says(scene, "corner 90\u00b0"));
    CHECK(test::says(scene, "guard 42"));
    CHECK(scene.bounds.low.x == Approx(-30.0));
    CHECK(scene.bounds.high.x == Approx(192.0));
    CHECK(scene.bounds.high.y == Approx(42.0));
}

TEST_CASE("A line not solved, or one that names a post that is not there, is drawn as far as it goes", "[bad-input]") {
    Drawn drawn = corner_line();
    drawing::LineSubject subject = drawn.subject();
    subject.review = nullptr;
    CHECK_FALSE(test::says(drawing::line_plan(subject), "0.62"));
    drawn.project.guard_lines.front().posts.push_back("P9");
    CHECK(test::sound(drawing::line_plan(drawn.subject())));
    CHECK(drawing::line_elevation(drawn.subject()).items.empty());
}
