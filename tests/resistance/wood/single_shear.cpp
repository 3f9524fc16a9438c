// Nails and wood screws in single shear, and toe-nails.
#include "resistance/wood/single_shear.h"

#include "resistance/wood/withdrawal.h"
#include "support/compare.h"

using namespace toehold::resistance;

namespace {

WoodToWood nail(double diameter_in, double length_in, double side_in, double gravity) {
    WoodToWood connection;
    connection.diameter_in = diameter_in;
    connection.length_in = length_in;
    connection.side_thickness_in = side_in;
    connection.side_specific_gravity = gravity;
    connection.main_specific_gravity = gravity;
    return connection;
}

}  // namespace

TEST_CASE("A 16d common nail in Douglas fir-larch carries 141 lb", "[published]") {
    // NDS-2005 Table 11N (2018: 12N), side member 1-1/2 in, 0.162 in nail, G 0.50: 141 lb, quoted in a public
    // engineers' mailing list.
    const SingleShear value = single_shear_value(nail(0.162, 3.5, 1.5, 0.50));
    CHECK(toehold::test::prints_as(value.value_lb, 141.0, 1.0));
    CHECK(value.mode == YieldMode::IV);
    CHECK_CLOSE(value.penetration_in, 2.0, 1e-14, 0.0);
    CHECK_CLOSE(value.main_bearing_in, 2.0 - 0.162, 1e-14, 0.0);
}

TEST_CASE("A 10d common nail through 3/4 in carries what a published worked example finds", "[published]") {
    // AWC "Structural Wood Design Solved Example Problems" as transcribed in a public verification test: 0.148 x 3 in
    // nail, 3/4 in Douglas fir-larch side member, 467.4884 N = 105.095 lb. Table 12.3.3's rounded Fe moves it 0.5 %.
    CHECK_CLOSE(single_shear_value(nail(0.148, 3.0, 0.75, 0.50)).value_lb, 467.488421732 / 4.4482216, 5e-3, 0.0);
}

TEST_CASE("Common nails through 3/4 and 1 in of Douglas fir-larch carry what NDS Table 12N prints", "[published]") {
    // Read in a public transcription: G 0.50; 6d, 8d, 10d, 16d; penetration 10 D.
    const struct {
        double diameter_in, three_quarters_lb, one_inch_lb;
    } rows[] = {{0.113, 72.0, 72.0}, {0.131, 90.0, 97.0}, {0.148, 105.0, 118.0}, {0.162, 121.0, 141.0}};
    for (const auto& row : rows) {
        CAPTURE(row.diameter_in);
        const auto value = [&](double side_in) {
            return single_shear_value(nail(row.diameter_in, side_in + 10.0 * row.diameter_in, side_in, 0.50)).value_lb;
        };
        CHECK(toehold::test::prints_as(value(0.75), row.three_quarters_lb, 1.0));
        CHECK(toehold::test::prints_as(value(1.0), row.one_inch_lb, 1.0));
    }
}

TEST_CASE("A wood screw bends at its root", "[closed-form]") {
    // No. 10: D .190, root .152, Fyb 80,000 (Table I1, .177 < D <= .236), G .55: Fe = 5550 both.
    //   IV = .152^2 / 2.2 x sqrt(2 x 5550 x 80000 / 6) = 0.0105018 x 12165.5 = 127.76
    WoodToWood screw = nail(0.190, 3.0, 1.5, 0.55);
    screw.root_diameter_in = 0.152;
    const SingleShear value = single_shear_value(screw);
    CHECK(value.mode == YieldMode::IV);
    CHECK_CLOSE(value.value_lb, 127.76, 1e-4, 0.0);
}

TEST_CASE("Too little penetration gives no value", "[unit]") {
    // 6 D = 6 x .162 = .972 in.
    CHECK(single_shear_value(nail(0.162, 2.46, 1.5, 0.5)).value_lb == 0.0);
    CHECK(single_shear_value(nail(0.162, 2.48, 1.5, 0.5)).value_lb > 0.0);
    WoodToWood through = nail(0.162, 3.5, 1.5, 0.5);
    through.main_thickness_in = 0.75;  // pokes through
    CHECK(single_shear_value(through).value_lb == 0.0);
}

TEST_CASE("In end grain a thick screw bears as across the grain", "[unit]") {
    WoodToWood screw = nail(0.268, 4.0, 1.5, 0.5);
    screw.root_diameter_in = 0.209;
    WoodToWood crosswise = screw;
    crosswise.main_angle_rad = 1.5707963267948966;
    screw.main_end_grain = true;
    CHECK(single_shear_value(screw).value_lb == single_shear_value(crosswise).value_lb);
}

TEST_CASE("A nail without size or wood is refused", "[bad-input]") {
    CHECK_THROWS_AS(single_shear_value(nail(0.0, 3.5, 1.5, 0.5)), std::invalid_argument);
    CHECK_THROWS_AS(single_shear_value(nail(0.162, 3.5, 0.0, 0.5)), std::invalid_argument);
    CHECK_THROWS_AS(single_shear_value(nail(0.162, 3.5, 1.5, 0.0)), std::invalid_argument);
}

TEST_CASE("An 8d common nail in spruce-pine-fir holds what a published worked example finds", "[published]") {
    // AWC "Structural Wood Design Solved Example Problems" E2.1a as transcribed in a public verification test: 0.131 x
    // 2.5 in nail, G 0.42, 0.105 in side member: p 2.395 in, W 3619.313 N/m = 20.67 lb/in, 49.5 lb.
    constexpr double newton_per_metre = 4.4482216152605 / 0.0254;
    CHECK_CLOSE(nail_withdrawal_lb_per_in(0.42, 0.131) * newton_per_metre, 3619.31305943, 1e-6, 0.0);
    CHECK_CLOSE(nail_withdrawal_lb_per_in(0.42, 0.131) * 2.395, 49.495, 0.0, 0.01);
}

TEST_CASE("Nail withdrawal meets two entries of NDS Table 12.2C", "[published]") {
    // Read in a public transcription: G 0.50, .131 in: 32; G 0.42, .162 in: 26 lb/in.
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.50, 0.131), 32.0, 1.0));
    CHECK(toehold::test::prints_as(nail_withdrawal_lb_per_in(0.42, 0.162), 26.0, 1.0));
}

TEST_CASE("Nail withdrawal meets NDS Table 12.2C where it is remembered", "[memory]") {
    // Columns .131, .148, .162 in; G 0.50: 36 and 40; G 0.55: 41, 46, 50 lb/in (from memory, to be confirmed).
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
