// Anchors in one line leave the plate free to tilt about it where nothing presses on the bed: a neutral equilibrium,
// whose forces are known though the tilt is not.
#include "mechanics/flexible_plate/bases.h"
#include "support/compare.h"

#include <cmath>
#include <numbers>

using namespace toehold;
using mechanics::FlexiblePlate;
using mechanics::FlexiblePlateSolution;
using mechanics::SolveStatus;

namespace {

/// The square base on anchors along a line through the post at this angle, so far from it.
test::FlexibleBase on_a_line(double angle, const std::vector<double>& along_in) {
    test::FlexibleBase base = test::square_base();
    const mechanics::FlexibleAnchor like = base.anchors.front();
    base.anchors.clear();
    for (const double along : along_in) {
        base.anchors.push_back(like);
        base.anchors.back().footprint.center = {along * std::cos(angle), along * std::sin(angle)};
        base.anchors.back().preload_lb = 0.0;
    }
    return base;
}

}  // namespace

TEST_CASE("A straight pull on anchors in one line is shared among them, though the plate may tilt about it",
          "[closed-form]") {
    for (const double angle : {0.0, 0.5 * std::numbers::pi, 0.7, -2.1}) {
        for (const std::vector<double>& along : {std::vector<double>{-3.0, 3.0}, {-2.5, -1.9, 1.9, 2.5}}) {
            test::FlexibleBase base = on_a_line(angle, along);
            base.thickness_in = 1.5;  // so stiff that its rim pries on nothing
            FlexiblePlate plate(test::input_of(base, 1.0));
            // After other loads, so that it stands askew before.
            (void)plate.solve({0.0, 3000.0, 2000.0}, {});
            for (const FlexiblePlateSolution& solution :
                 {plate.solve({600.0, 0.0, 0.0}, {}), plate.solve_on_full_mesh({600.0, 0.0, 0.0}, {})}) {
                CAPTURE(angle, along.size());
                REQUIRE(solution.status == SolveStatus::solved);
                double sum = 0.0, turning = 0.0;
                for (std::size_t i = 0; i < along.size(); ++i) {
                    sum += solution.tension_lb[i];
                    turning += along[i] * solution.tension_lb[i];
                }
                CHECK_CLOSE(sum, 600.0, 1e-9, 0.0);
                CHECK_CLOSE(turning, 0.0, 0.0, 1e-5);
                for (const mechanics::PatchForce& patch : solution.patches) CHECK(patch.force_lb < 1e-6);
            }
        }
    }
}

TEST_CASE("A pull beside the line of the anchors tilts the plate until it bears", "[property]") {
    FlexiblePlate plate(test::input_of(on_a_line(0.0, {-3.0, 3.0}), 1.0));
    for (const FlexiblePlateSolution& solution :
         {plate.solve({600.0, 60.0, 0.0}, {}), plate.solve_on_full_mesh({600.0, 60.0, 0.0}, {})}) {
        REQUIRE(solution.status == SolveStatus::solved);
        CHECK(test::largest_tension(solution) > 300.0);
        CHECK(solution.patches[0].force_lb + solution.patches[1].force_lb > 10.0);
    }
}
