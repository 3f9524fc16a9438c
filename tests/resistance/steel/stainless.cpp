// Wall limits of stainless tubes: from memory, each below the European one.
#include "resistance/steel/stainless.h"

#include "support/compare.h"

#include <cmath>

using namespace toehold;
using namespace toehold::resistance;
using steel::StainlessWalls;

// 304: E/Fy = 28e6/30e3 = 933.3, its root 30.55. Flat limits 34.2 and 37.9, round 65.3 and 289. EN 1993-1-4 (from
// memory): epsilon^2 = 235/Fy x E/210,000 MPa, so 35 epsilon = 1.171 root(E/Fy) = 35.8, 37 epsilon = 37.8 (1.238), 70
// epsilon^2 = 73.1, 280 epsilon^2 = 292.
TEST_CASE("Stainless walls are compact, reach yield, or are slender", "[memory]") {
    const auto walls = [](double flats) {
        const double wall_in = 2.0 / (flats + 3.0);
        return steel::stainless_walls({false, 2.0, 2.0, wall_in}, wall_in, 30e3, 28e6);
    };
    CHECK(walls(8.5) == StainlessWalls::compact);
    CHECK(walls(34.1) == StainlessWalls::compact);
    CHECK(walls(34.3) == StainlessWalls::reach_yield);
    CHECK(walls(37.8) == StainlessWalls::reach_yield);
    CHECK(walls(37.95) == StainlessWalls::slender);
    const auto round = [](double slenderness) {
        return steel::stainless_walls({true, 2.0, 2.0, 2.0 / slenderness}, 2.0 / slenderness, 30e3, 28e6);
    };
    CHECK(round(65.0) == StainlessWalls::compact);
    CHECK(round(66.0) == StainlessWalls::reach_yield);
    CHECK(round(290.0) == StainlessWalls::slender);
    const double root_epsilon = std::sqrt(235.0 / 210000.0);
    CHECK(1.12 < 35.0 * root_epsilon);
    CHECK_CLOSE(1.24, 37.0 * root_epsilon, 0.003, 0.0);
    CHECK(0.07 < 70.0 * root_epsilon * root_epsilon);
}
