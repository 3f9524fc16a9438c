// Lines of guard over posts on the side of a rim, and over such posts beside one on a plate: both are solved, and a
// base that gives more takes less of a push.
#include "review/line/review_line.h"

#include "support/compare.h"
#include "support/shipped.h"
#include "support/side_detail.h"
#include "support/three_posts.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

model::Rail pipe() {
    model::Rail rail;
    rail.section = model::RoundTube{1.66, 0.14, "steel-a53-b"};
    rail.run = model::RailRun::continuous;
    return rail;
}

std::vector<review::LineReview> lines_of(const model::Project& project) {
    const model::Problems problems = model::validate(project);
    for (const model::Problem& problem : problems) UNSCOPED_INFO(model::sentence(problem));
    REQUIRE(problems.empty());
    const model::GuardLine& line = project.guard_lines.front();
    const catalog::RailResolution rail =
        catalog::resolve_rail(*line.rail, project.framing, test::shipped_catalog(), "rail");
    return review::review_lines(project, test::resolved_posts(project).posts, {{line.id, rail.rail.value()}});
}

model::GuardLine line_of(const std::vector<std::string>& posts) {
    model::GuardLine line;
    line.id = "L1";
    line.posts = posts;
    line.rail = pipe();
    line.sharing = true;
    return line;
}

}  // namespace

TEST_CASE("a line of posts on a rim's side is solved", "[unit]") {
    model::Project project = model::project_of(test::side_detail());
    REQUIRE(project.posts.size() == 1);
    model::PlacedPost second = project.posts.front();
    second.id = "P2";
    second.at.x_in = 32.0;
    project.posts.push_back(second);
    project.guard_lines = {line_of({project.posts.front().id, second.id})};
    const std::vector<review::LineReview> lines = lines_of(project);
    REQUIRE(lines.size() == 1);
    INFO(format::english(lines[0].unsolved));
    REQUIRE(lines[0].proof.has_value());
    REQUIRE(lines[0].posts.size() == 2);
    for (const review::PostShare& post : lines[0].posts) {
        CHECK(post.share > 0.5);
        CHECK(post.share <= 1.0 + 1e-9);
    }
    // Both stand 8 in from a joist, on the same side of one in the middle of the rim: nearly alike.
    CHECK_CLOSE(lines[0].posts[0].share, lines[0].posts[1].share, 0.1, 0.0);
}

TEST_CASE("a line of posts on plates and one on the rim's side is solved", "[unit]") {
    model::Project project = test::three_posts();
    const model::BaseDetail side = test::side_detail();
    model::NamedMount mount{"on-the-rim", side.post, side.mount};
    std::get<model::SideFastened>(mount.mount).member = project.framing.rims.front().id;
    project.mounts.push_back(mount);
    const model::Rim& rim = project.framing.rims.front();
    project.posts.at(1).mount = mount.id;
    project.posts.at(1).at.y_in = rim.at_in + 0.5 * rim.width_in + 0.5 * 3.5;
    project.guard_lines = {line_of({"P1", "P2", "P3"})};
    const std::vector<review::LineReview> lines = lines_of(project);
    REQUIRE(lines.size() == 1);
    INFO(format::english(lines[0].unsolved));
    REQUIRE(lines[0].proof.has_value());
    REQUIRE(lines[0].posts.size() == 3);
    for (const review::PostShare& post : lines[0].posts) {
        CHECK(post.share > 0.3);
        CHECK(post.share < 1.3);  // over 1 by the rail's leverage past a post that gives
    }
    // The post in the middle, on the rim that rolls, has the softer base and takes the least of a push.
    CHECK(lines[0].posts[1].share < lines[0].posts[0].share);
}
