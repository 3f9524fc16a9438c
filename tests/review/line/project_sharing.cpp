// A whole project with a line that shares: its posts under their shares, and by themselves as without sharing.
#include "review/project_review.h"
#include "support/compare.h"
#include "support/example_detail.h"
#include "support/shipped.h"
#include "support/three_posts.h"
#include "xml/detail/project_file.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <stdexcept>

using namespace toehold;

namespace {

const std::filesystem::path data = TOEHOLD_DATA_FOLDER;

/// Heron Landing's three posts under a rail in one piece, pushed outward alone, on rigid plates: a small demand.
model::Project under_a_rail(bool sharing) {
    model::Project project = xml::read_project(data / "projects/heron-landing-three-posts.xml").project.value();
    project.loads.directions = model::Directions::outward;
    project.guard.handrail = false;
    project.basis.code = model::BuildingCode::irc_2021;
    project.basis.plate = model::PlateBehaviour::rigid;
    model::GuardLine& line = project.guard_lines.front();
    line.rail = model::Rail{model::RectangularTube{2.0, 2.0, 0.125, "steel-a500-b"}, model::RailRun::continuous};
    line.rail->connection = model::RailConnection{"saddle", "test report", 900.0, 700.0, 600.0};
    line.sharing = sharing;
    return project;
}

review::ProjectReview reviewed(const model::Project& project) {
    const std::vector<review::ResolvedPost> posts = test::resolved_posts(project).posts;
    const model::GuardLine& line = project.guard_lines.front();
    const catalog::RailResolution rail =
        catalog::resolve_rail(*line.rail, project.framing, test::shipped_catalog(), "rail");
    return review::review_project(project, posts, "digest", {{line.id, rail.rail.value()}});
}

}  // namespace

TEST_CASE("With sharing a post's push is its share, and the post by itself is as without sharing", "[property]") {
    const review::ProjectReview off = reviewed(under_a_rail(false)), on = reviewed(under_a_rail(true));
    REQUIRE(on.lines.size() == 1);
    CHECK(on.lines[0].verdict == review::Verdict::adequate);
    for (std::size_t post = 0; post < 3; ++post) {
        const review::PostShare& share = on.lines[0].posts[post];
        CHECK(share.share < 1.0);
        CHECK_CLOSE(on.posts[post].review.demand.value().cases.front().push_lb, 200.0 * share.share, 1e-9, 0.0);
        CHECK_CLOSE(off.posts[post].review.demand.value().cases.front().push_lb, 200.0, 1e-12, 0.0);
        REQUIRE(share.lone);
        CHECK_CLOSE(share.lone->ratio, off.posts[post].review.governing.ratio, 1e-9, 0.0);
        CHECK(share.lone_verdict == off.posts[post].review.verdict);
        CHECK(share.reviewed_in == off.lines[0].posts[post].reviewed_in);
        CHECK_FALSE(off.lines[0].posts[post].lone);
        CHECK(off.lines[0].posts[post].share == share.share);
    }
    // Of three posts the middle one shares most.
    CHECK(on.lines[0].posts[1].share < on.lines[0].posts[0].share);
}

TEST_CASE("A rail that nobody resolved is a fault, never a rail that is not there", "[bad-input]") {
    const model::Project project = under_a_rail(false);
    CHECK_THROWS_AS(review::review_project(project, {}, "digest"), std::invalid_argument);
}
