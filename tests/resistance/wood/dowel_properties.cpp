// Dowel bearing strength and bending yield strength.
#include "resistance/wood/dowel_properties.h"

#include "support/compare.h"

#include <array>
#include <numbers>

using namespace toehold::resistance;

namespace {
constexpr double along = 0.0;
constexpr double across = 0.5 * std::numbers::pi;

// NDS 2018 Table 12.3.3, computed from the table's own equations, which were read in a public transcription of its
// footnote (rounded to the nearest 50 psi). The D >= 1/4 in columns are confirmed through Table 12K (yield_limit.cpp).
constexpr std::array diameters{0.25, 0.3125, 0.375, 0.4375, 0.5, 0.625, 0.75, 0.875, 1.0};
struct Row {
    double gravity, thin, parallel;
    std::array<double, 9> across_grain;
};
constexpr std::array rows{
    Row{0.67, 7950, 7500, {{6850, 6100, 5550, 5150, 4850, 4300, 3950, 3650, 3400}}},
    Row{0.55, 5550, 6150, {{5150, 4600, 4200, 3900, 3650, 3250, 2950, 2750, 2550}}},
    Row{0.50, 4650, 5600, {{4450, 4000, 3650, 3400, 3150, 2800, 2600, 2400, 2250}}},
    Row{0.49, 4450, 5500, {{4350, 3900, 3550, 3300, 3050, 2750, 2500, 2300, 2150}}},
    Row{0.46, 4000, 5150, {{3950, 3550, 3250, 3000, 2800, 2500, 2300, 2100, 2000}}},
    Row{0.43, 3500, 4800, {{3600, 3200, 2950, 2700, 2550, 2250, 2050, 1900, 1800}}},
    Row{0.42, 3350, 4700, {{3450, 3100, 2850, 2600, 2450, 2200, 2000, 1850, 1750}}},
    Row{0.37, 2650, 4150, {{2900, 2600, 2350, 2200, 2050, 1850, 1650, 1550, 1450}}},
    Row{0.36, 2550, 4050, {{2750, 2500, 2250, 2100, 1950, 1750, 1600, 1500, 1400}}},
    Row{0.35, 2400, 3900, {{2650, 2400, 2150, 2000, 1900, 1700, 1550, 1400, 1350}}},
};
}  // namespace

TEST_CASE("Dowel bearing strengths of wood are those of Table 12.3.3", "[closed-form]") {
    for (const Row& row : rows) {
        CAPTURE(row.gravity);
        CHECK(dowel_bearing_psi(row.gravity, 0.162, across) == row.thin);
        for (std::size_t i = 0; i < diameters.size(); ++i) {
            CAPTURE(diameters[i]);
            CHECK_CLOSE(dowel_bearing_psi(row.gravity, diameters[i], along), row.parallel, 1e-12, 0.0);
            CHECK_CLOSE(dowel_bearing_psi(row.gravity, diameters[i], across), row.across_grain[i], 1e-12, 0.0);
        }
    }
}

TEST_CASE("Hankinson's formula meets both ends and the closed form at 45 degrees", "[closed-form]") {
    CHECK_CLOSE(hankinson_psi(6150.0, 4200.0, along), 6150.0, 1e-14, 0.0);
    CHECK_CLOSE(hankinson_psi(6150.0, 4200.0, across), 4200.0, 1e-14, 0.0);
    // Harmonic mean: 2 x 6150 x 4200 / 10350 = 4991.30
    CHECK_CLOSE(hankinson_psi(6150.0, 4200.0, 0.25 * std::numbers::pi), 4991.304347826, 1e-12, 0.0);
}

TEST_CASE("Steel plates bear as Appendix I gives them", "[published]") {
    // NDS Appendix I: ASTM A36, Fu 58 ksi, 87,000 psi; ASTM A653 Gr 33, Fu 45 ksi, printed 61,850 psi.
    CHECK_CLOSE(steel_dowel_bearing_psi(58000.0, 0.25), 87000.0, 1e-14, 0.0);
    CHECK_CLOSE(steel_dowel_bearing_psi(45000.0, 0.105), 61850.0, 0.0, 50.0);  // printed to the nearest 50
    CHECK_CLOSE(aluminum_dowel_bearing_psi(38000.0), 47500.0, 1e-14, 0.0);
}

TEST_CASE("Dowel bearing refuses what the table does not hold", "[bad-input]") {
    CHECK_THROWS_AS(dowel_bearing_psi(0.0, 0.375, 0.0), std::invalid_argument);
    CHECK_THROWS_AS(dowel_bearing_psi(0.5, 0.0, 0.0), std::invalid_argument);
    CHECK_THROWS_AS(dowel_bearing_psi(0.5, 1.25, 0.0), std::invalid_argument);
}

TEST_CASE("Bending yield strengths step down with diameter as in Table I1", "[published]") {
    // NDS 2018 Table I1, read in a public text.
    CHECK(nail_bending_yield_psi(0.099) == 100000.0);
    CHECK(nail_bending_yield_psi(0.131) == 100000.0);  // 8d common
    CHECK(nail_bending_yield_psi(0.148) == 90000.0);   // 10d common
    CHECK(nail_bending_yield_psi(0.162) == 90000.0);   // 16d common
    CHECK(nail_bending_yield_psi(0.192) == 80000.0);   // 20d common
    CHECK(nail_bending_yield_psi(0.242) == 70000.0);   // No. 14 wood screw
    CHECK(nail_bending_yield_psi(0.320) == 60000.0);   // No. 20 wood screw
    CHECK(nail_bending_yield_psi(0.372) == 45000.0);   // No. 24 wood screw
}

TEST_CASE("Lag screws' bending yield strengths are those that reproduce Table 12K", "[published]") {
    CHECK(lag_bending_yield_psi(0.25) == 70000.0);
    CHECK(lag_bending_yield_psi(0.3125) == 60000.0);
    CHECK(lag_bending_yield_psi(0.375) == 45000.0);
    CHECK(lag_bending_yield_psi(1.0) == 45000.0);
    CHECK(bolt_bending_yield_psi() == 45000.0);
}

TEST_CASE("A fastener without a diameter has no bending yield strength", "[bad-input]") {
    CHECK_THROWS_AS(nail_bending_yield_psi(0.0), std::invalid_argument);
    CHECK_THROWS_AS(lag_bending_yield_psi(-0.25), std::invalid_argument);
}

TEST_CASE("A hex bolt is threaded over two diameters and a little", "[memory]") {
    // ASME B18.2.1, from memory: 2 D + 1/4 in to 6 in of length, 2 D + 1/2 in above; no more than there is.
    CHECK(bolt_thread_length_in(0.5, 4.0) == 1.25);
    CHECK(bolt_thread_length_in(0.5, 6.0) == 1.25);
    CHECK(bolt_thread_length_in(0.5, 6.25) == 1.5);
    CHECK(bolt_thread_length_in(0.5, 1.0) == 1.0);
}
