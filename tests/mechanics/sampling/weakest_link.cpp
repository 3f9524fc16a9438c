// Chains of links against closed forms: which of two lognormal links is the weaker, the least of several alike, links
// moved together by a common factor.
#include "mechanics/sampling/weakest_link.h"

#include "mechanics/sampling/breaking_loads.h"
#include "mechanics/sampling/normal_distribution.h"
#include "support/compare.h"

#include <cmath>
#include <limits>
#include <numeric>
#include <stdexcept>

using namespace toehold::mechanics;

namespace {

ChainLink link(double mean, double variation, double demand_per_load = 1.0) {
    ChainLink made;
    made.mean_strength = mean;
    made.variation = variation;
    made.demand_per_load = demand_per_load;
    return made;
}

Chain alike(std::size_t links) { return {{}, std::vector<ChainLink>(links, link(1000.0, 0.25))}; }

Proportion share_of(const BreakingLoads& drawn, std::size_t number) {
    // Five standard errors wide, so that one seed decides nothing.
    return proportion(first_breaks(drawn).at(number), drawn.breaks.size(), 0.9999994);
}

void check_holds(const ConfidenceInterval& interval, double value) {
    INFO(interval.low << " to " << interval.high << " for " << value);
    CHECK(interval.low <= value);
    CHECK(interval.high >= value);
}

/// Chance that the first of two lognormal strengths is the smaller.
double first_is_weaker(const ChainLink& first, const ChainLink& second, double common_deviation) {
    const Lognormal one = lognormal(first.mean_strength, first.variation);
    const Lognormal other = lognormal(second.mean_strength, second.variation);
    const double spread = std::hypot(one.log_deviation, other.log_deviation, common_deviation);
    return normal_probability((other.log_mean - one.log_mean) / spread);
}

}  // namespace

TEST_CASE("Of two lognormal links the weaker breaks first as often as the closed form says", "[closed-form]") {
    const Chain chain{{}, {link(2000.0, 0.20), link(2600.0, 0.30)}};
    const double expected = first_is_weaker(chain.links[0], chain.links[1], 0.0);
    CHECK_CLOSE(expected, 0.7500340142522759, 1e-12, 0.0);  // scipy 1.10.1
    const BreakingLoads drawn = draw(chain, {20000, 3});
    check_holds(share_of(drawn, 0).interval, expected);
    check_holds(share_of(drawn, 1).interval, 1.0 - expected);
}

TEST_CASE("Demands divide the strengths: twice the demand is half the strength", "[property]") {
    const Chain plain{{}, {link(2000.0, 0.2), link(1300.0, 0.3)}};
    const Chain doubled{{}, {link(2000.0, 0.2), link(2600.0, 0.3, 2.0)}};
    const BreakingLoads one = draw(plain, {500, 9}), other = draw(doubled, {500, 9});
    CHECK(first_breaks(one) == first_breaks(other));
    CHECK_CLOSE(one.mean_load, other.mean_load, 1e-12, 0.0);
}

TEST_CASE("The least of n links alike has the order statistic's chance, mean and 5th percentile", "[closed-form]") {
    // scipy 1.10.1, by numerical integration of (1 - F)^n; lognormal, mean 1000, variation 0.25.
    struct Known {
        std::size_t links;
        double mean, deviation, carries_800, fifth;
    };
    for (const Known& known : {Known{1, 1000.0, 250.0, 0.7832346774289124, 647.0645090285228},
                               Known{4, 764.08077193078, 129.98563794998168, 0.37632895091768054, 559.6912912210216},
                               Known{8, 690.916398912497, 101.63121936188718, 0.141623479298802, 525.5304946475343}}) {
        INFO(known.links << " links");
        const BreakingLoads drawn = draw(alike(known.links), {20000, 5});
        check_holds(carrying(drawn, 800.0, 0.9999994).interval, known.carries_800);
        check_holds(mean_interval(drawn, 0.9999994), known.mean);
        CHECK_CLOSE(drawn.load_deviation, known.deviation, 0.03, 0.0);
        CHECK_CLOSE(load_at_share(drawn, 0.05), known.fifth, 0.015, 0.0);
    }
}

TEST_CASE("Links alike break first equally often, and one of them in every sample", "[property]") {
    const BreakingLoads drawn = draw(alike(4), {8000, 6});
    const std::vector<std::uint64_t> counts = first_breaks(drawn);
    CHECK(std::accumulate(counts.begin(), counts.end(), std::uint64_t{0}) == 8000);
    for (std::size_t number = 0; number < 4; ++number) check_holds(share_of(drawn, number).interval, 0.25);
}

