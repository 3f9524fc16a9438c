// A project's shop drawings and cutting files, read back: one a plate, with marks, quantity, weight and revision.
#include "paper/project/plate_papers.h"

#include "paper/read_back.h"
#include "paper/weight.h"
#include "support/compare.h"
#include "support/three_posts.h"

#include <catch2/catch.hpp>

#include <numbers>

using namespace toehold;
using test::contains;

namespace {

paper::Issue issue() {
    paper::Issue made;
    made.date = "2026-11-30";
    made.file = "three-posts.xml";
    made.program = "Toehold";
    made.revision = "A";
    return made;
}

/// A second mount for the last post, with a thicker plate of the same id.
test::ResolvedPosts two_kinds() {
    model::Project project = test::three_posts();
    model::NamedMount end = project.mounts.front();
    end.id = "end post/left";
    std::get<model::PlateOnDeck>(end.mount).plate.thickness_in = 0.75;
    project.mounts.push_back(end);
    project.posts.back().mount = end.id;
    return test::resolved_posts(project);
}

}  // namespace

TEST_CASE("A plate weighs its area less its holes, times its thickness, times the density of steel", "[closed-form]") {
    // 9 1/2 in square with corners of 1/4 in radius: 90.25 - (4 - pi)/16 in2; four holes of 1/2 in; 5/8 in of steel at
    // 490 lb/ft3.
    const double area_in2 = 90.25 - (4.0 - std::numbers::pi) / 16.0 - 4.0 * std::numbers::pi / 16.0;
    const auto posts = test::resolved_posts(test::three_posts());
    CHECK(paper::plate_weight_lb(posts.posts.front().resolved) ==
          Approx(area_in2 * 0.625 * 490.0 / 1728.0).epsilon(2e-3));  // corners are chords of the arc
    CHECK(paper::weight_words(15.85, units::System::us) == "15.8 lb");
    CHECK(paper::weight_words(10.0, units::System::si) == "4.5 kg");
}

TEST_CASE("Three posts on one mount are one drawing, for three", "[process]") {
    const auto posts = test::resolved_posts(test::three_posts());
    const auto papers = paper::plate_papers("pdf", posts.posts, std::string(64, 'a'), issue());
    REQUIRE(papers.size() == 1);
    CHECK(papers.front().name == "line-post");
    CHECK(papers.front().marks.size() == 3);
    const std::string text = test::pdf_text(papers.front().bytes);
    for (const char* part : {"Mark", "P1 to P3", "Quantity", "Plate weighs", "15.8 lb", "Revision", "line-post"}) {
        INFO(part);
        CHECK(contains(text, part));
    }
    CHECK_FALSE(contains(text, "deck, P1"));
}

TEST_CASE("Another plate is another drawing and another cutting file, each with its marks", "[unit]") {
    const auto posts = two_kinds();
    const auto drawings = paper::plate_papers("svg", posts.posts, std::string(64, 'a'), issue());
    REQUIRE(drawings.size() == 2);
    CHECK(drawings[1].name == "end-post-left");
    CHECK(drawings[1].marks == std::vector<std::string>{"P3"});
    const auto cutting = paper::plate_papers("dxf", posts.posts, std::string(64, 'a'), issue());
    REQUIRE(cutting.size() == 2);
    CHECK(cutting[0].name == "HL-95");
    CHECK(cutting[1].name == "HL-95-2");
    CHECK(contains(cutting[0].bytes, "MARK P1, P2, QUANTITY 2, 15.8 lb EACH"));
    CHECK(contains(cutting[0].bytes, "REVISION A"));
    CHECK(contains(cutting[1].bytes, "MARK P3, QUANTITY 1, 19.0 lb EACH"));
    CHECK_THROWS_AS(paper::plate_papers("html", posts.posts, "", issue()), std::invalid_argument);
}

TEST_CASE("The same plate on two mounts is cut from one file", "[unit]") {
    model::Project project = test::three_posts();
    model::NamedMount also = project.mounts.front();
    also.id = "also";
    project.mounts.push_back(also);
    project.posts.back().mount = also.id;
    const auto posts = test::resolved_posts(project);
    CHECK(paper::plate_papers("dxf", posts.posts, "", issue()).size() == 1);
}

TEST_CASE("A name fits a file's name", "[unit]") {
    CHECK(paper::fit_for_file_name("../end post") == "..-end-post");
    CHECK(paper::fit_for_file_name("A-1_b.2") == "A-1_b.2");
}
