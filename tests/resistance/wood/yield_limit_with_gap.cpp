#include "resistance/wood/yield_limit.h"

#include "resistance/wood/dowel_properties.h"
#include "resistance/wood/lag_sizes.h"
#include "support/compare.h"

#include <array>
#include <numbers>

using namespace toehold::resistance;
using toehold::test::Lag;
using toehold::test::lag;
using toehold::test::lags;

namespace {

constexpr double across = 0.5 * std::numbers::pi;
constexpr double a36_psi = 87000.0;  // NDS Appendix I
using M = YieldMode;

constexpr std::array gravities{0.55, 0.50, 0.42};

/// With Fe straight from its equations, not rounded as tabulated: so the independent values below were computed.
DowelConnection through_plate(const Lag& lag, double gravity, double angle_rad, double gap_in) {
    const double bearing_psi = hankinson_psi(dowel_bearing_parallel_psi(gravity),
                                             dowel_bearing_perpendicular_psi(gravity, lag.diameter_in), angle_rad);
    return {lag.root_in,
            lag_bending_yield_psi(lag.diameter_in),
            8.0 * lag.diameter_in - 0.5 * lag.tip_in,
            0.25,
            bearing_psi,
            a36_psi,
            gap_in};
}

struct Row {
    double diameter_in, gap_in;
    std::array<ModeValue, 6> values;  ///< G .55, .50, .42, each parallel and perpendicular
};
ModeValue entry(double value_lb, M mode) { return {mode, value_lb}; }

}  // namespace

TEST_CASE("Without a gap the general dowel equations are the standard's yield equations in every mode",
          "[closed-form]") {
    // AWC TR12 against NDS 2018 Table 12.3.1A: two sets of equations, one physics. The latter meet Table 12K.
    for (const Lag& each : lags) {
        for (const double gravity : {0.67, 0.55, 0.46, 0.35}) {
            for (const double angle_rad : {0.0, 0.7, across}) {
                const DowelConnection connection = through_plate(each, gravity, angle_rad, 0.0);
                const ReductionTerms reduction = reduction_terms(each.diameter_in, each.root_in, angle_rad);
                const auto standard = single_shear(connection, reduction);
                const auto general = single_shear_with_gap(connection, reduction);
                REQUIRE(standard.size() == general.size());
                for (std::size_t i = 0; i < general.size(); ++i) {
                    CAPTURE(name(general[i].mode), each.diameter_in, gravity, angle_rad);
                    CHECK(general[i].mode == standard[i].mode);
                    CHECK_CLOSE(general[i].value_lb, standard[i].value_lb, 1e-12, 0.0);
                }
            }
        }
    }
}

