// Cuts around the post by hand.
#include "mechanics/plate_strip/closed_cut.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using mechanics::ClosedCut;
using mechanics::FootOutline;
using mechanics::PlateHole;

namespace {

mechanics::Polygon centered(double width, double depth) {
    return test::rectangle(-0.5 * width, 0.5 * width, -0.5 * depth, 0.5 * depth);
}

}  // namespace

TEST_CASE("Four slots around a post leave four pieces of metal", "[closed-form]") {
    // Slots 2.6 in long over all and 0.3 in wide, 0.5 in off each face of a 2 in post: the cut is four faces of 2 in
    // and four quarter circles of 0.5 in, 0.785 in each. A slot ends 1.3 in from its middle: 0.3 in past the face, into
    // the arc. On an arc about (1, 1), 1.15 + 0.15 cos b = 1 + 0.5 sin a at its end: what is left between two is about
    // 0.785 less twice an arc of asin(0.59) x 0.5 = 0.316 to 0.30.
    const std::vector<PlateHole> slots{{{-1.15, 1.5}, {1.15, 1.5}, 0.15},
                                       {{-1.15, -1.5}, {1.15, -1.5}, 0.15},
                                       {{1.5, -1.15}, {1.5, 1.15}, 0.15},
                                       {{-1.5, -1.15}, {-1.5, 1.15}, 0.15}};
    const std::vector<ClosedCut> cuts = mechanics::closed_cuts({false, 2.0, 2.0}, centered(8.0, 8.0), slots);
    REQUIRE(!cuts.empty());
    const ClosedCut& cut = cuts.front();
    CHECK_CLOSE(cut.offset_in, 0.5, 1e-9, 0.0);
    REQUIRE(cut.pieces.size() == 4);
    for (const mechanics::CutPiece& piece : cut.pieces) {
        CHECK(piece.between_openings);
        CHECK_CLOSE(piece.across_in, 0.3, 0.0, 0.05);
        CHECK(piece.length_in > 0.1);
        CHECK(piece.length_in < 0.35);
    }
}

TEST_CASE("A cut loses to a hole what the hole takes of it", "[closed-form]") {
    // A 0.5 in hole 1 in off the face of a 2 x 3 in post: 10 in of faces, a circle of 1 in radius, less 0.5 in.
    const std::vector<ClosedCut> cuts = mechanics::closed_cuts({false, 2.0, 3.0}, centered(10.0, 10.0),
                                                               std::vector<PlateHole>{{{2.0, 0.0}, {2.0, 0.0}, 0.25}});
    REQUIRE(cuts.size() == 1);
    REQUIRE(cuts[0].pieces.size() == 1);
    CHECK_CLOSE(cuts[0].pieces[0].length_in, 10.0 + 2.0 * std::numbers::pi - 0.5, 0.0, 0.07);
    CHECK(cuts[0].pieces[0].between_openings);
}

TEST_CASE("Where the cut leaves the plate there is no metal", "[unit]") {
    // 1 in off a round post of 2 in the circle of 4 in leaves a plate 3 in wide on both sides.
    const std::vector<ClosedCut> cuts = mechanics::closed_cuts({true, 2.0, 2.0}, centered(3.0, 8.0),
                                                               std::vector<PlateHole>{{{0.0, 2.0}, {0.0, 2.0}, 0.2}});
    REQUIRE(cuts.size() == 1);
    CHECK(cuts[0].pieces.size() == 3);
    const bool any_beam =
        cuts[0].pieces[0].between_openings || cuts[0].pieces[1].between_openings || cuts[0].pieces[2].between_openings;
    CHECK_FALSE(any_beam);
}

TEST_CASE("Without openings there is nothing to cut", "[unit]") {
    CHECK(mechanics::closed_cuts({false, 2.0, 2.0}, centered(8.0, 8.0), {}).empty());
}