TEST_CASE("Links that share all their scatter are as strong as one, in proportion to a power of the factor",
          "[closed-form]") {
    Chain chain{{{0.25}}, std::vector<ChainLink>(5, link(1000.0, 0.0))};
    for (ChainLink& one : chain.links) one.shared = {{0, 1.0}};
    const BreakingLoads drawn = draw(chain, {20000, 5});
    check_holds(carrying(drawn, 800.0, 0.9999994).interval, 0.7832346774289124);  // that of one link, as above
    CHECK(first_breaks(drawn).front() == 20000);                                  // of equals the first

    for (ChainLink& one : chain.links) one.shared = {{0, 2.0}};
    CHECK_CLOSE(load_at_share(draw(chain, {20000, 5}), 0.5) / 1000.0, std::pow(load_at_share(drawn, 0.5) / 1000.0, 2.0),
                1e-3, 0.0);
}

TEST_CASE("Two links with unlike powers of one factor are weaker one than the other as the closed form says",
          "[closed-form]") {
    Chain chain{{{0.30}}, {link(1000.0, 0.1), link(1000.0, 0.1)}};
    chain.links[0].shared = {{0, 2.0}};
    chain.links[1].shared = {{0, 1.0}};
    // ln R1 - ln R2 = z's own + (2 - 1) ln f, and ln f has the mean -s^2/2.
    const Lognormal factor = lognormal(1.0, 0.30), own = lognormal(1.0, 0.1);
    const double expected =
        normal_probability(-factor.log_mean / std::hypot(factor.log_deviation, std::sqrt(2.0) * own.log_deviation));
    check_holds(share_of(draw(chain, {20000, 4}), 0).interval, expected);
}

TEST_CASE("Without scatter the chain breaks at its weakest link's strength over its demand", "[closed-form]") {
    const Chain chain{{}, {link(900.0, 0.0, 1.5), link(500.0, 0.0, 1.0), link(10.0, 0.0, 0.0)}};
    const BreakingLoads drawn = draw(chain, {10, 1});
    CHECK_CLOSE(drawn.mean_load, 500.0, 1e-12, 0.0);
    CHECK_CLOSE(drawn.load_deviation, 0.0, 0.0, 1e-9);
    CHECK(first_breaks(drawn) == std::vector<std::uint64_t>{0, 10, 0});
    CHECK(carrying(drawn, 499.9).share == 1.0);
    CHECK(carrying(drawn, 500.1).share == 0.0);
}

TEST_CASE("A demand that is there before the load takes its part of the strength", "[closed-form]") {
    Chain chain{{}, {link(1000.0, 0.0, 2.0)}};
    chain.links[0].constant_demand = 400.0;
    CHECK_CLOSE(draw(chain, {1, 1}).mean_load, 300.0, 1e-12, 0.0);
    chain.links[0].constant_demand = 1200.0;  // broken before any load
    CHECK(draw(chain, {1, 1}).mean_load == 0.0);
}

TEST_CASE("A demand found by the caller gives what the linear one gives where it is linear", "[property]") {
    const Chain chain{{{0.1}}, {link(900.0, 0.2, 1.5), link(500.0, 0.1, 1.0)}};
    const BreakingLoads linear = draw(chain, {300, 12});
    const BreakingLoads found = draw(chain, {300, 12}, [&](std::span<const double> strengths, std::span<double> loads) {
        for (std::size_t one = 0; one < loads.size(); ++one)
            loads[one] = strengths[one] / chain.links[one].demand_per_load;
    });
    CHECK(linear.mean_load == found.mean_load);
    CHECK(first_breaks(linear) == first_breaks(found));
}

TEST_CASE("Breaks below a load are among all breaks, and add up to those that do not carry it", "[property]") {
    const BreakingLoads drawn = draw({{}, {link(2000.0, 0.20), link(2600.0, 0.30)}}, {2000, 3});
    const std::vector<std::uint64_t> all = first_breaks(drawn), some = first_breaks_below(drawn, 1700.0);
    for (std::size_t number = 0; number < all.size(); ++number) CHECK(some[number] <= all[number]);
    const double broken = static_cast<double>(some[0] + some[1]) / 2000.0;
    CHECK_CLOSE(broken, 1.0 - carrying(drawn, 1700.0).share, 1e-12, 0.0);
    CHECK(first_breaks_below(drawn, std::numeric_limits<double>::infinity()) == all);
}

TEST_CASE("One seed gives one result to the last digit", "[property]") {
    const Chain chain{{{0.1}}, {link(2000.0, 0.20), link(2600.0, 0.30)}};
    const BreakingLoads one = draw(chain, {1000, 42}), same = draw(chain, {1000, 42}), other = draw(chain, {1000, 43});
    CHECK(one.mean_load == same.mean_load);
    CHECK(one.breaks.front().load == same.breaks.front().load);
    CHECK(one.mean_load != other.mean_load);
}