TEST_CASE("A lag screw across a gap under a 1/4 in plate matches an independent computation", "[unit]") {
    // General dowel equations, computed by an independent routine; values in lb to one decimal.
    const std::array rows{
        Row{0.25,
            0,
            {{entry(219.9, M::IV), entry(161.4, M::IV), entry(210.3, M::IV), entry(151.2, M::IV), entry(193.7, M::IV),
              entry(133.9, M::IV)}}},
        Row{0.25,
            0.25,
            {{entry(135.0, M::IV), entry(102.9, M::IV), entry(131.7, M::IV), entry(99.0, M::IV), entry(125.6, M::IV),
              entry(91.8, M::IV)}}},
        Row{0.25,
            0.5,
            {{entry(90.1, M::IV), entry(70.3, M::IV), entry(89.0, M::IV), entry(68.8, M::IV), entry(86.7, M::IV),
              entry(65.8, M::IV)}}},
        Row{0.25,
            1.0,
            {{entry(51.2, M::IV), entry(40.6, M::IV), entry(51.0, M::IV), entry(40.3, M::IV), entry(50.5, M::IV),
              entry(39.6, M::IV)}}},
        Row{0.25,
            1.5,
            {{entry(35.2, M::IV), entry(28.0, M::IV), entry(35.1, M::IV), entry(27.9, M::IV), entry(34.9, M::IV),
              entry(27.7, M::IV)}}},
        Row{0.3125,
            0,
            {{entry(282.2, M::IV), entry(196.5, M::IV), entry(269.9, M::IV), entry(183.9, M::IV), entry(248.5, M::IV),
              entry(162.9, M::IV)}}},
        Row{0.3125,
            0.25,
            {{entry(188.0, M::IV), entry(137.6, M::IV), entry(182.8, M::IV), entry(131.7, M::IV), entry(173.4, M::IV),
              entry(121.0, M::IV)}}},
        Row{0.3125,
            0.5,
            {{entry(132.0, M::IV), entry(100.1, M::IV), entry(129.8, M::IV), entry(97.3, M::IV), entry(125.7, M::IV),
              entry(92.0, M::IV)}}},
        Row{0.3125,
            1.0,
            {{entry(78.0, M::IV), entry(61.0, M::IV), entry(77.5, M::IV), entry(60.3, M::IV), entry(76.5, M::IV),
              entry(58.8, M::IV)}}},
        Row{0.3125,
            1.5,
            {{entry(54.2, M::IV), entry(42.9, M::IV), entry(54.0, M::IV), entry(42.6, M::IV), entry(53.7, M::IV),
              entry(42.0, M::IV)}}},
        Row{0.375,
            0,
            {{entry(288.3, M::IV), entry(192.2, M::IV), entry(275.7, M::IV), entry(179.9, M::IV), entry(253.9, M::IV),
              entry(159.2, M::IV)}}},
        Row{0.375,
            0.25,
            {{entry(192.8, M::IV), entry(137.1, M::IV), entry(187.5, M::IV), entry(131.0, M::IV), entry(177.8, M::IV),
              entry(120.2, M::IV)}}},
        Row{0.375,
            0.5,
            {{entry(135.8, M::IV), entry(101.0, M::IV), entry(133.5, M::IV), entry(98.1, M::IV), entry(129.3, M::IV),
              entry(92.5, M::IV)}}},
        Row{0.375,
            1.0,
            {{entry(80.4, M::IV), entry(62.4, M::IV), entry(79.9, M::IV), entry(61.6, M::IV), entry(78.8, M::IV),
              entry(59.9, M::IV)}}},
        Row{0.375,
            1.5,
            {{entry(56.0, M::IV), entry(44.1, M::IV), entry(55.8, M::IV), entry(43.8, M::IV), entry(55.4, M::IV),
              entry(43.1, M::IV)}}},
        Row{0.5,
            0,
            {{entry(538.2, M::IIIs), entry(343.3, M::IIIs), entry(517.2, M::IIIs), entry(323.1, M::IIIs),
              entry(480.3, M::IIIs), entry(288.7, M::IIIs)}}},
        Row{0.5,
            0.25,
            {{entry(411.7, M::IIIs), entry(278.2, M::IIIs), entry(400.1, M::IIIs), entry(265.3, M::IIIs),
              entry(378.9, M::IIIs), entry(241.0, M::IV)}}},
        Row{0.5,
            0.5,
            {{entry(322.6, M::IV), entry(225.5, M::IV), entry(315.5, M::IV), entry(216.7, M::IV), entry(302.2, M::IV),
              entry(200.8, M::IV)}}},
        Row{0.5,
            1.0,
            {{entry(207.2, M::IV), entry(154.5, M::IV), entry(204.9, M::IV), entry(151.1, M::IV), entry(200.5, M::IV),
              entry(144.4, M::IV)}}},
        Row{0.5,
            1.5,
            {{entry(148.5, M::IV), entry(114.2, M::IV), entry(147.7, M::IV), entry(112.7, M::IV), entry(145.9, M::IV),
              entry(109.6, M::IV)}}},
    };
    for (const Row& row : rows) {
        const Lag& screw = lag(row.diameter_in);
        for (std::size_t i = 0; i < row.values.size(); ++i) {
            const double angle_rad = i % 2 == 0 ? 0.0 : across;
            CAPTURE(row.diameter_in, row.gap_in, gravities[i / 2], angle_rad);
            const ModeValue least =
                governing(single_shear_with_gap(through_plate(screw, gravities[i / 2], angle_rad, row.gap_in),
                                                reduction_terms(screw.diameter_in, screw.root_in, angle_rad)));
            CHECK(toehold::test::prints_as(least.value_lb, row.values[i].value_lb, 0.1));
            CHECK(least.mode == row.values[i].mode);
        }
    }
}

TEST_CASE("A wide gap leaves the dowel as a beam clamped at both ends", "[closed-form]") {
    // Two plastic hinges g apart in mode IV: P g = 2 M once the crushed lengths are small beside the gap.
    DowelConnection connection = through_plate(lag(0.375), 0.55, 0.0, 1000.0);
    const double moment_lb_in = 45000.0 * 0.265 * 0.265 * 0.265 / 6.0;
    const ModeValue least = governing(single_shear_with_gap(connection, {1.0, 1.0, 1.0}));
    CHECK(least.mode == M::IV);
    CHECK_CLOSE(least.value_lb, 2.0 * moment_lb_in / 1000.0, 1e-3, 0.0);
}

TEST_CASE("A gap never helps", "[property]") {
    for (const Lag& each : lags) {
        double before_lb = 1e9;
        for (double gap_in = 0.0; gap_in <= 3.0; gap_in += 0.05) {
            const double value_lb =
                governing(single_shear_with_gap(through_plate(each, 0.5, across, gap_in),
                                                reduction_terms(each.diameter_in, each.root_in, across)))
                    .value_lb;
            CHECK(value_lb <= before_lb);
            CHECK(value_lb > 0.0);
            before_lb = value_lb;
        }
    }
}

TEST_CASE("A negative gap is refused", "[bad-input]") {
    CHECK_THROWS_AS(single_shear_with_gap(through_plate(lags[0], 0.5, 0.0, -0.1), {}), std::invalid_argument);
}
