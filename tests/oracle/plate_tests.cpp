// The flexible plate against CalculiX's quadratic solids: bases of different outline, anchors, metal, bed and
// direction.
//
// The two theories differ on purpose: ours is a thin plate, which does not shear or give way in its thickness; a solid
// does both. What that leaves is stated in `Tolerance`. One case takes the shear out of the solid, to show that the
// theory and not the element makes the difference. Ours is solved on the mesh that the program starts from.
#include "oracle/solid_solution.h"
#include "support/compare.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace {

using namespace toehold;
using mechanics::FlexibleAnchor;
using mechanics::PlateLoad;
using mechanics::Point;
using test::Base;

constexpr double our_fineness = 1.5;
constexpr double solid_fineness = 1.6;

struct Tolerance {
    double force = 0.01;       ///< of the largest tension, for every anchor and every block
    double rotation = 0.06;    ///< of the base's rotation; a solid turns more, because it shears
    double solid_shear = 1.0;  ///< see test::Deck::shear_factor
};

std::vector<FlexibleAnchor> anchors_at(const std::vector<Point>& places, double radius_in, double stiffness_lb_per_in,
                                       double preload_lb = 0.0) {
    std::vector<FlexibleAnchor> anchors;
    anchors.reserve(places.size());
    for (const Point place : places) anchors.push_back({{place, radius_in}, stiffness_lb_per_in, preload_lb});
    return anchors;
}

/// The result of ccx balances the load that it was given, as far as its printed digits go.
void check_balance(const test::SolidSolution& solid, const PlateLoad& load, double largest_lb) {
    constexpr double of_printed_digits = 2e-5;
    const double moment = std::max(std::hypot(load.mx_lb_in, load.my_lb_in), largest_lb);
    CHECK_CLOSE(solid.left.fz_lb, 0.0, 0.0, of_printed_digits * largest_lb);
    CHECK_CLOSE(solid.left.mx_lb_in, 0.0, 0.0, of_printed_digits * moment);
    CHECK_CLOSE(solid.left.my_lb_in, 0.0, 0.0, of_printed_digits * moment);
}

void check_agreement(const Base& base, const PlateLoad& load, const Tolerance& tolerance = {}) {
    INFO(base.name);
    mechanics::FlexiblePlate plate(test::input_of(base, test::mesh_of(base, our_fineness)));
    const mechanics::FlexiblePlateSolution ours = plate.solve(load, {});
    REQUIRE(ours.status == mechanics::SolveStatus::solved);
    const test::SolidSolution solid =
        test::solve_with_ccx(base, test::mesh_of(base, solid_fineness), load, tolerance.solid_shear);
    const double largest = *std::max_element(solid.tension_lb.begin(), solid.tension_lb.end());
    check_balance(solid, load, largest);

    REQUIRE(ours.tension_lb.size() == solid.tension_lb.size());
    CHECK_CLOSE(*std::max_element(ours.tension_lb.begin(), ours.tension_lb.end()), largest, tolerance.force, 0.0);
    for (std::size_t i = 0; i < solid.tension_lb.size(); ++i) {
        INFO("anchor " << i);
        CHECK_CLOSE(ours.tension_lb[i], solid.tension_lb[i], 0.0, tolerance.force * largest);
    }
    for (std::size_t i = 0; i < solid.bearing_lb.size(); ++i) {
        INFO("block " << i);
        CHECK_CLOSE(ours.patches[i].force_lb, solid.bearing_lb[i], 0.0, tolerance.force * largest);
    }
    const double turned = std::hypot(solid.tilt_x_rad, solid.tilt_y_rad);
    CHECK_CLOSE(ours.tilt_x_rad, solid.tilt_x_rad, 0.0, tolerance.rotation * turned);
    CHECK_CLOSE(ours.tilt_y_rad, solid.tilt_y_rad, 0.0, tolerance.rotation * turned);
}

}  // namespace

TEST_CASE("a square plate on two blocks, pushed square, agrees with solid elements", "[oracle]") {
    check_agreement(test::square_on_two_blocks(), test::push(90.0));
}

TEST_CASE("the solid elements have converged where the plate is held against them", "[oracle]") {
    const Base base = test::square_on_two_blocks();
    const PlateLoad load = test::push(60.0);
    const test::SolidSolution coarse = test::solve_with_ccx(base, test::mesh_of(base, solid_fineness), load);
    const test::SolidSolution fine = test::solve_with_ccx(base, test::mesh_of(base, 1.3 * solid_fineness), load);
    REQUIRE(2 * fine.freedoms > 3 * coarse.freedoms);
    const double largest = *std::max_element(fine.tension_lb.begin(), fine.tension_lb.end());
    for (std::size_t i = 0; i < fine.tension_lb.size(); ++i)
        CHECK_CLOSE(coarse.tension_lb[i], fine.tension_lb[i], 0.0, 0.001 * largest);
    CHECK_CLOSE(coarse.tilt_x_rad, fine.tilt_x_rad, 0.005, 0.0);
    CHECK_CLOSE(coarse.tilt_y_rad, fine.tilt_y_rad, 0.005, 0.0);
}

