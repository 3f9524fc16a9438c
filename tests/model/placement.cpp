#include "model/placement.h"

#include "support/compare.h"

#include <numbers>

namespace {

using namespace toehold;

/// Area and second moments of a polygon about the origin by Green's theorem, written apart from the engine's own.
struct Section {
    double area = 0.0, xx = 0.0;
};
Section section(const std::vector<model::Position>& corners) {
    Section result;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const auto& a = corners[i];
        const auto& b = corners[(i + 1) % corners.size()];
        const double cross = a.x_in * b.y_in - b.x_in * a.y_in;
        result.area += cross / 2.0;
        result.xx += cross * (a.x_in * a.x_in + a.x_in * b.x_in + b.x_in * b.x_in) / 12.0;
    }
    return result;
}

}  // namespace

TEST_CASE("a circle's polygon has the circle's area, and its second moment within 3e-5", "[closed-form]") {
    const Section circle = section(model::polygon(model::CircleOutline{6.0, {}}));
    CHECK_CLOSE(circle.area, std::numbers::pi * 9.0, 1e-12, 0.0);
    CHECK_CLOSE(circle.xx, std::numbers::pi * 81.0 / 4.0, 3e-5, 0.0);
}

TEST_CASE("a rectangle's polygon is exact, and round corners take away (4 - pi) r^2", "[closed-form]") {
    CHECK_CLOSE(section(model::polygon(model::RectangleOutline{5.0, 7.0, 0.0, {1.0, -2.0}})).area, 35.0, 1e-12, 0.0);
    CHECK_CLOSE(section(model::polygon(model::RectangleOutline{5.0, 7.0, 0.5, {}})).area,
                35.0 - (4.0 - std::numbers::pi) * 0.25, 1e-5, 0.0);
}

TEST_CASE("a polygon given clockwise comes back counter-clockwise", "[unit]") {
    const model::PolygonOutline clockwise{{{0.0, 0.0}, {0.0, 2.0}, {2.0, 2.0}, {2.0, 0.0}}};
    CHECK(section(model::polygon(clockwise)).area > 0.0);
}

TEST_CASE("edge distance is positive inside and negative outside", "[unit]") {
    const model::Outline plate = model::RectangleOutline{5.0, 7.0, 0.0, {}};
    CHECK_CLOSE(model::edge_distance_in(plate, {2.0, 0.0}), 0.5, 1e-12, 0.0);
    CHECK_CLOSE(model::edge_distance_in(plate, {3.0, 0.0}), -0.5, 1e-12, 0.0);
    const model::Outline notch = model::PolygonOutline{{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 4}, {0, 4}}};
    CHECK_CLOSE(model::edge_distance_in(notch, {3.0, 3.0}), -1.0, 1e-12, 0.0);
}

TEST_CASE("an anchor's seat gives distances along and across the grain", "[unit]") {
    model::Framing framing;
    model::Block block;
    block.id = "B1";
    block.along = model::PlanAxis::x;
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.across_in = 2.0;
    block.width_in = 3.5;
    block.depth_in = 5.5;
    framing.blocks = {block};
    const auto seat = model::seat(framing, {2.0, 2.5});
    REQUIRE(seat);
    CHECK_CLOSE(seat->edge_in, 1.25, 1e-12, 0.0);
    CHECK_CLOSE(seat->end_in, 5.25, 1e-12, 0.0);
    CHECK_FALSE(model::seat(framing, {2.0, 0.0}));
}

TEST_CASE("an outline's size does not count the way to an origin outside it", "[closed-form]") {
    const model::PolygonOutline away{{{3.0, 4.0}, {8.0, 4.0}, {8.0, 6.5}, {3.0, 6.5}}};
    CHECK_CLOSE(model::extent_in(away, model::PlanAxis::x), 5.0, 1e-12, 0.0);
    CHECK_CLOSE(model::extent_in(away, model::PlanAxis::y), 2.5, 1e-12, 0.0);
    CHECK_CLOSE(model::extent_in(model::CircleOutline{6.0, {10.0, 0.0}}, model::PlanAxis::x), 6.0, 1e-4, 0.0);
}
