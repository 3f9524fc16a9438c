// Nails in withdrawal, and driven aslant.
#include "resistance/wood/toe_nail.h"

#include "resistance/wood/single_shear.h"
#include "resistance/wood/withdrawal.h"

#include "support/compare.h"

using namespace toehold::resistance;

TEST_CASE("An 8d common nail in spruce-pine-fir holds what a published worked example finds", "[published]") {
    // AWC "Structural Wood Design Solved Example Problems" E2.1a as transcribed in a public verification test: 0.131 x
    // 2.5 in nail, G 0.42, 0.105 in side member: p 2.395 in, W 3619.313 N/m = 20.67 lb/in, 49.5 lb.
    constexpr double newton_per_metre = 4.4482216152605 / 0.0254;
    CHECK_CLOSE(nail_withdrawal_lb_per_in(0.42, 0.131) * newton_per_metre, 3619.31305943, 1e-6, 0.0);
    CHECK_CLOSE(nail_withdrawal_lb_per_in(0.42, 0.131) * 2.395, 49.495, 0.0, 0.01);
}

TEST_CASE("Nail withdrawal meets NDS Table 12.2C where it is remembered", "[published]") {
    // Columns .131, .148, .162 in; G 0.50: 32, 36, 40; G 0.55: 41, 46, 50 lb/in (from memory, to be confirmed).
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.50, 0.131), 32.0, 1.0));
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.50, 0.148), 36.0, 1.0));
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.50, 0.162), 40.0, 1.0));
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.55, 0.131), 41.0, 1.0));
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.55, 0.148), 46.0, 1.0));
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.55, 0.162), 50.0, 1.0));
}

TEST_CASE("A toe-nail's place follows from its slant", "[closed-form]") {
    // 16d common, 3.5 in: ls = 3.5/3 = 1.1667; 3.5 x 0.866025 - 1.1667 = 1.8644; 1.1667 x 0.57735 = 0.6736.
    const ToeNailPlace place = toe_nail_place(3.5);
    CHECK_CLOSE(place.side_in, 1.16667, 0.0, 1e-5);
    CHECK_CLOSE(place.penetration_in, 1.86442, 0.0, 1e-5);
    CHECK_CLOSE(place.inside_in, 0.67358, 0.0, 1e-5);
}

TEST_CASE("A 16d toe-nail in Douglas fir-larch takes 0.83 of the mode IV value", "[closed-form]") {
    // With 1.17 in of side member and 1.86 in of penetration mode IV governs, as it does with 1-1/2 in, for which a
    // public mailing list quotes 141 lb of NDS-2005 Table 11N: 0.83 x 141 = 117 lb.
    const ToeNailPlace place = toe_nail_place(3.5);
    WoodToWood nail;
    nail.diameter_in = 0.162;
    nail.length_in = place.side_in + place.penetration_in;
    nail.side_thickness_in = place.side_in;
    nail.side_specific_gravity = nail.main_specific_gravity = 0.50;
    const SingleShear value = single_shear_value(nail);
    CHECK(value.mode == YieldMode::IV);
    CHECK_CLOSE(toe_nail_lateral() * value.value_lb, 0.83 * 141.0, 0.0, 0.5);
}
