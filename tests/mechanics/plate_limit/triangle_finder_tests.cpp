// The triangle of a point, against a look through all of them.
#include "mechanics/plate_limit/triangle_finder.h"

#include "mechanics/flexible_plate/plate_mesh.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

#include <algorithm>
#include <random>

using namespace toehold;
using namespace toehold::mechanics;

namespace {

double inside(const EquilibriumTriangle& triangle, Point point) {
    const std::array<double, 3> share = area_shares(triangle, point);
    return std::min({share[0], share[1], share[2]});
}

}  // namespace

TEST_CASE("a point's triangle is the one it is most inside of, on the mesh and off it", "[second-method]") {
    const Polygon outline = test::rectangle(-4.0, 4.0, -3.0, 3.0), foot = test::rectangle(-1.0, 1.0, -1.0, 1.0);
    const PlateMesh mesh = mesh_plate(outline, foot, {}, 1.0);
    std::vector<EquilibriumTriangle> triangles;
    for (const Triangle& t : mesh.triangles) {
        std::array<Point, 3> corners;
        for (std::size_t i = 0; i < 3; ++i) corners[i] = mesh.nodes[static_cast<std::size_t>(t[i])];
        triangles.push_back(equilibrium_triangle(corners, t));
    }
    const TriangleFinder finder(triangles);
    std::mt19937 random(1934);
    std::uniform_real_distribution<double> x(-4.4, 4.4), y(-3.3, 3.3);
    for (int trial = 0; trial < 300; ++trial) {
        const Point point{x(random), y(random)};
        const auto most = std::max_element(triangles.begin(), triangles.end(), [&](const auto& a, const auto& b) {
            return inside(a, point) < inside(b, point);
        });
        INFO(point.x << ", " << point.y);
        CHECK(finder.at(triangles, point) == static_cast<std::size_t>(most - triangles.begin()));
    }
}
