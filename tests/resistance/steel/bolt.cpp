// Bolts, threaded parts and their holes: AISC 360-16 J3. The published numbers are those of AISC 360-10 Table J3.2.
#include "resistance/steel/bolt.h"

#include "support/compare.h"

using namespace toehold;
using namespace toehold::resistance;

TEST_CASE("A307 bolts have the usable strengths of the published nominal stresses", "[published]") {
    // Fnt 45 ksi, Fnv 27 ksi, omega 2.00. 3/8 in: 0.1104 in2, 2.485 kip and 1.491 kip; 1/2 in: 0.1963, 4.418, 2.651.
    CHECK(test::prints_as(steel::circle_area_in2(0.375), 0.1104, 0.0001));
    CHECK(test::prints_as(steel::circle_area_in2(0.5), 0.1963, 0.0001));
    CHECK_CLOSE(45.0 * steel::circle_area_in2(0.375) / steel::bolt_safety.omega, 2.485, 0.0, 0.0005);
    CHECK_CLOSE(27.0 * steel::circle_area_in2(0.375) / steel::bolt_safety.omega, 1.491, 0.0, 0.0005);
    CHECK_CLOSE(45.0 * steel::circle_area_in2(0.5) / steel::bolt_safety.omega, 4.418, 0.0, 0.0005);
    CHECK_CLOSE(27.0 * steel::circle_area_in2(0.5) / steel::bolt_safety.omega, 2.651, 0.0, 0.0005);
    CHECK(steel::bolt_safety.phi == 0.75);
}

TEST_CASE("The threaded part's rule gives the table's rows for the named bolts", "[published]") {
    // A307: Fu 60 ksi; Group A: 120 ksi; Group B: 150 ksi. Table J3.2 prints 45/27, 90/54, 113/68.
    CHECK_CLOSE(steel::threaded_tension_psi(60.0), 45.0, 1e-12, 0.0);
    CHECK_CLOSE(steel::threaded_shear_psi(60.0), 27.0, 1e-12, 0.0);
    CHECK_CLOSE(steel::threaded_tension_psi(120.0), 90.0, 1e-12, 0.0);
    CHECK_CLOSE(steel::threaded_shear_psi(120.0), 54.0, 1e-12, 0.0);
    CHECK(test::prints_as(steel::threaded_tension_psi(150.0), 113.0, 1.0));
    CHECK(test::prints_as(steel::threaded_shear_psi(150.0), 68.0, 1.0));
}

TEST_CASE("Tension beside shear follows the equation and its cap", "[published]") {
    // ASD: 1.3 x 45 - (2.00 x 45 / 27) x 10 = 25.17 ksi for a shear of 10 ksi.
    CHECK_CLOSE(steel::combined_tension_psi(45e3, 10e3, 27e3 / 2.0), 25166.7, 0.0, 0.1);
    // LRFD: 1.3 x 45 - 45 / (0.75 x 27) x 15 = 25.17 ksi for 15 ksi.
    CHECK_CLOSE(steel::combined_tension_psi(45e3, 15e3, 0.75 * 27e3), 25166.7, 0.0, 0.1);
    CHECK(steel::combined_tension_psi(45e3, 2e3, 27e3 / 2.0) == 45e3);
    CHECK(steel::combined_tension_psi(45e3, 40e3, 27e3 / 2.0) == 0.0);
}

TEST_CASE("The one ratio is 1 exactly where the reduced tension is used up", "[property]") {
    for (double shear_ratio = 0.0; shear_ratio <= 1.0; shear_ratio += 0.05) {
        const double tension_ratio = steel::combined_tension_psi(1.0, shear_ratio, 1.0);
        INFO("shear ratio " << shear_ratio);
        CHECK_CLOSE(steel::combined_ratio(tension_ratio, shear_ratio), 1.0, 1e-12, 0.0);
        CHECK(steel::combined_ratio(tension_ratio + 0.01, shear_ratio) > 1.0);
    }
    CHECK(steel::combined_ratio(0.0, 1.2) == 1.2);
}

