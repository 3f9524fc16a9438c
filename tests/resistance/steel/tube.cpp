// Section properties of tubes against published ones and against areas counted in small squares.
#include "resistance/steel/tube.h"

#include "support/compare.h"

#include <cmath>

using namespace toehold;
using namespace toehold::resistance;

namespace {

steel::TubeSection standard_tube(double width, double depth, double design_wall) {
    return steel::rectangular_section(width, depth, design_wall, 2.0 * design_wall);
}

}  // namespace

TEST_CASE("Rectangular tubes have the section properties of the published tables", "[published]") {
    // As quoted from AISC Manual Tables 1-11 and 1-12 in the AISC Design Examples, version 14, F.6 to F.8:
    // HSS3-1/2x3-1/2x1/8 Z 1.93; HSS10x6x3/16 I 74.6, Z 18.0, S 14.9; HSS8x8x3/16 I 54.4, Z 15.7, S 13.6. Design walls
    // 0.116 and 0.174.
    const auto small = standard_tube(3.5, 3.5, 0.116);
    CHECK(test::prints_as(small.plastic_x_in3, 1.93, 0.01));
    const auto deep = standard_tube(6.0, 10.0, 0.174);
    CHECK(test::prints_as(deep.inertia_x_in4, 74.6, 0.1));
    CHECK(test::prints_as(deep.plastic_x_in3, 18.0, 0.1));
    CHECK(test::prints_as(deep.section_x_in3, 14.9, 0.1));
    const auto square = standard_tube(8.0, 8.0, 0.174);
    CHECK(test::prints_as(square.inertia_x_in4, 54.4, 0.1));
    CHECK(test::prints_as(square.plastic_x_in3, 15.7, 0.1));
    CHECK(test::prints_as(square.section_x_in3, 13.6, 0.1));
    // Transcriptions of the same tables, second-hand: HSS2x2x1/8 A 0.840, I 0.486; HSS2x1x1/8 A 0.608, I 0.280 and
    // 0.092, Z 0.366 and 0.223; HSS3x3x3/16 A 1.89, I 2.46, S 1.64.
    const auto post = standard_tube(2.0, 2.0, 0.116);
    CHECK(test::prints_as(post.area_in2, 0.840, 0.001));
    CHECK(test::prints_as(post.inertia_x_in4, 0.486, 0.001));
    const auto flat = standard_tube(1.0, 2.0, 0.116);
    CHECK(test::prints_as(flat.area_in2, 0.608, 0.001));
    CHECK(test::prints_as(flat.inertia_x_in4, 0.280, 0.001));
    CHECK(test::prints_as(flat.inertia_y_in4, 0.092, 0.001));
    CHECK(test::prints_as(flat.plastic_x_in3, 0.366, 0.001));
    CHECK(test::prints_as(flat.plastic_y_in3, 0.223, 0.001));
    const auto larger = standard_tube(3.0, 3.0, 0.174);
    CHECK(test::prints_as(larger.area_in2, 1.89, 0.01));
    CHECK(test::prints_as(larger.inertia_x_in4, 2.46, 0.01));
    CHECK(test::prints_as(larger.section_x_in3, 1.64, 0.01));
    CHECK(steel::design_wall_in(0.125) == 0.93 * 0.125);
}

TEST_CASE("A tube with square corners is one rectangle less another", "[closed-form]") {
    const auto tube = steel::rectangular_section(2.0, 3.0, 0.25, 0.0);
    CHECK_CLOSE(tube.area_in2, 6.0 - 1.5 * 2.5, 1e-12, 0.0);
    CHECK_CLOSE(tube.inertia_x_in4, (2.0 * 27.0 - 1.5 * 15.625) / 12.0, 1e-12, 0.0);
    CHECK_CLOSE(tube.inertia_y_in4, (3.0 * 8.0 - 2.5 * 3.375) / 12.0, 1e-12, 0.0);
    CHECK_CLOSE(tube.plastic_x_in3, (2.0 * 9.0 - 1.5 * 6.25) / 4.0, 1e-12, 0.0);
    // Bredt: 4 A^2 t / s with middle lines 1.75 x 2.75.
    CHECK_CLOSE(tube.torsion_in4, 4.0 * 4.8125 * 4.8125 * 0.25 / 9.0, 1e-12, 0.0);
}

TEST_CASE("A rectangle rounded to the full is a round tube", "[closed-form]") {
    const auto round = steel::round_section(3.0, 0.2);
    const auto rounded = steel::rectangular_section(3.0, 3.0, 0.2, 1.5);
    CHECK_CLOSE(rounded.area_in2, round.area_in2, 1e-12, 0.0);
    CHECK_CLOSE(rounded.inertia_x_in4, round.inertia_x_in4, 1e-12, 0.0);
    CHECK_CLOSE(rounded.section_y_in3, round.section_y_in3, 1e-12, 0.0);
    CHECK_CLOSE(rounded.plastic_x_in3, round.plastic_x_in3, 1e-12, 0.0);
    // Bredt's constant of the rounded walls too is a ring's: 2 pi r^3 t with the middle radius 1.4.
    CHECK_CLOSE(rounded.torsion_in4, 2.0 * 3.14159265358979 * 1.4 * 1.4 * 1.4 * 0.2, 1e-12, 0.0);
    // A thin ring: I = pi r^3 t, J = 2 I, Z = 4 r^2 t, to the square of t/r.
    const auto thin = steel::round_section(10.0, 0.01);
    const double middle = 4.995;
    CHECK_CLOSE(thin.inertia_x_in4, 3.14159265 * middle * middle * middle * 0.01, 1e-5, 0.0);
    CHECK_CLOSE(thin.plastic_x_in3, 4.0 * middle * middle * 0.01, 1e-5, 0.0);
    CHECK_CLOSE(thin.torsion_in4, 2.0 * thin.inertia_x_in4, 1e-12, 0.0);
}