TEST_CASE("A load at a share lies straight between the samples that it falls between", "[closed-form]") {
    const BreakingLoads three{{{100.0, 0}, {200.0, 1}, {400.0, 0}}, 2, 700.0 / 3.0, 0.0};
    CHECK(load_at_share(three, 0.0) == 100.0);
    CHECK_CLOSE(load_at_share(three, 0.25), 150.0, 1e-12, 0.0);
    CHECK(load_at_share(three, 0.5) == 200.0);
    CHECK_CLOSE(load_at_share(three, 0.9), 360.0, 1e-12, 0.0);
    CHECK(load_at_share(three, 1.0) == 400.0);
    CHECK_THROWS_AS(load_at_share(three, 1.01), std::invalid_argument);
    CHECK_THROWS_AS(load_at_share(three, -0.01), std::invalid_argument);
    // A sample that breaks at the load itself has carried it.
    CHECK_CLOSE(carrying(three, 200.0).share, 2.0 / 3.0, 1e-12, 0.0);
    CHECK(first_breaks_below(three, 200.0) == std::vector<std::uint64_t>{1, 0});
    CHECK(first_breaks(three) == std::vector<std::uint64_t>{2, 1});
}

TEST_CASE("The deviation is that of a sample, over one less than its number", "[closed-form]") {
    int sample = 0;
    const BreakingLoads drawn =
        draw(alike(1), {3, 1}, [&](std::span<const double>, std::span<double> loads) { loads[0] = 100.0 * ++sample; });
    CHECK_CLOSE(drawn.mean_load, 200.0, 1e-12, 0.0);
    CHECK_CLOSE(drawn.load_deviation, 100.0, 1e-12, 0.0);  // (100^2 + 0 + 100^2)/2
    CHECK(draw(alike(1), {1, 1}).load_deviation == 0.0);
    // 1.96 x 100/sqrt(3).
    CHECK_CLOSE(mean_interval(drawn).high - 200.0, 113.16, 1e-3, 0.0);
    CHECK_CLOSE(200.0 - mean_interval(drawn).low, 113.16, 1e-3, 0.0);
    CHECK_THROWS_AS(mean_interval(drawn, 1.0), std::invalid_argument);
}

TEST_CASE("Units of strength and load are the caller's: small ones are as good", "[property]") {
    const Chain large{{}, {link(1000.0, 0.2, 1.0), link(1200.0, 0.3, 1.0)}};
    const Chain small{{}, {link(1e-3, 0.2, 1e-3), link(1.2e-3, 0.3, 1e-3)}};
    CHECK_CLOSE(1000.0 * draw(small, {200, 2}).mean_load, draw(large, {200, 2}).mean_load, 1e-12, 0.0);
    CHECK(first_breaks(draw(small, {200, 2})) == first_breaks(draw(large, {200, 2})));
}

TEST_CASE("A normal strength never falls below none, and scatters as asked", "[closed-form]") {
    Chain chain{{}, {link(100.0, 0.5)}};
    chain.links[0].law = Law::normal;
    const BreakingLoads drawn = draw(chain, {20000, 8});
    CHECK(drawn.breaks.front().load == 0.0);
    // Below 0 lies Phi(-2); between 0 and 50 the rest of Phi(-1).
    check_holds(carrying(drawn, 50.0, 0.9999994).interval, normal_probability(1.0));
}

TEST_CASE("A chain that means nothing is refused", "[bad-input]") {
    CHECK_THROWS_AS(draw({}, {10, 1}), std::invalid_argument);
    CHECK_THROWS_AS(draw({{}, {link(100.0, 0.1, 0.0)}}, {10, 1}), std::invalid_argument);
    CHECK_THROWS_AS(draw({{}, {link(0.0, 0.1)}}, {10, 1}), std::invalid_argument);
    CHECK_THROWS_AS(draw({{}, {link(100.0, -0.1)}}, {10, 1}), std::invalid_argument);
    CHECK_THROWS_AS(draw({{}, {link(100.0, 0.1, -1.0)}}, {10, 1}), std::invalid_argument);
    CHECK_THROWS_AS(draw({{{-0.1}}, {link(100.0, 0.1)}}, {10, 1}), std::invalid_argument);
    CHECK_THROWS_AS(draw(alike(1), {0, 1}), std::invalid_argument);
    CHECK_THROWS_AS(draw(alike(1), {most_samples + 1, 1}), std::invalid_argument);
    Chain chain = alike(1);
    chain.links[0].shared = {{0, 1.0}};
    CHECK_THROWS_AS(draw(chain, {10, 1}), std::invalid_argument);
    CHECK_THROWS_AS(load_at_share(draw(alike(1), {2, 1}), 1.5), std::invalid_argument);
}

TEST_CASE("A caller who finds no breaking load for any link is told so", "[bad-input]") {
    const auto none = [](std::span<const double>, std::span<double> loads) {
        for (double& load : loads) load = std::numeric_limits<double>::infinity();
    };
    CHECK_THROWS_AS(draw(alike(2), {2, 1}, none), std::invalid_argument);
}
