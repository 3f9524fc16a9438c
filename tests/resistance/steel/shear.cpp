// Tubes in shear: AISC 360-16 G4 and G5.
#include "resistance/steel/shear.h"

#include "support/compare.h"

using namespace toehold;
using namespace toehold::resistance;

// AISC Design Examples G.4 (from memory; worked again here): HSS6x4x3/8, Fy 46 ksi, t 0.349: h = 6 - 3 x 0.349 = 4.953;
// Aw = 2 x 4.953 x 0.349 = 3.457 in2; 0.6 x 46 x 3.457 = 95.4 kips.
TEST_CASE("A rectangular tube's two walls carry shear", "[memory]") {
    const steel::TubeShape tube{false, 4.0, 6.0, 0.375};
    CHECK_CLOSE(steel::tube_shear_lb(tube, 0.349, false, 46e3), 95420.0, 1e-3, 0.0);
    // Along the other side: 4 - 1.047 = 2.953.
    CHECK_CLOSE(steel::tube_shear_lb(tube, 0.349, true, 46e3), 0.6 * 46e3 * 2.0 * 2.953 * 0.349, 1e-9, 0.0);
}

TEST_CASE("Round tubes, bars and side walls", "[closed-form]") {
    // Half the area of 2 x 1/8 in: pi/8 (4 - 3.0625) = 0.36816.
    CHECK_CLOSE(steel::tube_shear_lb({true, 2.0, 2.0, 0.125}, 0.125, true, 35e3), 0.6 * 35e3 * 0.368155, 1e-5, 0.0);
    CHECK_CLOSE(steel::bar_shear_lb({false, 1.5, 1.0, 0.5}, 36e3), 0.6 * 36e3 * 1.0, 1e-12, 0.0);
    CHECK_CLOSE(steel::bar_shear_lb({true, 1.0, 1.0, 0.5}, 36e3), 0.6 * 36e3 * 0.7853982 * 0.75, 1e-6, 0.0);
    CHECK(steel::side_walls_lb_per_in(0.125, 36e3) == 9000.0);
}
