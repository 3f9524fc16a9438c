#include "resistance/wood/single_shear.h"

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
