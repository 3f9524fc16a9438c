// A plate on supports that give way, against springs in series and against the plate on supports that stand still.
#include "mechanics/flexible_plate/bases.h"
#include "mechanics/shapes.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace {

using namespace toehold;
using namespace toehold::mechanics;

/// 6 x 8 plate on one bed all over, four anchors in the same support.
test::FlexibleBase one_support() {
    test::FlexibleBase base;
    base.outline = test::rectangle(-3, 3, -4, 4);
    base.ring = test::rectangle(-1, 1, -1, 1);
    for (const Point at : {Point{-2, -3}, Point{2, -3}, Point{2, 3}, Point{-2, 3}}) {
        base.anchors.push_back({{at, 0.4}, 50000.0, 0.0, 0});
    }
    base.bed = {{-3, 3, -4, 4, 20000.0}};
    return base;
}

/// Motions of each place apart from the others.
CompliantSupports apart(const std::vector<Point>& places, double lift, double tilt_x, double tilt_y) {
    CompliantSupports framing{places, std::vector<double>(9 * places.size() * places.size(), 0.0)};
    const double each[] = {lift, tilt_x, tilt_y};
    const std::size_t size = 3 * places.size();
    for (std::size_t i = 0; i < size; ++i) framing.stiffness[i * size + i] = each[i % 3];
    return framing;
}

FlexiblePlate plate_on(const test::FlexibleBase& base, const CompliantSupports& framing) {
    return FlexiblePlate(test::input_of(base, 1.5)).on(framing);
}

}  // namespace

TEST_CASE("Bed and framing under a stiff plate are springs in series", "[closed-form]") {
    test::FlexibleBase base = one_support();
    base.modulus_psi *= 1e5;
    const double lift = 9e4, tilt_x = 4e5, tilt_y = 2.5e5, down = 6000.0, moment = 1500.0;
    FlexiblePlate plate = plate_on(base, apart({{0, 0}}, lift, tilt_x, tilt_y));
    // Inside the kern, so the whole bed presses: k A, k I; anchors slack.
    const FlexiblePlateSolution s = plate.solve({-down, moment, 0.0}, {});
    REQUIRE(s.status == SolveStatus::solved);
    const double k = 20000.0, area = 48.0, inertia = 6.0 * 8 * 8 * 8 / 12.0;
    CHECK_CLOSE(s.lift_in, -down * (1.0 / (k * area) + 1.0 / lift), 1e-4, 0.0);
    CHECK_CLOSE(s.tilt_x_rad, moment * (1.0 / (k * inertia) + 1.0 / tilt_x), 1e-4, 0.0);
    CHECK(s.tension_lb == std::vector<double>(4, 0.0));
    // Lifted off, the anchors and the framing they stand in are in series.
    const FlexiblePlateSolution up = plate.solve({down, 0.0, moment}, {});
    REQUIRE(up.status == SolveStatus::solved);
    CHECK_CLOSE(up.lift_in, down * (1.0 / (4 * 50000.0) + 1.0 / lift), 1e-4, 0.0);
    CHECK_CLOSE(up.tilt_y_rad, moment * (1.0 / (50000.0 * 4 * 4) + 1.0 / tilt_y), 1e-4, 0.0);
}

TEST_CASE("The pressure of the field is the bed's, not the framing's sinking", "[closed-form]") {
    test::FlexibleBase base = one_support();
    base.modulus_psi *= 1e5;
    const FlexiblePlate plate = plate_on(base, apart({{0, 0}}, 9e4, 4e5, 2.5e5));
    PlateField field;
    const FlexiblePlateSolution s = plate.solve_on_full_mesh({-6000.0, 1500.0, 0.0}, {}, &field);
    REQUIRE(s.status == SolveStatus::solved);
    // N / A + M c / I = 6000/48 + 1500 x 4/256, whatever the framing under the bed does.
    const double largest = *std::max_element(field.pressure_psi.begin(), field.pressure_psi.end());
    CHECK_CLOSE(largest, 125.0 + 23.4375, 1e-3, 0.0);
    CHECK_CLOSE(largest, s.patches.front().peak_psi, 1e-9, 0.0);
}

TEST_CASE("Framing as stiff as rock changes nothing", "[property]") {
    const test::FlexibleBase base = one_support();
    FlexiblePlate still(test::input_of(base, 1.5));
    FlexiblePlate rock = plate_on(base, apart({{0, 0}}, 1e14, 1e14, 1e14));
    for (const double angle : {0.0, 0.8, 2.1, 4.0}) {
        const FlexiblePlateSolution a = still.solve(test::push(8400.0, angle), {}),
                                    b = rock.solve(test::push(8400.0, angle), {});
        for (std::size_t i = 0; i < 4; ++i) CHECK_CLOSE(b.tension_lb[i], a.tension_lb[i], 1e-6, 1e-3);
    }
}

TEST_CASE("The small space meets the full mesh where the framing gives, and both balance", "[property]") {
    test::FlexibleBase base = test::square_base();
    for (FlexibleAnchor& anchor : base.anchors) anchor.support = anchor.footprint.center.y < 0.0 ? 0 : 1;
    REQUIRE(base.bed.size() == 2);
    std::vector<Point> places;
    for (const BedRectangle& r : base.bed) places.push_back({0.0, 0.5 * (r.y_min + r.y_max)});
    FlexiblePlate plate = plate_on(base, apart(places, 2e4, 5e4, 3e5));
    for (const double angle : {0.0, 0.9, 1.5708, 3.5, 5.5}) {
        const PlateLoad load = test::push(8400.0, angle);
        const FlexiblePlateSolution small = plate.solve(load, {}), full = plate.solve_on_full_mesh(load, {});
        REQUIRE(small.status == SolveStatus::solved);
        REQUIRE(full.status == SolveStatus::solved);
        CHECK(small.residuals.force < 1e-9);
        CHECK(small.residuals.moment < 1e-9);
        for (std::size_t i = 0; i < base.anchors.size(); ++i) {
            CHECK_CLOSE(small.tension_lb[i], full.tension_lb[i], 0.0, 1e-3 * test::largest_force(full));
        }
    }
}

TEST_CASE("A framing stiffness of the wrong size, or that no framing has, is refused", "[bad-input]") {
    const test::FlexibleBase base = one_support();
    CHECK_THROWS_AS(plate_on(base, {{{0, 0}}, {1.0, 2.0}}), std::invalid_argument);
    CHECK_THROWS_AS(plate_on(base, apart({{0, 0}}, -1.0, 1.0, 1.0)), std::invalid_argument);
    CompliantSupports lopsided = apart({{0, 0}}, 1.0, 1.0, 1.0);
    lopsided.stiffness[1] = 0.5;
    CHECK_THROWS_AS(plate_on(base, lopsided), std::invalid_argument);
}
