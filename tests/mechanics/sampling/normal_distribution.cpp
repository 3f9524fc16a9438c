// The normal distribution against scipy 1.10.1 (norm.ppf, norm.cdf; Debian's python3-scipy, run once by hand), the
// generator against the number that the C++ standard prints.
#include "mechanics/sampling/normal_distribution.h"

#include "mechanics/sampling/random_numbers.h"
#include "support/compare.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <stdexcept>

using namespace toehold::mechanics;

namespace {

struct Quantile {
    double probability, z;
};

constexpr std::array<Quantile, 15> scipy_quantiles{{{1e-300, -37.0470962993612},
                                                    {1e-20, -9.262340089798409},
                                                    {1e-10, -6.361340902404056},
                                                    {1e-5, -4.264890793922825},
                                                    {0.001, -3.090232306167813},
                                                    {0.025, -1.9599639845400545},
                                                    {0.05, -1.6448536269514729},
                                                    {0.1, -1.2815515655446004},
                                                    {0.2, -0.8416212335729142},
                                                    {0.425, -0.18911842627279252},
                                                    {0.5, 0.0},
                                                    {0.6, 0.2533471031357997},
                                                    {0.925, 1.4395314709384563},
                                                    {0.975, 1.959963984540054},
                                                    {0.9999999999, 6.361340889697422}}};

constexpr std::array<Quantile, 8> scipy_probabilities{{{6.22096057427174e-16, -8.0},
                                                       {0.0013498980316300933, -3.0},
                                                       {0.024997895148220435, -1.96},
                                                       {0.15865525393145707, -1.0},
                                                       {0.5, 0.0},
                                                       {0.8413447460685429, 1.0},
                                                       {0.9937903346742238, 2.5},
                                                       {0.9999999990134123, 6.0}}};

}  // namespace

TEST_CASE("Normal quantiles are those of another library, far into both tails", "[published]") {
    for (const Quantile& known : scipy_quantiles)
        CHECK_CLOSE(normal_quantile(known.probability), known.z, 1e-14, 1e-15);
}

TEST_CASE("Normal probabilities are those of another library", "[published]") {
    for (const Quantile& known : scipy_probabilities)
        CHECK_CLOSE(normal_probability(known.z), known.probability, 1e-13, 0.0);
}

TEST_CASE("The quantile undoes the probability and is odd about one half", "[property]") {
    for (int step = 1; step < 50; ++step) {
        const double z = -0.17 * step;
        CHECK_CLOSE(normal_quantile(normal_probability(z)), z, 1e-13, 0.0);
    }
    for (const double probability : {0.01, 0.07, 0.075, 0.3, 0.499})
        CHECK_CLOSE(normal_quantile(1.0 - probability), -normal_quantile(probability), 1e-13, 0.0);
}

TEST_CASE("A quantile of no chance, of certainty or of no number is refused", "[bad-input]") {
    for (const double probability : {0.0, 1.0, -0.1, 1.1, std::nan("")})
        CHECK_THROWS_AS(normal_quantile(probability), std::invalid_argument);
}

TEST_CASE("The generator's ten thousandth number is the one that the C++ standard prints", "[published]") {
    RandomNumbers random(5489);  // the default seed
    for (int number = 1; number < 10000; ++number) static_cast<void>(random.uniform());
    constexpr std::uint64_t printed = 9981545732273789042U;
    CHECK(random.uniform() == (static_cast<double>(printed >> 12) + 0.5) * 0x1.0p-52);
}

TEST_CASE("One seed gives one sequence, another seed another", "[property]") {
    RandomNumbers one(7), same(7), other(8);
    int equal = 0;
    for (int number = 0; number < 1000; ++number) {
        const double drawn = one.normal();
        CHECK(drawn == same.normal());
        if (drawn == other.normal()) ++equal;
    }
    CHECK(equal == 0);
}

TEST_CASE("Even numbers lie strictly between 0 and 1, normal ones have mean 0 and deviation 1", "[property]") {
    RandomNumbers random(2026);
    constexpr int count = 20000;
    double sum = 0.0, squares = 0.0, least = 1.0, largest = 0.0;
    for (int number = 0; number < count; ++number) {
        const double even = random.uniform();
        least = std::min(least, even);
        largest = std::max(largest, even);
        const double normal = random.normal();
        sum += normal;
        squares += normal * normal;
    }
    CHECK(least > 0.0);
    CHECK(largest < 1.0);
    // Four standard errors: 1/sqrt(n) of the mean, sqrt(2/n) of the mean square.
    CHECK_CLOSE(sum / count, 0.0, 0.0, 4.0 / std::sqrt(count));
    CHECK_CLOSE(squares / count, 1.0, 0.0, 4.0 * std::sqrt(2.0 / count));
}
