// Fillet welds and holes in aluminum: Aluminum Design Manual 2020, all from memory, to be confirmed.
#include "resistance/aluminum/connection.h"

#include "support/compare.h"

using namespace toehold;
using namespace toehold::resistance;

TEST_CASE("A fillet in aluminum breaks in its throat or along its leg", "[closed-form]") {
    // 3/16 in leg, filler 17 ksi in shear: 0.707 x 0.1875 x 17,000 = 2253.6 lb/in.
    CHECK_CLOSE(aluminum::weld_filler_lb_per_in(0.1875, 17e3), 2253.6, 0.0, 0.1);
    // 0.6 x 24,000 x 0.125: the wall is thinner than the leg.
    CHECK_CLOSE(aluminum::weld_base_metal_lb_per_in(0.1875, 0.125, 24e3), 1800.0, 1e-12, 0.0);
    CHECK_CLOSE(aluminum::weld_base_metal_lb_per_in(0.1875, 0.5, 24e3), 2700.0, 1e-12, 0.0);
}

TEST_CASE("A hole in aluminum bears by its edge distance up to two diameters", "[closed-form]") {
    CHECK(aluminum::minimum_edge_distance_in(0.375) == 0.5625);
    CHECK_CLOSE(aluminum::hole_bearing_lb(0.5, 0.375, 0.5, 24e3), 6000.0, 1e-12, 0.0);
    CHECK_CLOSE(aluminum::hole_bearing_lb(2.0, 0.375, 0.5, 24e3), 9000.0, 1e-12, 0.0);
}
