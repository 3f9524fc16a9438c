// The rigid plate against a grid of springs solved another way (spring_grid.h), where no formula exists: diagonal
// pushes, patterns without symmetry, round and L-shaped plates, separate patches. The grid's own error falls fourfold
// with each halving; two grids give both the extrapolated value and how far it can be trusted.
#include "mechanics/rigid_plate/rigid_plate.h"

#include "mechanics/rigid_plate/spring_grid.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold::mechanics;
using toehold::test::fan;
using toehold::test::push;
using toehold::test::rectangle;
using toehold::test::spring_grid_tensions;
using toehold::test::TriangulatedPatch;

namespace {

constexpr double degree = std::numbers::pi / 180.0;

/// The cells between copies of a round outline, `rings` of them, so that none is a needle.
std::vector<toehold::test::Triangle> ring_cells(const Polygon& outline, int rings) {
    std::vector<toehold::test::Triangle> cells;
    for (int ring = 0; ring < rings; ++ring) {
        const double inner = static_cast<double>(ring) / rings;
        const double outer = static_cast<double>(ring + 1) / rings;
        for (std::size_t index = 0; index < outline.size(); ++index) {
            const Point from = outline[index];
            const Point to = outline[(index + 1) % outline.size()];
            const Polygon cell{{inner * from.x, inner * from.y},
                               {outer * from.x, outer * from.y},
                               {outer * to.x, outer * to.y},
                               {inner * to.x, inner * to.y}};
            for (const auto& triangle : fan(cell)) cells.push_back(triangle);
        }
    }
    return cells;
}

/// Holds every tension to the value two grids extrapolate to.
void check_against_grids(const std::vector<AnchorSpring>& anchors, const std::vector<BedPatch>& bed,
                         const std::vector<TriangulatedPatch>& grid, const PlateLoad& load, int halvings) {
    const RigidPlateSolution exact = solve_rigid_plate(anchors, bed, load);
    REQUIRE(exact.status == SolveStatus::solved);
    const std::vector<double> coarse = spring_grid_tensions(anchors, grid, load, halvings - 1);
    const std::vector<double> fine = spring_grid_tensions(anchors, grid, load, halvings);
    const double largest = *std::max_element(exact.tension_lb.begin(), exact.tension_lb.end());
    REQUIRE(largest > 0.0);
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        CAPTURE(index, coarse[index], fine[index]);
        const double change = std::abs(fine[index] - coarse[index]);
        const double extrapolated = fine[index] + (fine[index] - coarse[index]) / 3.0;
        // The neutral axis crosses cells at will, so the fall is fourfold only nearly: allow a tenth of the change.
        CHECK_CLOSE(exact.tension_lb[index], extrapolated, 0.0, 0.1 * change + 1e-5 * largest);
        CHECK(change < 0.01 * largest);
    }
}

}  // namespace

TEST_CASE("Diagonal pushes on a rectangle agree with a grid of springs", "[cross-solver]") {
    const toehold::test::Plate plate = toehold::test::example_plate();
    const std::vector<TriangulatedPatch> grid{{fan(plate.bed[0].outline), 25000.0}};
    for (const double direction : {20.0, 45.0, 127.0, 250.0}) {
        CAPTURE(direction);
        check_against_grids(plate.anchors, plate.bed, grid, push(8400.0, direction * degree), 6);
    }
}

TEST_CASE("A pattern without symmetry, with thrust or uplift, agrees with a grid of springs", "[cross-solver]") {
    const std::vector<AnchorSpring> anchors{
        {{-2.2, -2.9}, 20000.0}, {{1.4, -2.5}, 45000.0}, {{2.0, 0.7}, 30000.0}, {{-0.5, 2.8}, 60000.0}};
    const Polygon outline{{-3.0, -3.5}, {2.0, -3.2}, {2.8, 1.0}, {0.5, 3.6}, {-2.0, 3.0}};
    const std::vector<BedPatch> bed{{outline, 40000.0}};
    const std::vector<TriangulatedPatch> grid{{fan(outline), 40000.0}};
    check_against_grids(anchors, bed, grid, push(7200.0, 75.0 * degree, -400.0), 6);
    check_against_grids(anchors, bed, grid, push(7200.0, 200.0 * degree, 300.0), 6);
}

TEST_CASE("A round plate agrees with a grid of springs", "[cross-solver]") {
    const Polygon outline = toehold::test::regular_polygon(720, 3.0);
    std::vector<AnchorSpring> anchors;
    for (int index = 0; index < 5; ++index) {
        const double angle = (10.0 + 72.0 * index) * degree;
        anchors.push_back({{2.3 * std::cos(angle), 2.3 * std::sin(angle)}, 30000.0});
    }
    const std::vector<toehold::test::Triangle> cells = ring_cells(outline, 6);
    check_against_grids(anchors, {{outline, 25000.0}}, {{cells, 25000.0}}, push(8400.0, 110.0 * degree), 1);
}

TEST_CASE("An L-shaped plate agrees with a grid of springs", "[cross-solver]") {
    const std::vector<AnchorSpring> anchors{
        {{0.7, 0.7}, 30000.0}, {{5.3, 0.7}, 30000.0}, {{5.3, 2.3}, 30000.0}, {{0.7, 5.3}, 30000.0}};
    const std::vector<BedPatch> bed{{toehold::test::l_shape(), 25000.0}};
    std::vector<toehold::test::Triangle> triangles = fan(rectangle(0.0, 6.0, 0.0, 3.0));
    for (const auto& triangle : fan(rectangle(0.0, 2.5, 3.0, 6.0))) triangles.push_back(triangle);
    for (const double direction : {30.0, 140.0, 225.0, 310.0}) {
        CAPTURE(direction);
        check_against_grids(anchors, bed, {{triangles, 25000.0}}, push(6000.0, direction * degree), 6);
    }
}

TEST_CASE("A plate across two blocks of different stiffness agrees with a grid of springs", "[cross-solver]") {
    const toehold::test::Plate plate = toehold::test::example_plate();
    const Polygon heel = rectangle(-2.75, 2.75, -3.5, -0.75);
    const Polygon toe = rectangle(-2.75, 2.75, 0.75, 3.5);
    const std::vector<BedPatch> bed{{heel, 12000.0}, {toe, 50000.0}};
    const std::vector<TriangulatedPatch> grid{{fan(heel), 12000.0}, {fan(toe), 50000.0}};
    for (const double direction : {0.0, 60.0, 290.0}) {
        CAPTURE(direction);
        check_against_grids(plate.anchors, bed, grid, push(8400.0, direction * degree, -100.0), 6);
    }
}
