#include "resistance/wood/yield_limit.h"

#include "resistance/wood/dowel_properties.h"
#include "resistance/wood/lag_sizes.h"
#include "resistance/wood/table_12k.h"
#include "support/compare.h"

#include <array>
#include <cmath>
#include <numbers>

using namespace toehold;
using namespace toehold::resistance;

namespace {

constexpr double across = 0.5 * std::numbers::pi;
constexpr double a36_psi = 87000.0;        // NDS Appendix I
constexpr double a653_gr33_psi = 61850.0;  // the same, as printed

ModeValue lag_through_plate(double plate_in, double plate_psi, double diameter_in, double gravity, double angle_rad) {
    const test::Lag& screw = test::lag(diameter_in);
    DowelConnection connection;
    connection.diameter_in = screw.root_in;
    connection.bending_yield_psi = lag_bending_yield_psi(diameter_in);
    connection.main_bearing_in = 8.0 * diameter_in - 0.5 * screw.tip_in;
    connection.side_bearing_in = plate_in;
    connection.main_bearing_psi = dowel_bearing_psi(gravity, diameter_in, angle_rad);
    connection.side_bearing_psi = plate_psi;
    return governing(single_shear(connection, reduction_terms(diameter_in, screw.root_in, angle_rad)));
}

double to_ten(double value_lb) { return 10.0 * std::floor(value_lb / 10.0 + 0.5 + 1e-9); }

using M = YieldMode;
struct Bolt {
    double main_in, diameter_in;
    std::array<ModeValue, 8> values;  ///< G .55, .50, .43, .42, each parallel and perpendicular
};
ModeValue entry(double value_lb, M mode) { return {mode, value_lb}; }

}  // namespace

TEST_CASE("Every readable entry of Table 12K for lag screws through a steel plate comes out", "[published]") {
    for (const test::Row& row : test::table_12k) {
        for (std::size_t i = 0; i < test::gravities.size(); ++i) {
            CAPTURE(row.plate_in, row.diameter_in, test::gravities[i]);
            const auto value = [&](double angle_rad) {
                return lag_through_plate(row.plate_in, a653_gr33_psi, row.diameter_in, test::gravities[i], angle_rad)
                    .value_lb;
            };
            CHECK(to_ten(value(0.0)) == row.values_lb[i].parallel);
            CHECK(to_ten(value(across)) == row.values_lb[i].across_grain);
        }
    }
}

TEST_CASE("Lag screws through a 1/4 in A36 plate match an independent computation", "[unit]") {
    for (const test::Row& row : test::table_12k_a36) {
        for (std::size_t i = 0; i < test::gravities.size(); ++i) {
            CAPTURE(row.diameter_in, test::gravities[i]);
            const auto value = [&](double angle_rad) {
                return lag_through_plate(row.plate_in, a36_psi, row.diameter_in, test::gravities[i], angle_rad)
                    .value_lb;
            };
            CHECK(to_ten(value(0.0)) == row.values_lb[i].parallel);
            CHECK(to_ten(value(across)) == row.values_lb[i].across_grain);
        }
    }
}

TEST_CASE("Entries of NDS Tables 12B, 12J and 12K read one by one come out", "[published]") {
    // Read in a public transcription, G 0.50, to the nearest 10 lb. 12K: 1/2 in lag screw through 1/4 in of A36
    // 520/320, 3/8 in through 10 gage (0.134 in) 220/140. 12B: 1/2 in bolt, 1-1/2 in of wood, 580/310. 12J: 1/4 in lag
    // screw through 1/2 in of wood 120/80.
    CHECK(to_ten(lag_through_plate(0.25, a36_psi, 0.5, 0.50, 0.0).value_lb) == 520.0);
    CHECK(to_ten(lag_through_plate(0.25, a36_psi, 0.5, 0.50, across).value_lb) == 320.0);
    CHECK(to_ten(lag_through_plate(0.134, a653_gr33_psi, 0.375, 0.50, 0.0).value_lb) == 220.0);
    CHECK(to_ten(lag_through_plate(0.134, a653_gr33_psi, 0.375, 0.50, across).value_lb) == 140.0);
    const auto bolt = [](double angle_rad) {
        const DowelConnection connection{
            0.5, bolt_bending_yield_psi(), 1.5, 0.25, dowel_bearing_psi(0.50, 0.5, angle_rad), a36_psi, 0.0};
        return to_ten(governing(single_shear(connection, reduction_terms(0.5, 0.5, angle_rad))).value_lb);
    };
    CHECK(bolt(0.0) == 580.0);
    CHECK(bolt(across) == 310.0);
    const auto wood_to_wood = [](double angle_rad) {
        const double bearing_psi = dowel_bearing_psi(0.50, 0.25, angle_rad);
        return to_ten(lag_through_plate(0.5, bearing_psi, 0.25, 0.50, angle_rad).value_lb);
    };
    CHECK(wood_to_wood(0.0) == 120.0);
    CHECK(wood_to_wood(across) == 80.0);
}

