// The drawings of a project's lines of guard as files.
#include "paper/project/line_papers.h"

#include "support/example_detail.h"

#include <catch2/catch.hpp>

#include <stdexcept>

using namespace toehold;

namespace {

/// Two lines of two posts each.
model::Project two_lines() {
    model::Project project = model::project_of(test::example_detail());
    const std::string mount = project.mounts.front().id;
    project.posts.clear();
    for (int index = 0; index < 4; ++index) {
        model::PlacedPost post;
        post.id = "P" + std::to_string(index + 1);
        post.at = {60.0 * index, 0.0};
        post.mount = mount;
        project.posts.push_back(post);
    }
    model::GuardLine first, second;
    first.id = "front rail";
    first.posts = {"P1", "P2"};
    second.id = "L2";
    second.posts = {"P3", "P4"};
    project.guard_lines = {first, second};
    return project;
}

}  // namespace

TEST_CASE("Each line of guard is a drawing of its own", "[unit]") {
    const auto papers = paper::line_papers(paper::Kind::plan, "svg", two_lines(), {}, {});
    REQUIRE(papers.size() == 2);
    CHECK(papers[0].name == "front-rail");
    CHECK(papers[1].name == "L2");
    CHECK(papers[1].bytes.find("<svg") != std::string::npos);
    CHECK(paper::line_papers(paper::Kind::elevation, "pdf", two_lines(), {}, {})[0].bytes.starts_with("%PDF"));
}

TEST_CASE("A line of guard has no cutting file and no section", "[bad-input]") {
    CHECK_THROWS_AS(paper::line_papers(paper::Kind::plan, "dxf", two_lines(), {}, {}), std::invalid_argument);
    CHECK_THROWS_AS(paper::line_papers(paper::Kind::section, "svg", two_lines(), {}, {}), std::invalid_argument);
}
