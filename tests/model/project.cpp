// A project and the details it stands for.
#include "model/project.h"

#include "model/lopsided_framing.h"
#include "model/member.h"
#include "support/compare.h"

#include <catch2/catch.hpp>

using namespace toehold;
using model::PlanAxis;

namespace {

model::BaseDetail detail() {
    model::BaseDetail one;
    one.name = "one";
    one.guard.height_in = 42.0;
    one.post = model::RectangularTube{2.0, 2.0, 0.125, "steel-a500-b"};
    one.framing = test::lopsided_framing();
    one.loads.line = model::LineLoad{50.0, 4.0, 0.0};
    one.remarks = {{"", "", "see the letter", "", "", model::Remark::State::open}};
    return one;
}

}  // namespace

TEST_CASE("Framing seen from a place is moved by that place and nothing else", "[unit]") {
    const model::Position place{3.0, -5.0};
    const std::vector<model::Member> before = model::members(test::lopsided_framing());
    const std::vector<model::Member> after = model::members(model::seen_from(test::lopsided_framing(), place));
    REQUIRE(before.size() == after.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
        const bool along_x = before[i].along == PlanAxis::x;
        CHECK_CLOSE(after[i].from_in, before[i].from_in - (along_x ? 3.0 : -5.0), 1e-15, 1e-12);
        CHECK_CLOSE(after[i].to_in, before[i].to_in - (along_x ? 3.0 : -5.0), 1e-15, 1e-12);
        CHECK_CLOSE(after[i].across_in, before[i].across_in - (along_x ? -5.0 : 3.0), 1e-15, 1e-12);
    }
    CHECK(model::seen_from(test::lopsided_framing(), place).supports.front().at_in == -91.0);
    CHECK(model::seen_from(model::seen_from(test::lopsided_framing(), place), {-3.0, 5.0}) == test::lopsided_framing());
    CHECK(model::seen_from(test::lopsided_framing(), {}) == test::lopsided_framing());
}

TEST_CASE("A lone detail is a project of one post and comes back from it", "[unit]") {
    const model::Project project = model::project_of(detail());
    CHECK(model::is_lone_detail(project));
    model::BaseDetail back = model::detail_of(project, project.posts.front());
    CHECK(back.remarks.empty());
    back.remarks = detail().remarks;
    CHECK(back == detail());
}

TEST_CASE("A post of a project has its mount, its place and its own length of rail", "[unit]") {
    model::Project project = model::project_of(detail());
    project.posts.push_back({"P2", {48.0, 0.0}, project.mounts.front().id, 2.0});
    CHECK_FALSE(model::is_lone_detail(project));
    const model::BaseDetail second = model::detail_of(project, project.posts[1]);
    CHECK(second.name == "one, P2");
    CHECK(second.project == "one");
    CHECK(second.framing == model::seen_from(test::lopsided_framing(), {48.0, 0.0}));
    CHECK(second.loads.line->spacing_ft == 2.0);
    CHECK(model::detail_of(project, project.posts[0]).loads.line->spacing_ft == 4.0);
    project.posts[1].mount = "none";
    CHECK_THROWS(model::detail_of(project, project.posts[1]));
}

TEST_CASE("What acts straight down along the rail goes with the length of rail", "[unit]") {
    model::LineLoad load{50.0, 4.0, 400.0};
    model::set_spacing(load, 8.0);
    CHECK(load.spacing_ft == 8.0);
    CHECK(load.down_lb == 800.0);
    CHECK(load.push_lb_per_ft == 50.0);
}
