// What of a post stands on the plate, seen from above, and what a post may not be.
#include "model/validate.h"

#include "support/compare.h"
#include "support/problems.h"

#include <algorithm>

using namespace toehold::model;
using toehold::test::tells_at;

TEST_CASE("a foot is the tube, its stub, its bars or the shoe", "[unit]") {
    RectangularTube tube{2.0, 3.0, 0.125, "steel"};
    CHECK(footprint(tube) == Footprint{false, 2.0, 3.0, 0.125});
    CHECK(shaft(tube) == footprint(tube));
    tube.stub = Stub{1.5, 2.5, 0.0, 6.0, "steel"};
    CHECK(footprint(tube) == Footprint{false, 1.5, 2.5, 0.75});
    CHECK(is_solid(footprint(tube)));
    CHECK(shaft(tube) == Footprint{false, 2.0, 3.0, 0.125});
    CHECK_FALSE(is_solid(shaft(tube)));
    const SolidBar round{1.5, 1.5, true, "steel"};
    CHECK(footprint(round) == Footprint{true, 1.5, 1.5, 0.75});
    WoodPost wood;
    wood.width_in = wood.depth_in = 3.5;
    wood.shoe.width_in = wood.shoe.depth_in = 4.0;
    wood.shoe.wall_in = 0.1875;
    CHECK(footprint(wood) == shaft(wood));  // no shoe without a metal
    wood.shoe.metal = "steel";
    CHECK(footprint(wood) == Footprint{false, 4.0, 4.0, 0.1875});
    CHECK(shaft(wood) == Footprint{false, 3.5, 3.5, 0.0});
}

// Bars 1/2 x 2 1/2 in with 1 in between: 2 in overall, centers 3/4 in from the middle.
TEST_CASE("twin bars are two pieces of one foot", "[unit]") {
    const TwinBars along_x{0.5, 2.5, 1.0, PlanAxis::x, "steel"};
    CHECK(footprint(along_x).width_in == 2.0);
    CHECK(footprint(along_x).depth_in == 2.5);
    const std::vector<FootPiece> pieces = foot_pieces(along_x);
    REQUIRE(pieces.size() == 2);
    CHECK(pieces[0].center == Position{-0.75, 0.0});
    CHECK(pieces[1].center == Position{0.75, 0.0});
    CHECK(pieces[0].print == Footprint{false, 0.5, 2.5, 0.25});
    const TwinBars along_y{2.5, 0.5, 1.0, PlanAxis::y, "steel"};
    CHECK(footprint(along_y).depth_in == 2.0);
    CHECK(foot_pieces(along_y)[1].center == Position{0.0, 0.75});
    CHECK(foot_pieces(RoundTube{2.0, 0.125, "steel"}).size() == 1);
}

TEST_CASE("a stub fits its tube, and not too loosely", "[bad-input]") {
    BaseDetail detail;
    detail.guard.height_in = 42.0;
    on_deck(detail).plate.id = "P1";
    on_deck(detail).plate.metal = "steel-a36";
    on_deck(detail).plate.thickness_in = 0.375;
    on_deck(detail).plate.outline = RectangleOutline{6.0, 6.0, 0.0, {}};
    RectangularTube tube{2.0, 2.0, 0.1875, "steel-a500-b"};
    const auto problems_with = [&](const Stub& stub) {
        tube.stub = stub;
        detail.post = tube;
        return validate(detail);
    };
    const auto about_the_post = [](const Problems& problems) {
        return std::count_if(problems.begin(), problems.end(),
                             [](const Problem& one) { return one.element.starts_with("post"); });
    };
    CHECK(about_the_post(problems_with({1.5625, 1.5625, 0.0, 6.0, "steel-a36"})) == 0);
    CHECK(tells_at(problems_with({1.6875, 1.5, 0.0, 6.0, "steel-a36"}), "post/stub", "does not fit inside"));
    CHECK(tells_at(problems_with({1.0, 1.5, 0.0, 6.0, "steel-a36"}), "post/stub", "too small"));
    CHECK(tells_at(problems_with({1.5, 1.5, 0.8, 6.0, "steel-a36"}), "post/stub", "wall is not thinner"));
    tube.stub.reset();
    tube.certificate = Certificate{60000.0, 50000.0, ""};
    detail.post = tube;
    CHECK(tells_at(validate(detail), "post/certificate", "more than the ultimate"));
    CHECK(tells_at(validate(detail), "post/certificate", "no source"));
}