TEST_CASE("Minimum edge distances are those of the table", "[published]") {
    // AISC 360-16 Table J3.4.
    CHECK(steel::minimum_edge_distance_in(0.5) == 0.75);
    CHECK(steel::minimum_edge_distance_in(0.625) == 0.875);
    CHECK(steel::minimum_edge_distance_in(0.75) == 1.0);
    CHECK(steel::minimum_edge_distance_in(0.875) == 1.125);
    CHECK(steel::minimum_edge_distance_in(1.0) == 1.25);
    CHECK(steel::minimum_edge_distance_in(1.125) == 1.5);
    CHECK(steel::minimum_edge_distance_in(1.25) == 1.625);
    CHECK(steel::minimum_edge_distance_in(2.0) == 2.5);
    // Between two rows that of the larger bolt.
    CHECK(steel::minimum_edge_distance_in(0.51) == 0.875);
    CHECK(steel::minimum_edge_distance_in(0.63) == 1.0);
    CHECK(steel::minimum_edge_distance_in(0.76) == 1.125);
    CHECK(steel::minimum_edge_distance_in(0.88) == 1.25);
    CHECK(steel::minimum_edge_distance_in(1.01) == 1.5);
    CHECK(steel::minimum_edge_distance_in(1.13) == 1.625);
}

TEST_CASE("Minimum edge distance never falls as the bolt grows", "[property]") {
    double before = 0.0;
    for (double diameter = 0.19; diameter < 2.0; diameter += 0.01) {
        const double edge = steel::minimum_edge_distance_in(diameter);
        INFO("diameter " << diameter);
        CHECK(edge >= before);
        CHECK(edge >= 1.25 * diameter - 1e-12);
        before = edge;
    }
    CHECK(steel::minimum_edge_distance_in(0.375) == 0.5625);  // 1.5 D below the table
}

TEST_CASE("Bearing at a hole turns from tear-out to crushing at a clear distance of two diameters", "[closed-form]") {
    // 1.2 x 0.53125 x 0.375 x 58,000 = 13,866 lb; 2.4 x 0.375 x 0.375 x 58,000 = 19,575 lb.
    CHECK_CLOSE(steel::hole_bearing_lb(0.53125, 0.375, 0.375, 58000.0), 13865.6, 0.0, 0.1);
    CHECK_CLOSE(steel::hole_bearing_lb(0.75, 0.375, 0.375, 58000.0), 19575.0, 1e-12, 0.0);
    CHECK_CLOSE(steel::hole_bearing_lb(3.0, 0.375, 0.375, 58000.0), 19575.0, 1e-12, 0.0);
    CHECK(steel::hole_bearing_lb(0.0, 0.375, 0.375, 58000.0) == 0.0);
}

TEST_CASE("Standard and oversize holes are those of the table", "[published]") {
    // AISC 360-16 Table J3.3, from memory: 1/2 in 9/16 and 5/8; 5/8 in 11/16 and 13/16; 3/4 in 13/16 and 15/16;
    // 7/8 in 15/16 and 1 1/16; 1 in 1 1/8 and 1 1/4; 1 1/8 in and above D + 1/8 and D + 5/16.
    const struct {
        double diameter_in, standard_in, oversize_in;
    } rows[] = {{0.5, 0.5625, 0.625},    {0.625, 0.6875, 0.8125}, {0.75, 0.8125, 0.9375},
                {0.875, 0.9375, 1.0625}, {1.0, 1.125, 1.25},      {1.25, 1.375, 1.5625}};
    for (const auto& row : rows) {
        INFO("bolt of " << row.diameter_in);
        CHECK(steel::largest_standard_hole_in(row.diameter_in) == row.standard_in);
        CHECK(steel::oversize_hole_in(row.diameter_in) == row.oversize_in);
    }
    CHECK(steel::oversize_hole_in(0.375) == 0.5);  // below the table what its first row adds
}
