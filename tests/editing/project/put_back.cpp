// A base changed by itself and put back into its project.
#include "editing/project/put_back.h"

#include "support/compare.h"
#include "support/three_posts.h"

using namespace toehold;

namespace {

model::BaseDetail base_of_p2(const model::Project& project) {
    return model::detail_of(project, *model::find_post(project, "P2"));
}

}  // namespace

TEST_CASE("a mount changed in a copy goes back, for every post that stands on it", "[unit]") {
    const model::Project project = test::three_posts();
    const model::BaseDetail before = base_of_p2(project);
    model::BaseDetail base = before;
    std::get<model::RectangularTube>(base.post).wall_in = 0.25;
    const editing::PutBack made = editing::put_back(project, "P2", before, base);
    REQUIRE(made.project);
    CHECK(made.posts == std::vector<std::string>{"P1", "P2", "P3"});
    CHECK(made.left_behind.empty());
    CHECK(made.project->mounts.front().post == base.post);
    CHECK(base_of_p2(*made.project) == base);
    CHECK(made.project->framing == project.framing);
}

TEST_CASE("what belongs to the whole project stays in the copy, and is named", "[unit]") {
    const model::Project project = test::three_posts();
    const model::BaseDetail before = base_of_p2(project);
    model::BaseDetail base = before;
    std::get<model::RectangularTube>(base.post).wall_in = 0.25;
    base.framing.blocks.front().depth_in = 5.5;
    base.guard.height_in = 36.0;
    const editing::PutBack made = editing::put_back(project, "P2", before, base);
    REQUIRE(made.project);
    CHECK(made.project->framing == project.framing);
    CHECK(made.project->guard == project.guard);
    CHECK(format::english(made.left_behind).find("framing and guard") != std::string::npos);
}

TEST_CASE("nothing to put back, a post that has gone and a mount that cannot be are refused", "[bad-input]") {
    const model::Project project = test::three_posts();
    const model::BaseDetail before = base_of_p2(project);
    CHECK_FALSE(editing::put_back(project, "P2", before, before).project);
    CHECK_FALSE(editing::put_back(project, "P9", before, before).project);
    model::BaseDetail base = before;
    std::get<model::RectangularTube>(base.post).wall_in = 2.0;
    const editing::PutBack made = editing::put_back(project, "P2", before, base);
    CHECK_FALSE(made.project);
    CHECK_FALSE(made.refusal.empty());
}