TEST_CASE("Bolts through a 1/4 in A36 plate match an independent computation, value and mode", "[unit]") {
    // The values of NDS 2018 Table 12B, computed from its equations; the printed table was not at hand.
    const std::array bolts{
        Bolt{1.5,
             0.5,
             {{entry(620, M::II), entry(350, M::II), entry(580, M::II), entry(310, M::II), entry(520, M::II),
               entry(280, M::II), entry(510, M::II), entry(270, M::II)}}},
        Bolt{1.5,
             0.625,
             {{entry(780, M::II), entry(400, M::II), entry(730, M::II), entry(360, M::II), entry(650, M::II),
               entry(320, M::II), entry(640, M::II), entry(320, M::II)}}},
        Bolt{1.5,
             0.75,
             {{entry(940, M::II), entry(450, M::II), entry(870, M::II), entry(420, M::II), entry(780, M::II),
               entry(360, M::II), entry(770, M::II), entry(360, M::II)}}},
        Bolt{3.0,
             0.5,
             {{entry(860, M::IIIs), entry(540, M::II), entry(830, M::IIIs), entry(470, M::II), entry(770, M::IIIs),
               entry(400, M::II), entry(770, M::IIIs), entry(380, M::II)}}},
        Bolt{3.0,
             0.625,
             {{entry(1260, M::IIIs), entry(610, M::II), entry(1210, M::IIIs), entry(540, M::II), entry(1070, M::II),
               entry(450, M::II), entry(1050, M::II), entry(440, M::II)}}},
        Bolt{3.0,
             0.75,
             {{entry(1610, M::II), entry(670, M::II), entry(1480, M::II), entry(610, M::II), entry(1290, M::II),
               entry(500, M::II), entry(1270, M::II), entry(490, M::II)}}},
        Bolt{3.5,
             0.5,
             {{entry(860, M::IIIs), entry(550, M::IIIs), entry(830, M::IIIs), entry(510, M::IIIs), entry(770, M::IIIs),
               entry(450, M::II), entry(770, M::IIIs), entry(430, M::II)}}},
        Bolt{3.5,
             0.625,
             {{entry(1260, M::IIIs), entry(690, M::II), entry(1210, M::IIIs), entry(610, M::II), entry(1130, M::IIIs),
               entry(500, M::II), entry(1120, M::IIIs), entry(490, M::II)}}},
        Bolt{3.5,
             0.75,
             {{entry(1740, M::IIIs), entry(760, M::II), entry(1670, M::IIIs), entry(680, M::II), entry(1480, M::II),
               entry(560, M::II), entry(1450, M::II), entry(540, M::II)}}},
        Bolt{5.5,
             0.5,
             {{entry(860, M::IIIs), entry(550, M::IIIs), entry(830, M::IIIs), entry(510, M::IIIs), entry(770, M::IIIs),
               entry(470, M::IIIs), entry(770, M::IIIs), entry(460, M::IIIs)}}},
        Bolt{5.5,
             0.625,
             {{entry(1260, M::IIIs), entry(760, M::IIIs), entry(1210, M::IIIs), entry(710, M::IIIs),
               entry(1130, M::IIIs), entry(640, M::IIIs), entry(1120, M::IIIs), entry(630, M::IIIs)}}},
        Bolt{5.5,
             0.75,
             {{entry(1740, M::IIIs), entry(1000, M::IIIs), entry(1670, M::IIIs), entry(940, M::IIIs),
               entry(1560, M::IIIs), entry(810, M::II), entry(1550, M::IIIs), entry(790, M::II)}}},
    };
    constexpr std::array bolt_gravities{0.55, 0.50, 0.43, 0.42};
    for (const Bolt& bolt : bolts) {
        for (std::size_t i = 0; i < bolt.values.size(); ++i) {
            const double gravity = bolt_gravities[i / 2];
            const double angle_rad = i % 2 == 0 ? 0.0 : across;
            CAPTURE(bolt.main_in, bolt.diameter_in, gravity, angle_rad);
            DowelConnection connection{
                bolt.diameter_in, bolt_bending_yield_psi(), bolt.main_in, 0.25, 0.0, a36_psi, 0.0};
            connection.main_bearing_psi = dowel_bearing_psi(gravity, bolt.diameter_in, angle_rad);
            const ModeValue least =
                governing(single_shear(connection, reduction_terms(bolt.diameter_in, bolt.diameter_in, angle_rad)));
            CHECK(to_ten(least.value_lb) == bolt.values[i].value_lb);
            CHECK(name(least.mode) == std::string(name(bolt.values[i].mode)));
        }
    }
}

