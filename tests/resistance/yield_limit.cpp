#include "resistance/wood/yield_limit.h"

#include "resistance/wood/bending_yield.h"
#include "resistance/wood/dowel_bearing.h"
#include "support/compare.h"

#include <array>
#include <cmath>
#include <numbers>

using namespace toehold::resistance;

namespace {

constexpr double across = 0.5 * std::numbers::pi;
constexpr double a36_psi = 87000.0;        // NDS Appendix I
constexpr double a653_gr33_psi = 61850.0;  // the same, as printed

struct Lag {
    double diameter_in, root_in, tip_in;
};
// ASME B18.2.1 dimensions as in NDS Table L2; tips from memory except 3/8 in (mode III_s and IV do not feel them).
constexpr std::array lags{Lag{0.25, 0.173, 5.0 / 32},   Lag{0.3125, 0.227, 3.0 / 16}, Lag{0.375, 0.265, 7.0 / 32},
                          Lag{0.4375, 0.328, 9.0 / 32}, Lag{0.5, 0.371, 5.0 / 16},    Lag{0.625, 0.471, 3.0 / 8},
                          Lag{0.75, 0.579, 7.0 / 16},   Lag{0.875, 0.683, 1.0 / 2},   Lag{1.0, 0.780, 9.0 / 16}};

const Lag& lag(double diameter_in) {
    for (const Lag& each : lags) {
        if (each.diameter_in == diameter_in) return each;
    }
    throw std::invalid_argument("no such lag screw");
}

ModeValue lag_through_plate(double plate_in, double plate_psi, double diameter_in, double gravity, double angle_rad) {
    const Lag& screw = lag(diameter_in);
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

constexpr std::array gravities{0.67, 0.55, 0.50, 0.49, 0.46, 0.43, 0.42, 0.37, 0.36, 0.35};
struct Pair {
    double parallel, across_grain;
};
struct Row {
    double plate_in, diameter_in;
    std::array<Pair, 10> values_lb;
};

// NDS 2015/2018 Table 12K, ASTM A653 Gr 33 side plates, Z parallel and Z perpendicular in lb, columns by G as above.
// Read in two public scans of the page. The columns G .67 to .35 are the table's own.
constexpr std::array table_12k{
    Row{0.075,
        0.25,
        {{Pair{170, 130},
          {160, 120},
          {150, 110},
          {150, 110},
          {150, 100},
          {140, 100},
          {140, 100},
          {130, 90},
          {130, 90},
          {130, 90}}}},
    Row{0.075,
        0.3125,
        {{Pair{220, 160},
          {200, 140},
          {190, 130},
          {190, 130},
          {190, 130},
          {180, 120},
          {180, 120},
          {170, 110},
          {170, 110},
          {160, 100}}}},
    Row{0.075,
        0.375,
        {{Pair{220, 160},
          {200, 140},
          {200, 130},
          {190, 130},
          {190, 120},
          {180, 120},
          {180, 120},
          {170, 110},
          {170, 100},
          {170, 100}}}},
    Row{0.105,
        0.25,
        {{Pair{180, 140},
          {170, 130},
          {160, 120},
          {160, 120},
          {160, 110},
          {150, 110},
          {150, 110},
          {140, 100},
          {140, 100},
          {140, 90}}}},
    Row{0.105,
        0.3125,
        {{Pair{230, 170},
          {210, 150},
          {200, 140},
          {200, 140},
          {190, 130},
          {190, 130},
          {190, 120},
          {180, 110},
          {170, 110},
          {170, 110}}}},
    Row{0.105,
        0.375,
        {{Pair{230, 160},
          {210, 140},
          {200, 140},
          {200, 130},
          {200, 130},
          {190, 120},
          {190, 120},
          {180, 110},
          {180, 110},
          {170, 110}}}},
    Row{0.120,
        0.25,
        {{Pair{190, 150},
          {180, 130},
          {170, 120},
          {170, 120},
          {160, 120},
          {160, 110},
          {160, 110},
          {150, 100},
          {150, 100},
          {140, 100}}}},
    Row{0.120,
        0.3125,
        {{Pair{230, 170},
          {210, 150},
          {210, 140},
          {200, 140},
          {200, 140},
          {190, 130},
          {190, 130},
          {180, 120},
          {180, 120},
          {180, 110}}}},
    Row{0.120,
        0.375,
        {{Pair{240, 170},
          {220, 150},
          {210, 140},
          {210, 140},
          {200, 130},
          {200, 130},
          {190, 120},
          {180, 110},
          {180, 110},
          {180, 110}}}},
};

// The same table's 1/4 in ASTM A36 rows, computed by an independent routine from the same equations; the printed rows
// were not at hand.
constexpr std::array table_12k_a36{
    Row{0.25,
        0.25,
        {{Pair{240, 180},
          {220, 160},
          {210, 150},
          {210, 150},
          {200, 140},
          {200, 140},
          {190, 130},
          {180, 120},
          {180, 120},
          {180, 120}}}},
    Row{0.25,
        0.3125,
        {{Pair{310, 220},
          {280, 200},
          {270, 180},
          {270, 180},
          {260, 170},
          {250, 170},
          {250, 160},
          {230, 150},
          {230, 150},
          {230, 140}}}},
    Row{0.25,
        0.375,
        {{Pair{320, 220},
          {290, 190},
          {280, 180},
          {270, 180},
          {270, 170},
          {260, 160},
          {250, 160},
          {240, 150},
          {240, 140},
          {230, 140}}}},
    Row{0.25,
        0.4375,
        {{Pair{480, 320},
          {440, 280},
          {420, 270},
          {420, 260},
          {410, 250},
          {390, 240},
          {390, 230},
          {370, 220},
          {360, 210},
          {360, 210}}}},
    Row{0.25,
        0.5,
        {{Pair{580, 390},
          {540, 340},
          {520, 320},
          {510, 320},
          {500, 310},
          {480, 290},
          {480, 290},
          {460, 270},
          {450, 260},
          {440, 260}}}},
    Row{0.25,
        0.625,
        {{Pair{850, 530},
          {780, 470},
          {750, 440},
          {740, 440},
          {720, 420},
          {700, 400},
          {690, 400},
          {660, 370},
          {650, 360},
          {640, 350}}}},
    Row{0.25,
        0.75,
        {{Pair{1200, 730},
          {1100, 640},
          {1060, 600},
          {1050, 590},
          {1020, 570},
          {990, 540},
          {980, 530},
          {930, 490},
          {920, 480},
          {900, 470}}}},
    Row{0.25,
        0.875,
        {{Pair{1600, 930},
          {1470, 820},
          {1410, 770},
          {1400, 750},
          {1360, 720},
          {1320, 690},
          {1310, 680},
          {1240, 630},
          {1220, 620},
          {1200, 600}}}},
    Row{0.25,
        1.0,
        {{Pair{2040, 1150},
          {1870, 1000},
          {1800, 950},
          {1780, 930},
          {1730, 900},
          {1680, 850},
          {1660, 840},
          {1570, 770},
          {1550, 760},
          {1530, 740}}}},
};

using M = YieldMode;
struct Bolt {
    double main_in, diameter_in;
    std::array<ModeValue, 8> values;  ///< G .55, .50, .43, .42, each parallel and perpendicular
};
ModeValue entry(double value_lb, M mode) { return {mode, value_lb}; }

}  // namespace

TEST_CASE("Every readable entry of Table 12K for lag screws through a steel plate comes out", "[published]") {
    for (const Row& row : table_12k) {
        for (std::size_t i = 0; i < gravities.size(); ++i) {
            CAPTURE(row.plate_in, row.diameter_in, gravities[i]);
            const auto value = [&](double angle_rad) {
                return lag_through_plate(row.plate_in, a653_gr33_psi, row.diameter_in, gravities[i], angle_rad)
                    .value_lb;
            };
            CHECK(to_ten(value(0.0)) == row.values_lb[i].parallel);
            CHECK(to_ten(value(across)) == row.values_lb[i].across_grain);
        }
    }
}

TEST_CASE("Lag screws through a 1/4 in A36 plate match an independent computation", "[unit]") {
    for (const Row& row : table_12k_a36) {
        for (std::size_t i = 0; i < gravities.size(); ++i) {
            CAPTURE(row.diameter_in, gravities[i]);
            const auto value = [&](double angle_rad) {
                return lag_through_plate(row.plate_in, a36_psi, row.diameter_in, gravities[i], angle_rad).value_lb;
            };
            CHECK(to_ten(value(0.0)) == row.values_lb[i].parallel);
            CHECK(to_ten(value(across)) == row.values_lb[i].across_grain);
        }
    }
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
