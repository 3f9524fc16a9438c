// A post's own blocks in a project, and which posts are built alike.
#include "paper/project/near_post.h"

#include "support/three_posts.h"

#include <catch2/catch.hpp>

#include <set>

using namespace toehold;

namespace {

std::vector<std::string> blocks_at(const model::Project& project, std::size_t post) {
    std::vector<std::string> ids;
    for (const model::Block& block : paper::detail_at_post(project, project.posts.at(post)).framing.blocks)
        ids.push_back(block.id);
    return ids;
}

model::BaseDetail built_at(const model::Project& project, std::size_t post) {
    return paper::as_built(paper::detail_at_post(project, project.posts.at(post)));
}

using Ids = std::vector<std::string>;

}  // namespace

TEST_CASE("Each of three posts 4 ft apart has the two blocks under it, moved to it", "[unit]") {
    const model::Project project = test::three_posts();
    CHECK(blocks_at(project, 0) == Ids{"B1", "B2"});
    CHECK(blocks_at(project, 1) == Ids{"B3", "B4"});
    CHECK(blocks_at(project, 2) == Ids{"B5", "B6"});
    // B3 runs from 40 3/4 in; post P2 stands at 48 in.
    CHECK(paper::detail_at_post(project, project.posts[1]).framing.blocks.front().from_in == -7.25);
}

TEST_CASE("A block between two posts is both's, and what holds a block comes with it", "[unit]") {
    model::Project project = test::three_posts();
    model::Block between = project.framing.blocks.front();
    between.id = "B7";
    between.from_in = 16.75;
    between.to_in = 31.25;  // its middle at 24 in
    project.framing.blocks.push_back(between);
    CHECK(blocks_at(project, 0) == Ids{"B1", "B2", "B7"});
    CHECK(blocks_at(project, 1) == Ids{"B3", "B4", "B7"});
    CHECK(blocks_at(project, 2) == Ids{"B5", "B6"});
    project.framing.blocks.at(4).to_end.joist = "B7";  // B5 is held by it
    CHECK(blocks_at(project, 2) == Ids{"B5", "B6", "B7"});
}

TEST_CASE("No block of a project is left out", "[property]") {
    model::Project project = test::three_posts();
    for (int count = 0; count < 12; ++count) {
        model::Block far = project.framing.blocks.front();
        far.id = "F" + std::to_string(count);
        far.across_in = -12.0 - 7.0 * count;
        far.from_in = 11.0 * count - 20.0;
        far.to_in = far.from_in + 14.5;
        project.framing.blocks.push_back(far);
    }
    std::set<std::string> seen;
    for (std::size_t post = 0; post < project.posts.size(); ++post) {
        for (const std::string& id : blocks_at(project, post)) seen.insert(id);
    }
    CHECK(seen.size() == project.framing.blocks.size());
}

TEST_CASE("Posts are built alike whatever their blocks are called, and not where one block stands elsewhere",
          "[unit]") {
    model::Project project = test::three_posts();
    CHECK(built_at(project, 0) == built_at(project, 1));
    CHECK(built_at(project, 1) == built_at(project, 2));
    project.framing.blocks.at(2).across_in += 0.25;
    CHECK_FALSE(built_at(project, 0) == built_at(project, 1));
    CHECK(built_at(project, 0) == built_at(project, 2));
    project.framing.blocks.at(4).width_in = 1.5;
    CHECK_FALSE(built_at(project, 0) == built_at(project, 2));
}
