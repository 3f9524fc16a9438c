// Bars in bending: AISC 360-16 F11.
#include "resistance/steel/bar.h"

#include "support/compare.h"

using namespace toehold;
using namespace toehold::resistance;

// AISC Design Examples F.11 (from memory; worked again here): a 5 x 3 in bar, A36, bent about its stronger axis, 12 ft:
// 144 x 5/9 = 80 is over 0.08 E/Fy = 64.4 and under 1.9 E/Fy = 1531: (1.52 - 0.274 x 80 x 36/29,000) 450 = 671.8 kip in
// with Cb 1 (the example has Cb 1.14 and so Mp = 36 x 18.75 = 675 kip in).
TEST_CASE("A flat bar between yielding and lateral-torsional buckling", "[memory]") {
    CHECK_CLOSE(steel::flat_bar_moment_lb_in(3.0, 5.0, 144.0, 36e3, 29e6), 671755.0, 1e-5, 0.0);
    CHECK_CLOSE(steel::flat_bar_moment_lb_in(3.0, 5.0, 100.0, 36e3, 29e6), 675000.0, 1e-12, 0.0);
    // Just below 0.08 E/Fy, where the sloping line would already give 1.52 - 0.274 x 0.0799 = 1.498 of yield.
    CHECK_CLOSE(steel::flat_bar_moment_lb_in(3.0, 5.0, 115.8, 36e3, 29e6), 675000.0, 1e-12, 0.0);
}

// 1/4 x 4 in, 42 in: 42 x 4/0.0625 = 2688, over 1531: 1.9 x 29e6/2688 x 0.66667 = 13,666 lb in; Fy S = 24,000.
TEST_CASE("A thin flat bar buckles sideways", "[unit]") {
    CHECK_CLOSE(steel::flat_bar_moment_lb_in(0.25, 4.0, 42.0, 36e3, 29e6), 13665.7, 1e-5, 0.0);
    // At 1.9 E/Fy the two curves meet within 0.1 %: 1.52 - 0.274 x 1.9 = 0.9994.
    const double limit_in = 1.9 * 29e6 / 36e3 * 0.0625 / 4.0;
    CHECK_CLOSE(steel::flat_bar_moment_lb_in(0.25, 4.0, 0.9999 * limit_in, 36e3, 29e6), 24000.0, 1e-3, 0.0);
    CHECK_CLOSE(steel::flat_bar_moment_lb_in(0.25, 4.0, 1.0001 * limit_in, 36e3, 29e6), 24000.0, 1e-3, 0.0);
}

TEST_CASE("A round bar is held to 1.6 times first yield", "[closed-form]") {
    // D = 1: S = pi/32, Z = 1/6; Z/S = 1.698.
    CHECK_CLOSE(steel::stocky_bar_moment_lb_in(0.0981748, 0.1666667, 36e3), 36e3 * 1.6 * 0.0981748, 1e-9, 0.0);
    // A square one is not: Z/S = 1.5.
    CHECK_CLOSE(steel::stocky_bar_moment_lb_in(1.0 / 6.0, 0.25, 36e3), 9000.0, 1e-12, 0.0);
}
