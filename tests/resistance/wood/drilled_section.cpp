// A drilled rectangle by hand.
#include "resistance/wood/drilled_section.h"

#include "support/compare.h"

#include <vector>

using namespace toehold::resistance;

TEST_CASE("without holes the moduli are those of the rectangle", "[closed-form]") {
    const NetModuli whole = net_moduli(3.5, 5.5, {});
    CHECK_CLOSE(whole.about_x_in3, 3.5 * 5.5 * 5.5 / 6.0, 1e-12, 0.0);
    CHECK_CLOSE(whole.about_y_in3, 5.5 * 3.5 * 3.5 / 6.0, 1e-12, 0.0);
}

TEST_CASE("a hole in the middle takes its breadth about x and next to nothing about y", "[closed-form]") {
    // (3.5 - 0.5) 3.5^2/6 = 6.125; 3.5 (3.5^3 - 0.5^3)/12/1.75 = 7.12500.
    const std::vector<DrilledHole> hole{{0.0, 0.5}};
    const NetModuli net = net_moduli(3.5, 3.5, hole);
    CHECK_CLOSE(net.about_x_in3, 6.125, 1e-12, 0.0);
    CHECK_CLOSE(net.about_y_in3, 3.5 * (42.875 - 0.125) / 12.0 / 1.75, 1e-12, 0.0);
}

TEST_CASE("two holes off the middle are the three strips left", "[closed-form]") {
    // 1 in holes at -1 and 1 of 4 in: strips of 1/2, 1 and 1/2 in. About y: outer strips at 1.75 in, 2 (0.5^3/12 + 0.5
    // x 1.75^2), the middle one 1/12; times the depth over 2 in.
    const std::vector<DrilledHole> holes{{-1.0, 1.0}, {1.0, 1.0}};
    const NetModuli net = net_moduli(4.0, 6.0, holes);
    CHECK_CLOSE(net.about_x_in3, 2.0 * 36.0 / 6.0, 1e-12, 0.0);
    CHECK_CLOSE(net.about_y_in3, 6.0 / 2.0 * (2.0 * (0.125 / 12.0 + 0.5 * 1.75 * 1.75) + 1.0 / 12.0), 1e-12, 0.0);
    CHECK(net_moduli(1.0, 6.0, holes).about_x_in3 == 0.0);
}
