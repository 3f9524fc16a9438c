// Welds: AISC 360-16 J2.4.
#include "resistance/steel/weld.h"

#include "support/compare.h"

using namespace toehold;
using namespace toehold::resistance;

TEST_CASE("A 3/16 in fillet of E70 has the strength of the published example", "[published]") {
    // AISC Design Examples v14, J.1: 0.60 x 70 ksi x (3/16 / sqrt 2) = 5.57 kip/in nominal.
    CHECK(test::prints_as(steel::weld_metal_lb_per_in(0.1875, 70e3) / 1000.0, 5.57, 0.01));
    CHECK(steel::weld_safety.omega == 2.00);
    CHECK(steel::weld_safety.phi == 0.75);
    // A groove counts with its throat alone, AISC 360-16 Table J2.5: 0.60 x 70,000 x 1/8.
    CHECK_CLOSE(steel::groove_metal_lb_per_in(0.125, 70e3), 5250.0, 1e-12, 0.0);
}

TEST_CASE("The least leg grows with the thinner part", "[unit]") {
    // AISC 360-16 Table J2.4. The example J.1 confirms 1/8 in for 1/4 in.
    CHECK(steel::minimum_leg_in(0.25) == 0.125);
    CHECK(steel::minimum_leg_in(0.375) == 0.1875);
    CHECK(steel::minimum_leg_in(0.625) == 0.25);
    CHECK(steel::minimum_leg_in(1.0) == 0.3125);
}

TEST_CASE("The least throat of a partial penetration groove is the table's", "[published]") {
    // AISC 360 Table J2.3, read in public text, at each row's end and just past it; SI column 3, 5, 6, 8, 10, 13, 16
    // mm.
    const double rows[][4] = {{0.25, 0.125, 6.0, 3.0},  {0.5, 0.1875, 13.0, 5.0},  {0.75, 0.25, 19.0, 6.0},
                              {1.5, 0.3125, 38.0, 8.0}, {2.25, 0.375, 57.0, 10.0}, {6.0, 0.5, 150.0, 13.0},
                              {7.0, 0.625, 180.0, 16.0}};
    double before_in = 0.0, before_mm = 0.0;
    for (const auto& [thickness_in, throat_in, thickness_mm, throat_mm] : rows) {
        INFO(thickness_in);
        CHECK(steel::minimum_throat_in(thickness_in) == throat_in);
        CHECK(steel::minimum_throat_in(before_in + 0.01) == throat_in);
        CHECK(steel::is_minimum_throat(throat_in, thickness_in));
        CHECK_FALSE(steel::is_minimum_throat(0.9 * throat_in, thickness_in));
        CHECK(steel::is_minimum_throat(throat_mm / 25.4, thickness_mm / 25.4));
        CHECK_FALSE(steel::is_minimum_throat(0.9 * throat_mm / 25.4, (before_mm + 5.0) / 25.4));
        before_in = thickness_in;
        before_mm = thickness_mm;
    }
}

TEST_CASE("A leg is enough by either column of the table", "[published]") {
    // AISC 360 Table J2.4, read in public text; its SI column is rounded: 3, 5, 6 and 8 mm.
    CHECK(steel::is_minimum_leg(0.125, 0.25));
    CHECK(steel::is_minimum_leg(3.0 / 25.4, 0.1875));
    CHECK_FALSE(steel::is_minimum_leg(0.11, 0.1875));
    CHECK(steel::is_minimum_leg(0.1875, 0.375));
    CHECK_FALSE(steel::is_minimum_leg(0.125, 0.375));
    CHECK(steel::is_minimum_leg(6.0 / 25.4, 0.625));
    CHECK_FALSE(steel::is_minimum_leg(0.1875, 0.625));
    CHECK_FALSE(steel::is_minimum_leg(0.25, 1.0));
    // 20 mm thick is past 3/4 in and past 19 mm; 14 mm past 1/2 in and past 13 mm; 7 mm past 1/4 in and past 6 mm.
    CHECK_FALSE(steel::is_minimum_leg(6.0 / 25.4, 20.0 / 25.4));
    CHECK_FALSE(steel::is_minimum_leg(5.0 / 25.4, 14.0 / 25.4));
    CHECK_FALSE(steel::is_minimum_leg(3.0 / 25.4, 7.0 / 25.4));
    CHECK(steel::is_minimum_leg(0.3125, 1.0));
}