// 2 x 2 x 1/8 in, Fy 46 ksi: t = 0.11625, b = 2 - 3 t = 1.651; b/t = 14.2 is under 1.12 sqrt(E/Fy) = 28.1, so Mp.
TEST_CASE("A square tube of compact walls reaches its plastic moment about either axis", "[closed-form]") {
    const steel::TubeShape shape{false, 2.0, 2.0, 0.125};
    const steel::TubeMember tube{shape, 46000.0, 29e6, 36.0};
    const steel::Moduli of = steel::moduli(steel::design_section(shape), steel::BentAbout::x);
    CHECK_CLOSE(steel::tube_moment_lb_in(tube, steel::BentAbout::x).value(), 46000.0 * of.plastic_in3, 1e-12, 0.0);
    CHECK_CLOSE(steel::tube_moment_lb_in(tube, steel::BentAbout::y).value(), 46000.0 * of.plastic_in3, 1e-12, 0.0);
    // The same of a tube held to its nominal wall, ASTM A1085: the full 1/8 in.
    const steel::TubeMember full{shape, 46000.0, 29e6, 36.0, true};
    const steel::TubeSection whole = steel::rectangular_section(2.0, 2.0, 0.125, 0.25);
    CHECK_CLOSE(steel::tube_moment_lb_in(full, steel::BentAbout::x).value(), 46000.0 * whole.plastic_x_in3, 1e-12, 0.0);
}

// 4 x 4 x 0.060 in, Fy 46 ksi: t = 0.0558, flat 4 - 3 t = 3.8326, b/t = 68.7 over 1.40 root(E/Fy) = 35.2. be = 1.92 x
// 0.0558 x 25.108 (1 - 0.38 x 25.108/68.68) = 2.3163; lost 1.5163 of each flange, at 1.9721 from the middle. I 2.25127
// less 2 x 1.5163 x 0.0558 x 1.9721^2 = 1.59312; Se 0.79656; Mn 36,642 lb in. The webs alone (F7-6) would leave 58,455.
// In axial compression four walls lose 1.5163 x 0.0558 each of 0.87233 in2: 0.61204 is left.
TEST_CASE("A tube of slender walls bends and is compressed with what works of them", "[closed-form]") {
    const steel::TubeMember thin{{false, 4.0, 4.0, 0.06}, 46000.0, 29e6, 36.0};
    CHECK_CLOSE(steel::tube_moment_lb_in(thin, steel::BentAbout::x).value(), 36641.7, 1e-5, 0.0);
    CHECK_CLOSE(steel::tube_moment_lb_in(thin, steel::BentAbout::y).value(), 36641.7, 1e-5, 0.0);
    CHECK_CLOSE(steel::compressed_share(thin), 0.61204, 1e-5, 0.0);
    // 2 x 4: only the walls of 4 in are slender; about x the flanges are those of 2 in, b/t 32.8.
    const steel::TubeMember deep{{false, 2.0, 4.0, 0.06}, 46000.0, 29e6, 1.0};
    CHECK(steel::tube_moment_lb_in(deep, steel::BentAbout::y).value() <
          46000.0 * steel::design_section(deep.shape).section_y_in3);
    CHECK(steel::tube_moment_lb_in(deep, steel::BentAbout::x).value() >
          46000.0 * steel::design_section(deep.shape).section_x_in3);
    CHECK(steel::compressed_share({{false, 2.0, 2.0, 0.125}, 46000.0, 29e6, 36.0}) == 1.0);
    // Round, D/t 100: over 0.11 E/Fy = 69.3: 2/3 + 0.038 x 630.43/100 = 0.90623.
    CHECK_CLOSE(steel::compressed_share({{true, 4.0, 4.0, 0.04}, 46000.0, 29e6, 36.0, true}), 0.90623, 1e-5, 0.0);
    CHECK(steel::compressed_share({{true, 4.0, 4.0, 0.06}, 46000.0, 29e6, 36.0, true}) == 1.0);
}

// r of a thin round tube is nearly its middle radius over root 2: 2.375 x 0.154 in, r = 0.787 in as published for 2 in
// standard pipe; 2.1 x 42/0.787 = 112.07; Fe = 22,790 psi, Fcr = 0.658^(35,000/22,790) 35,000 = 18,404 psi.
TEST_CASE("A flagpole column buckles at twice its height and a little more", "[closed-form]") {
    const steel::TubeSection section = steel::section_as_drawn({true, 2.375, 2.375, 0.154});
    CHECK_CLOSE(steel::flagpole_axial_lb(section, 42.0, 35000.0, 29e6) / section.area_in2, 18404.0, 1e-3, 0.0);
    CHECK_CLOSE(steel::flagpole_axial_lb(section, 0.0, 35000.0, 29e6) / section.area_in2, 35000.0, 1e-3, 0.0);
}
