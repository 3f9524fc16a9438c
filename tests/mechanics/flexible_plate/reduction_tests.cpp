// The small space of the plate's responses against every freedom of the same mesh: what it leaves out must be far below
// what the mesh itself leaves out.
#include "mechanics/flexible_plate/bases.h"
#include "mechanics/shapes.h"
#include "support/compare.h"
#include "support/random/number.h"

#include <algorithm>
#include <numeric>

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

constexpr double moment_lb_in = 8400.0;  // 200 lb at 42 in

/// The largest difference of any tension or support's force, relative to the largest force.
double difference(const FlexiblePlateSolution& reduced, const FlexiblePlateSolution& full) {
    double worst = 0.0;
    for (std::size_t i = 0; i < full.tension_lb.size(); ++i)
        worst = std::max(worst, std::abs(reduced.tension_lb[i] - full.tension_lb[i]));
    for (std::size_t i = 0; i < full.patches.size(); ++i)
        worst = std::max(worst, std::abs(reduced.patches[i].force_lb - full.patches[i].force_lb));
    return worst / largest_force(full);
}

}  // namespace

TEST_CASE("The small space meets the full mesh of common bases all round", "[cross-solver]") {
    for (const FlexibleBase& base : common_bases()) {
        FlexiblePlate plate(input_of(base, 1.0));
        CHECK(plate.reduced_unknowns() < plate.unknowns() / 8);
        double worst = 0.0, worst_turn = 0.0;
        for (int step = 0; step < 12; ++step) {
            const PlateLoad load = push(moment_lb_in, std::numbers::pi * step / 6.0);
            const FlexiblePlateSolution reduced = plate.solve(load, {}), full = plate.solve_on_full_mesh(load, {});
            REQUIRE(reduced.status == SolveStatus::solved);
            REQUIRE(full.status == SolveStatus::solved);
            worst = std::max(worst, difference(reduced, full));
            const double turn = std::hypot(full.tilt_x_rad, full.tilt_y_rad);
            worst_turn = std::max(worst_turn, std::abs(reduced.tilt_x_rad - full.tilt_x_rad) / turn);
            worst_turn = std::max(worst_turn, std::abs(reduced.tilt_y_rad - full.tilt_y_rad) / turn);
        }
        CAPTURE(base.name, worst, worst_turn);
        CHECK(worst < 2e-5);
        CHECK(worst_turn < 2e-5);
    }
}

TEST_CASE("Thin plates on stiff beds are given the responses they need", "[cross-solver]") {
    // Pressures of degree five, enough for common plates, miss these by up to 7e-3.
    for (const double stiffness : {25000.0, 100000.0}) {
        FlexibleBase base = square_base();
        base.outline = rounded_rectangle(10.0, 10.0, 0.3);
        for (FlexibleAnchor& anchor : base.anchors)
            anchor.footprint.center = {1.4 * anchor.footprint.center.x, 1.4 * anchor.footprint.center.y};
        base.bed = {{-5.0, 5.0, -5.0, 5.0, stiffness}};
        base.thickness_in = 0.1875;
        FlexiblePlate plate(input_of(base, 1.0));
        for (const double direction : {0.0, 0.5, 0.79, 3.0}) {
            const PlateLoad load = push(moment_lb_in, direction);
            const double missed = difference(plate.solve(load, {}), plate.solve_on_full_mesh(load, {}));
            CAPTURE(stiffness, direction, missed);
            CHECK(missed < 1e-4);
        }
    }
}

TEST_CASE("The small space meets the full mesh of random bases", "[property]") {
    // Seen in 3000 loads on 1000 such bases at fineness 1: median 4e-6 of the largest force, 99 of 100 within 4e-5,
    // worst 1.5e-4 (contact that shrinks to a toe). The mesh itself is good to about 1e-3.
    std::vector<double> missed;
    REQUIRE(rc::check("small space against full mesh", [&] {
        const FlexibleBase base = random_base();
        FlexiblePlate plate(input_of(base, 0.8));
        const PlateLoad load = push(moment_lb_in, number(0.0, 6.28), number(-500.0, 200.0));
        const FlexiblePlateSolution full = plate.solve_on_full_mesh(load, {}), reduced = plate.solve(load, {});
        RC_ASSERT(full.status == SolveStatus::solved);
        RC_ASSERT(reduced.status == SolveStatus::solved);
        missed.push_back(difference(reduced, full));
        RC_ASSERT(missed.back() < 1e-3);
    }));
    std::sort(missed.begin(), missed.end());
    INFO("worst " << missed.back() << ", median " << missed[missed.size() / 2]);
    CHECK(missed[missed.size() / 2] < 1e-5);
    CHECK(missed[missed.size() * 9 / 10] < 1e-4);
}
