// The pressure found again from its resultant, against pressures chosen beforehand.
#include "mechanics/plate_strip/bearing_pressure.h"

#include "mechanics/rigid_plate/rigid_plate.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

#include <cmath>
#include <random>

using namespace toehold;
using namespace toehold::mechanics;

namespace {

const std::vector<Shape> patch{Shape({{-2.0, 0.0}, {2.0, 0.0}, {2.0, 3.0}, {-2.0, 3.0}})};

std::vector<PlanePressure> pressures_of(double force_lb, Point at, Point peak_at, const std::vector<Shape>& patches) {
    const PatchForce support{force_lb, at, 0.0, peak_at, 0.0};
    return plane_pressures({&support, 1}, patches);
}

PlateSection section_along_x(double offset_in) {
    PlateSection section;
    section.normal_y = 1.0;
    section.offset_in = offset_in;
    section.chord = {-2.0, 2.0};
    return section;
}

}  // namespace

TEST_CASE("A triangular pressure over part of a patch is found from its resultant", "[closed-form]") {
    // p = 100 (y - 1.2) psi for y > 1.2: F = 4 x 100 x 1.8^2/2 = 648 lb at y = 1.2 + 2/3 x 1.8 = 2.4.
    const auto found = pressures_of(648.0, {0.0, 2.4}, {0.0, 3.0}, patch);
    REQUIRE(found.size() == 1);
    CHECK_CLOSE(found[0].psi.slope_y, 100.0, 1e-7, 0.0);
    CHECK_CLOSE(found[0].psi.at_origin, -120.0, 1e-7, 0.0);
    CHECK_CLOSE(found[0].psi.slope_x, 0.0, 0.0, 1e-6);
    // Beyond y = 2: 4 x 100 x integral of (y - 1.2) from 2 to 3 = 400 x 1.3 = 520 lb; moment 400 x (0.8/2 + 1/3) =
    // 293.33.
    const auto beyond = bearing_beyond(section_along_x(2.0), found);
    CHECK_CLOSE(beyond.force_lb, 520.0, 1e-7, 0.0);
    CHECK_CLOSE(beyond.moment_lb_in, 400.0 * (0.4 + 1.0 / 3.0), 1e-7, 0.0);
    CHECK_CLOSE(beyond.extent.length(), 4.0, 1e-9, 0.0);
    // All of it lies beyond y = 1: the moment is that of the resultant.
    CHECK_CLOSE(bearing_beyond(section_along_x(1.0), found).moment_lb_in, 648.0 * 1.4, 1e-7, 0.0);
    CHECK(bearing_beyond(section_along_x(3.5), found).force_lb == 0.0);
}

TEST_CASE("A pressure that varies both ways puts its resultant off the middle", "[closed-form]") {
    // p = 50 + 10 x over the whole patch: F = 600, x = 10 x (4^3 x 3/12)/600 = 160/600.
    const auto found = pressures_of(600.0, {160.0 / 600.0, 1.5}, {2.0, 1.5}, patch);
    REQUIRE(found.size() == 1);
    CHECK_CLOSE(found[0].psi.slope_x, 10.0, 1e-7, 0.0);
    CHECK_CLOSE(found[0].psi.at_origin, 50.0, 1e-7, 0.0);
    const auto beyond = bearing_beyond(section_along_x(1.0), found);
    CHECK_CLOSE(beyond.force_lb, 400.0, 1e-7, 0.0);
    // Along the section t = -x.
    CHECK_CLOSE(beyond.along_in, -160.0 / 600.0, 1e-7, 0.0);
}

TEST_CASE("A force whose patch is not known acts whole at its highest pressure", "[property]") {
    const auto found = pressures_of(100.0, {0.0, 1.0}, {0.0, 3.0}, {});
    REQUIRE(found.size() == 1);
    CHECK(bearing_beyond(section_along_x(1.0), found).moment_lb_in == 200.0);
    CHECK(pressures_of(0.0, {}, {}, {}).empty());
}

TEST_CASE("The pressure under a resultant is that of a rigid plate on that patch alone", "[second-method]") {
    const std::vector<Polygon> outlines{test::rectangle(-2.0, 2.0, 0.5, 3.5), test::regular_polygon(72, 2.0),
                                        test::l_shape()};
    std::mt19937 random(1953);
    std::uniform_real_distribution<double> part(0.02, 0.98);
    for (const Polygon& outline : outlines) {
        const std::vector<Shape> shapes{Shape(outline)};
        const Interval x = ShapePart(shapes[0]).extent(1.0, 0.0), y = ShapePart(shapes[0]).extent(0.0, 1.0);
        for (int trial = 0; trial < 40; ++trial) {
            const Point at{x.from + part(random) * x.length(), y.from + part(random) * y.length()};
            if (!inside_polygon(at, outline)) continue;
            const PatchForce force{700.0, at, 0.0, at, 1.0};
            const BedPatch bed{outline, 1.0};
            const RigidPlateSolution rigid =
                solve_rigid_plate({}, {&bed, 1}, {-force.force_lb, -force.force_lb * at.y, force.force_lb * at.x});
            if (rigid.status != SolveStatus::solved) continue;
            const PlanePressure found = plane_pressures({&force, 1}, shapes).at(0);
            const double most = rigid.patches.at(0).peak_psi;
            INFO(at.x << ", " << at.y);
            for (const Point corner : outline) {
                const double slow = -rigid.lift_in - rigid.tilt_x_rad * corner.y + rigid.tilt_y_rad * corner.x;
                CHECK_CLOSE(found.psi.at(corner), slow, 1e-7, 1e-7 * most);
            }
        }
    }
}
