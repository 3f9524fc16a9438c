// Edge distance and bearing at holes: AISC 360-16 J3.4 and J3.10.
#include "resistance/steel/hole_edge.h"

#include "support/compare.h"

using namespace toehold;
using namespace toehold::resistance;

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