TEST_CASE("a rounded steel plate on one stiff block, pushed along its diagonal, agrees with solid elements",
          "[oracle]") {
    Base base{"6 x 6 x 3/8 in, corners of 3/4 in",
              test::rounded_rectangle(6.0, 6.0, 0.75),
              test::rectangle(2.0, 2.0),
              29e6,
              0.3,
              0.375,
              {},
              {}};
    base.anchors = anchors_at({{-2.25, -2.25}, {2.25, -2.25}, {2.25, 2.25}, {-2.25, 2.25}}, 0.4, 80000.0);
    base.bed = {{-3.0, 3.0, -1.75, 1.75, 60000.0}};
    check_agreement(base, test::push(45.0));
}

TEST_CASE("a round aluminum plate with three anchors on a soft deck agrees with solid elements", "[oracle]") {
    Base base{"9 in round, 1/2 in of aluminum", test::circle(9.0), test::circle(2.375), 10.1e6, 0.33, 0.5, {}, {}};
    base.anchors = anchors_at({{0.0, 3.6}, {-3.118, -1.8}, {3.118, -1.8}}, 0.5, 30000.0);
    base.bed = {{-10.0, 10.0, -10.0, 10.0, 4000.0}};
    check_agreement(base, test::push(17.0));
}

TEST_CASE("a thin wide steel plate with six anchors, which pries, agrees with solid elements", "[oracle]") {
    Base base{"10 x 6 x 1/4 in on two stiff blocks",
              test::rectangle(10.0, 6.0),
              test::rectangle(2.5, 2.5),
              29e6,
              0.3,
              0.25,
              {},
              {}};
    base.anchors =
        anchors_at({{-4.0, -2.0}, {0.0, -2.25}, {4.0, -2.0}, {4.0, 2.0}, {0.0, 2.25}, {-4.0, 2.0}}, 0.45, 60000.0);
    base.bed = {{-5.0, 5.0, -3.0, -0.5, 50000.0}, {-5.0, 5.0, 0.5, 3.0, 50000.0}};
    check_agreement(base, test::push(90.0));
}

namespace {

Base ell_on_unlike_blocks(double modulus_psi, double poisson) {
    Base base{"9 x 9 x 5/8 in without a corner",
              test::ell(9.0, 9.0, 2.75),
              test::rectangle(2.5, 2.5),
              modulus_psi,
              poisson,
              0.625,
              {},
              {}};
    base.anchors = anchors_at({{-3.5, -3.5}, {3.6, -3.2}, {3.5, 0.8}, {0.5, 3.5}, {-3.5, 3.0}}, 0.5, 40000.0);
    base.bed = {{-6.0, 6.0, -5.0, -1.0, 25000.0}, {-6.0, 6.0, 1.0, 4.5, 8000.0}};
    return base;
}

}  // namespace

TEST_CASE("an L of steel on two unlike blocks, pushed askew, agrees with solid elements", "[oracle]") {
    check_agreement(ell_on_unlike_blocks(29e6, 0.3), test::push(115.0));
}

TEST_CASE("an L of thick aluminum differs from solid elements by up to 2.5 %, and by their shear alone", "[oracle]") {
    const Base base = ell_on_unlike_blocks(10.1e6, 0.33);
    Tolerance tolerance;
    tolerance.force = 0.025;
    check_agreement(base, test::push(205.0), tolerance);
    tolerance.force = 0.005;
    tolerance.rotation = 0.01;
    tolerance.solid_shear = 10.0;
    check_agreement(base, test::push(205.0), tolerance);
}

TEST_CASE("preloaded anchors under a push and a weight agree with solid elements", "[oracle]") {
    Base base{"7 x 7 x 3/8 in of aluminum, anchors tightened",
              test::rectangle(7.0, 7.0),
              test::rectangle(2.0, 2.0),
              10.1e6,
              0.33,
              0.375,
              {},
              {}};
    base.anchors = anchors_at({{-2.6, -2.6}, {2.6, -2.6}, {2.6, 2.6}, {-2.6, 2.6}}, 0.45, 45000.0, 250.0);
    base.bed = {{-3.5, 3.5, -3.5, 3.5, 15000.0}};
    PlateLoad load = test::push(60.0);
    load.fz_lb = -120.0;
    check_agreement(base, load);
}

TEST_CASE("a trapezium with anchors of unlike stiffness, its post off the middle, agrees with solid elements",
          "[oracle]") {
    Base base{"trapezium of 3/8 in steel",
              {{-4.0, -2.5}, {4.5, -2.5}, {2.5, 5.0}, {-2.0, 5.0}},
              test::rectangle(2.0, 3.0),
              29e6,
              0.3,
              0.375,
              {},
              {}};
    base.anchors = {{{{-3.0, -1.7}, 0.4}, 35000.0, 0.0},
                    {{{3.4, -1.6}, 0.5}, 55000.0, 0.0},
                    {{{1.6, 4.0}, 0.4}, 35000.0, 0.0},
                    {{{-1.2, 3.8}, 0.4}, 20000.0, 0.0}};
    base.bed = {{-5.0, 5.0, -2.0, 1.5, 12000.0}, {-5.0, 5.0, 2.0, 5.5, 30000.0}};
    check_agreement(base, test::push(305.0));
}
