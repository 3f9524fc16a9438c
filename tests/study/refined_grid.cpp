// The grid that finds a region, on regions known in closed form. No detail, no solve.
#include "study/refined_grid.h"

#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

using namespace toehold;
using study::GridNode;
using study::NodeAnswer;
using study::RefinedGrid;

namespace {

using Ratio = std::function<double(model::Position)>;

study::Reach reach(bool plane, double half_in, double finest_in) {
    study::Reach made;
    made.plane = plane;
    made.now = {0.3, -0.2};
    made.x = made.y = {-half_in, half_in};
    made.finest_in = finest_in;
    return made;
}

/// Holds where the ratio is at most 1. `interpolated`: one check decides everywhere, else nothing is known between.
study::Region found(RefinedGrid& grid, const Ratio& ratio, bool interpolated = true) {
    do {
        for (const GridNode node : grid.unanswered()) {
            NodeAnswer answer;
            const double at = ratio(grid.place(node));
            answer.holds = at <= 1.0;
            answer.confirmed = true;
            if (interpolated) answer.ratio = at;
            answer.limit = {"check", {}, {}};
            grid.answer(node, answer);
        }
    } while (grid.refine());
    return grid.region();
}

double area(const study::Polygon& polygon) {
    double twice = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const model::Position a = polygon[i], b = polygon[(i + 1) % polygon.size()];
        twice += a.x_in * b.y_in - b.x_in * a.y_in;
    }
    return 0.5 * twice;
}

double area(const study::Region& region) {
    double all = 0.0;
    for (const study::Polygon& polygon : region.holds) all += area(polygon);
    return all;
}

double length(const study::Region& region) {
    double all = 0.0;
    for (const study::RegionBorder& piece : region.border)
        all += std::hypot(piece.to.x_in - piece.from.x_in, piece.to.y_in - piece.from.y_in);
    return all;
}

double radius(model::Position at) { return std::hypot(at.x_in, at.y_in); }

}  // namespace

TEST_CASE("A disc has its area and its circumference", "[closed-form]") {
    RefinedGrid grid(reach(true, 4.0, 0.125));
    const study::Region region = found(grid, [](model::Position at) { return radius(at) / 2.5; });
    CHECK_CLOSE(area(region), std::numbers::pi * 2.5 * 2.5, 2e-3, 0.0);
    CHECK_CLOSE(length(region), 2.0 * std::numbers::pi * 2.5, 2e-3, 0.0);
    for (const study::RegionBorder& piece : region.border) CHECK_CLOSE(radius(piece.from), 2.5, 0.0, 0.01);
}

TEST_CASE("Where nothing is known between two places the region ends at the last that holds", "[closed-form]") {
    RefinedGrid grid(reach(true, 4.0, 0.125));
    const study::Region region = found(
        grid, [](model::Position at) { return radius(at) / 2.5; }, false);
    for (const study::Polygon& piece : region.holds) {
        for (const model::Position corner : piece) CHECK(radius(corner) <= 2.5);
    }
    // Within one smallest cell of the whole disc.
    CHECK(area(region) > std::numbers::pi * 2.35 * 2.35);
}

TEST_CASE("A region smaller than a coarse cell is found about the place of now", "[closed-form]") {
    RefinedGrid grid(reach(true, 8.0, 0.125));
    const study::Region region =
        found(grid, [](model::Position at) { return std::hypot(at.x_in - 0.3, at.y_in + 0.2) / 0.2; });
    CHECK_CLOSE(area(region), std::numbers::pi * 0.2 * 0.2, 0.15, 0.0);
}

TEST_CASE("A border that a finer neighbor finds is followed into the coarse cell", "[closed-form]") {
    // A slit that enters a cell through the middle of its side.
    RefinedGrid grid(reach(true, 4.0, 0.125));
    const study::Region region =
        found(grid, [](model::Position at) { return std::abs(at.y_in - 1.05) < 0.3 && at.x_in > -2.0 ? 2.0 : 0.5; });
    RefinedGrid whole(reach(true, 4.0, 0.125));
    const double all = area(found(whole, [](model::Position) { return 0.5; }));
    double right_in = 0.0;
    for (const study::Polygon& piece : region.holds) {
        for (const model::Position corner : piece) right_in = std::max(right_in, corner.x_in);
    }
    const double slit = 0.6 * (right_in + 2.0);
    // Wider by a smallest cell on each side at the most.
    CHECK(area(region) <= all - slit + 0.01);
    CHECK(area(region) >= all - slit - 0.25 * (right_in + 2.0) - 0.2);
}

TEST_CASE("Along a line the region is intervals, and its ends have their limits", "[closed-form]") {
    RefinedGrid grid(reach(false, 4.0, 0.0625));
    const study::Region region = found(grid, [](model::Position at) { return std::abs(at.x_in - 1.0) / 1.5; });
    REQUIRE(region.holds.size() == 1);
    CHECK_CLOSE(region.holds[0][0].x_in, -0.5, 0.0, 1e-9);
    CHECK_CLOSE(region.holds[0][1].x_in, 2.5, 0.0, 1e-9);
    REQUIRE(region.border.size() == 2);
    CHECK(region.border[0].limit.id == "check");
}

TEST_CASE("What is not confirmed is told apart, along a line and in the plane", "[property]") {
    const auto answered = [](RefinedGrid& grid, auto&& confirmed) {
        for (const GridNode node : grid.unanswered()) grid.answer(node, {true, confirmed(grid.place(node)), {}, {}});
        return grid.region();
    };
    RefinedGrid line(reach(false, 4.0, 0.0625));
    const study::Region on_line = answered(line, [](model::Position at) { return at.x_in < 0.31; });
    REQUIRE(on_line.holds.size() == 1);
    REQUIRE(on_line.likely.size() == 1);
    CHECK_CLOSE(on_line.holds[0][1].x_in, 0.3, 0.0, 1e-9);  // a coarse cell ends where the thing is now
    CHECK(on_line.likely[0][0] == on_line.holds[0][1]);
    RefinedGrid plane(reach(true, 4.0, 0.125));
    const study::Region in_plane = answered(plane, [](model::Position at) { return at.y_in < -0.19; });
    const auto above = [](const study::Polygon& piece) { return piece[2].y_in > -0.19; };
    CHECK_FALSE(in_plane.holds.empty());
    CHECK(std::none_of(in_plane.holds.begin(), in_plane.holds.end(), above));
    CHECK_FALSE(in_plane.likely.empty());
    CHECK(std::all_of(in_plane.likely.begin(), in_plane.likely.end(), above));
}

TEST_CASE("The first places asked are those next to the place of now", "[property]") {
    const RefinedGrid grid(reach(true, 4.0, 0.125));
    const std::vector<GridNode> nodes = grid.unanswered();
    double before = 0.0;
    for (const GridNode node : nodes) {
        const model::Position at = grid.place(node);
        const double away = std::hypot(at.x_in - 0.3, at.y_in + 0.2);
        CHECK(away >= before - 1e-9);
        before = away;
    }
    CHECK_CLOSE(before, std::hypot(4.3, 4.2), 0.25, 0.0);
}

TEST_CASE("Of several limits the one that stops the thing at most places is named", "[property]") {
    RefinedGrid grid(reach(false, 4.0, 0.0625));
    CHECK_FALSE(grid.most_often());
    for (const GridNode node : grid.unanswered())
        grid.answer(node, {false, true, {}, {grid.place(node).x_in < 2.0 ? "often" : "seldom", {}, {}}});
    REQUIRE(grid.most_often());
    CHECK(grid.most_often()->id == "often");
}
