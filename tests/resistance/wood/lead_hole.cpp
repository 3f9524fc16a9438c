// Lead holes against NDS 2018 12.1.4.2, 12.1.4.3, 12.1.5.2 and 12.1.5.3 worked by hand (shares read in a public
// text), and bits against the row of a drill index.
#include "resistance/wood/lead_hole.h"

#include "support/compare.h"

#include <stdexcept>

using namespace toehold::resistance;

TEST_CASE("A lag screw's lead hole follows the wood's density", "[published][unit]") {
    // 1/2 in: 0.65 and 0.85 of it in oak, 0.60 and 0.75 in southern pine, 0.40 and 0.70 in spruce-pine-fir.
    const LagLeadHole oak = lag_screw_lead_hole(0.5, 0.67);
    CHECK_CLOSE(oak.shank_in, 0.5, 0.0, 1e-12);
    CHECK_CLOSE(oak.thread_low_in, 0.325, 0.0, 1e-12);
    CHECK_CLOSE(oak.thread_high_in, 0.425, 0.0, 1e-12);
    const LagLeadHole pine = lag_screw_lead_hole(0.5, 0.55);
    CHECK_CLOSE(pine.thread_low_in, 0.3, 0.0, 1e-12);
    CHECK_CLOSE(pine.thread_high_in, 0.375, 0.0, 1e-12);
    const LagLeadHole spruce = lag_screw_lead_hole(0.5, 0.42);
    CHECK_CLOSE(spruce.thread_low_in, 0.2, 0.0, 1e-12);
    CHECK_CLOSE(spruce.thread_high_in, 0.35, 0.0, 1e-12);
}

TEST_CASE("The bounds of the density groups belong to the lighter group", "[published][unit]") {
    CHECK_CLOSE(lag_screw_lead_hole(1.0, 0.60).thread_high_in, 0.75, 0.0, 1e-12);
    CHECK_CLOSE(lag_screw_lead_hole(1.0, 0.50).thread_high_in, 0.70, 0.0, 1e-12);
    CHECK_FALSE(wood_screw_lead_hole(0.242, 0.196, 0.50).required_for_pull);
    CHECK(wood_screw_lead_hole(0.242, 0.196, 0.501).required_for_pull);
}

TEST_CASE("Only slender lag screws in light wood may go without a lead hole", "[published][unit]") {
    CHECK(lag_screw_may_go_without_lead_hole(0.375, 0.50));
    CHECK_FALSE(lag_screw_may_go_without_lead_hole(0.4375, 0.42));
    CHECK_FALSE(lag_screw_may_go_without_lead_hole(0.25, 0.55));
}

TEST_CASE("A wood screw's lead hole follows the wood's density", "[published][unit]") {
    // No. 14: D 0.242, root 0.196. Oak: 0.9 x 0.196 = 0.1764 to 0.196; else 0.1372 to 0.1715, shank 7/8 x 0.242 =
    // 0.21175.
    const WoodScrewLeadHole oak = wood_screw_lead_hole(0.242, 0.196, 0.67);
    CHECK_CLOSE(oak.shank_in, 0.242, 0.0, 1e-12);
    CHECK_CLOSE(oak.thread_low_in, 0.1764, 0.0, 1e-12);
    CHECK_CLOSE(oak.thread_high_in, 0.196, 0.0, 1e-12);
    const WoodScrewLeadHole pine = wood_screw_lead_hole(0.242, 0.196, 0.55);
    CHECK_CLOSE(pine.shank_in, 0.21175, 0.0, 1e-12);
    CHECK_CLOSE(pine.thread_low_in, 0.1372, 0.0, 1e-12);
    CHECK_CLOSE(pine.thread_high_in, 0.1715, 0.0, 1e-12);
}

TEST_CASE("A bit is one a drill index has, the coarser row first", "[unit]") {
    // 3/8 in lag in spruce: 0.15 to 0.2625, middle 0.20625: 3/16 is 0.019 off, 1/4 is 0.044 off.
    CHECK_CLOSE(customary_bit_in(0.15, 0.2625), 3.0 / 16, 0.0, 1e-12);
    // 3/8 in lag in southern pine: 0.225 to 0.28125: 1/4.
    CHECK_CLOSE(customary_bit_in(0.225, 0.28125), 0.25, 0.0, 1e-12);
    // No sixteenth between 0.10 and 0.12; no 32nd either (3/32 = 0.094, 1/8 = 0.125): 7/64 = 0.109.
    CHECK_CLOSE(customary_bit_in(0.10, 0.12), 7.0 / 64, 0.0, 1e-12);
    // 0.0917 to 0.1146: 3/32.
    CHECK_CLOSE(customary_bit_in(0.0917, 0.1146), 3.0 / 32, 0.0, 1e-12);
    // Metric: 3/8 in lag in spruce, 3.81 to 6.67 mm, middle 5.24: 5 mm. 2.33 to 2.91: 2.5 mm. 2.6 to 2.9: 2.7 mm.
    CHECK_CLOSE(customary_bit_mm(0.15, 0.2625), 5.0, 0.0, 1e-12);
    CHECK_CLOSE(customary_bit_mm(0.0917, 0.1146), 2.5, 0.0, 1e-12);
    CHECK_CLOSE(customary_bit_mm(2.6 / 25.4, 2.9 / 25.4), 2.7, 0.0, 1e-12);
    // Ends count: 1/4 to 1/4.
    CHECK_CLOSE(customary_bit_in(0.25, 0.25), 0.25, 0.0, 1e-12);
    // Nothing between 0.126 and 0.130: the 64th below, 1/8.
    CHECK_CLOSE(customary_bit_in(0.126, 0.130), 0.125, 0.0, 1e-12);
    // The middle of 0.1355 and 0.1395 is 8.8 64ths: 8 below it.
    CHECK_CLOSE(customary_bit_in(0.1355, 0.1395), 0.125, 0.0, 1e-12);
}

TEST_CASE("Lead holes of nothing are refused", "[bad-input]") {
    CHECK_THROWS_AS(lag_screw_lead_hole(0.0, 0.5), std::invalid_argument);
    CHECK_THROWS_AS(lag_screw_lead_hole(0.375, -0.1), std::invalid_argument);
    CHECK_THROWS_AS(lag_screw_may_go_without_lead_hole(0.375, 0.0), std::invalid_argument);
    CHECK_THROWS_AS(wood_screw_lead_hole(0.2, 0.3, 0.5), std::invalid_argument);
    CHECK_THROWS_AS(customary_bit_in(0.2, 0.1), std::invalid_argument);
    CHECK_THROWS_AS(customary_bit_in(0.0, 0.1), std::invalid_argument);
}