TEST_CASE("Reduction terms follow Table 12.3.1B and its note on reduced roots", "[published]") {
    // NDS 2018 Table 12.3.1B: 4, 3.6, 3.2 along the grain, a quarter more across it.
    const ReductionTerms along_grain = reduction_terms(0.5, 0.371, 0.0);
    CHECK(along_grain.of(M::Im) == 4.0);
    CHECK(along_grain.of(M::II) == 3.6);
    CHECK(along_grain.of(M::IV) == 3.2);
    CHECK_CLOSE(reduction_terms(0.5, 0.371, across).of(M::Is), 5.0, 1e-14, 0.0);
    CHECK_CLOSE(reduction_terms(0.5, 0.371, 0.5 * across).of(M::IIIs), 3.6, 1e-14, 0.0);
    // D 1/4 in or more, root less: KD = 10 x 0.227 + 0.5 = 2.77, with the angle's term.
    CHECK_CLOSE(reduction_terms(0.3125, 0.227, across).of(M::IV), 2.77 * 1.25, 1e-14, 0.0);
    // D below 1/4 in: KD alone.
    CHECK(reduction_terms(0.162, 0.162, across).of(M::IV) == 2.2);
    CHECK_CLOSE(reduction_terms(0.192, 0.192, across).of(M::IV), 2.42, 1e-14, 0.0);
}

TEST_CASE("A dowel in double shear carries its four modes", "[closed-form]") {
    // D 1/2, Fyb 45000, lm 3, ls 1.5, Fe 5600 in all, along the grain:
    //   Im = 0.5 x 3 x 5600 / 4 = 2100; Is = 2 x 0.5 x 1.5 x 5600 / 4 = 2100
    //   IV = 2 x 0.25 / 3.2 x sqrt(2 x 5600 x 45000 / 6) = 0.15625 x 9165.15 = 1432.05
    //   k3 = -1 + sqrt(4 + 2 x 45000 x 3 x 0.25 / (3 x 5600 x 2.25)) = -1 + sqrt(5.785714) = 1.405351
    //   IIIs = 2 x 1.405351 x 0.5 x 1.5 x 5600 / (3 x 3.2) = 1229.68
    const DowelConnection connection{0.5, 45000.0, 3.0, 1.5, 5600.0, 5600.0, 0.0};
    const auto modes = double_shear(connection, reduction_terms(0.5, 0.5, 0.0));
    REQUIRE(modes.size() == 4);
    CHECK_CLOSE(modes[0].value_lb, 2100.0, 1e-12, 0.0);
    CHECK_CLOSE(modes[1].value_lb, 2100.0, 1e-12, 0.0);
    CHECK_CLOSE(modes[2].value_lb, 1229.68, 1e-5, 0.0);
    CHECK_CLOSE(modes[3].value_lb, 1432.05, 1e-5, 0.0);
    CHECK(governing(modes).mode == M::IIIs);
}

TEST_CASE("Yield equations refuse a gap and what has no size", "[bad-input]") {
    DowelConnection connection{0.5, 45000.0, 3.0, 0.25, 5600.0, a36_psi, 0.25};
    const ReductionTerms reduction = reduction_terms(0.5, 0.5, 0.0);
    CHECK_THROWS_AS(single_shear(connection, reduction), std::invalid_argument);
    CHECK_THROWS_AS(double_shear(connection, reduction), std::invalid_argument);
    connection.gap_in = 0.0;
    connection.main_bearing_in = 0.0;
    CHECK_THROWS_AS(single_shear(connection, reduction), std::invalid_argument);
    CHECK_THROWS_AS(governing({}), std::invalid_argument);
}
