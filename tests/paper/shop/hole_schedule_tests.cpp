// Distances from holes to edges against numbers worked by hand.
#include "paper/shop/hole_schedule.h"

#include "support/compare.h"

#include <numbers>

using namespace toehold;
using namespace toehold::paper;

TEST_CASE("A hole's distance to the edge is the shortest from its line of centers", "[closed-form]") {
    const model::Outline square = model::RectangleOutline{6.0, 6.0, 0.0, {}};
    // Round at (2, -1): 3 - 2 = 1 in.
    CHECK_CLOSE(shop::edge_distance_in(square, {"A", {2.0, -1.0}, model::RoundHole{0.5}}), 1.0, 0.0, 1e-12);
    // Slot 1 1/2 x 1/2 along x at (1, 0): centers to x = 1 1/2: 3 - 1 1/2 = 1 1/2 in.
    CHECK_CLOSE(shop::edge_distance_in(square, {"A", {1.0, 0.0}, model::Slot{1.5, 0.5, 0.0}}), 1.5, 0.0, 1e-12);
    // The same at 60 degrees: centers to x = 1 + 0.5 cos 60 = 1.25, y = 0.433: 3 - 1.25 = 1.75 in.
    CHECK_CLOSE(shop::edge_distance_in(square, {"A", {1.0, 0.0}, model::Slot{1.5, 0.5, 60.0}}), 1.75, 0.0, 1e-12);
    // Round plate of 8 in, hole 3 in from its center: 1 in.
    CHECK_CLOSE(shop::edge_distance_in(model::CircleOutline{8.0, {}}, {"A", {0.0, -3.0}, model::RoundHole{0.5}}), 1.0,
                0.0, 1e-12);
}

TEST_CASE("A slot past a re-entrant corner is measured to the corner", "[closed-form]") {
    // L with its corner at (1, 1); a slot along the diagonal through (0.5, 0.5), square to the way to the corner: its
    // middle is nearest, sqrt 0.5 = 0.7071 in, not its ends.
    const model::PolygonOutline l{{{-3, -3}, {5, -3}, {5, 1}, {1, 1}, {1, 5}, {-3, 5}}};
    const model::Hole slot{"A", {0.5, 0.5}, model::Slot{2.5, 0.5, 135.0}};
    CHECK_CLOSE(shop::edge_distance_in(l, slot), std::numbers::sqrt2 / 2.0, 0.0, 1e-9);
}

TEST_CASE("Coordinates begin at the plate's lower left, or at a round plate's center", "[unit]") {
    const drawing::Point corner = shop::datum_in(model::RectangleOutline{6.0, 8.0, 0.5, {0.25, -0.5}});
    CHECK_CLOSE(corner.x, -2.75, 0.0, 1e-12);
    CHECK_CLOSE(corner.y, -4.5, 0.0, 1e-12);
    const drawing::Point center = shop::datum_in(model::CircleOutline{6.0, {0.5, 1.0}});
    CHECK_CLOSE(center.x, 0.5, 0.0, 1e-12);
    CHECK_CLOSE(center.y, 1.0, 0.0, 1e-12);
}
