// Lognormal and normal variates against their closed forms and against scipy 1.10.1 (lognorm.ppf, run once by hand).
#include "mechanics/sampling/variate.h"

#include "mechanics/sampling/normal_distribution.h"
#include "mechanics/sampling/random_numbers.h"
#include "support/compare.h"

#include <cmath>
#include <stdexcept>

using namespace toehold::mechanics;

TEST_CASE("A lognormal quantity's median and percentiles are those of another library", "[published]") {
    // Mean 1000, variation 0.25.
    CHECK_CLOSE(lognormal(1000.0, 0.25).log_deviation, 0.24622067706923975, 1e-14, 0.0);
    CHECK_CLOSE(variate(Law::lognormal, 1000.0, 0.25, 0.0), 970.1425001453318, 1e-13, 0.0);
    CHECK_CLOSE(variate(Law::lognormal, 1000.0, 0.25, normal_quantile(0.05)), 647.0645090285228, 1e-12, 0.0);
    CHECK_CLOSE(variate(Law::lognormal, 1000.0, 0.25, normal_quantile(0.95)), 1454.5326740316516, 1e-12, 0.0);
}

TEST_CASE("Drawn lognormal quantities have the mean and the variation asked for", "[closed-form]") {
    RandomNumbers random(11);
    constexpr int count = 40000;
    constexpr double mean = 250.0, variation = 0.2;
    double sum = 0.0, squares = 0.0;
    for (int number = 0; number < count; ++number) {
        const double drawn = variate(Law::lognormal, mean, variation, random.normal());
        sum += drawn;
        squares += (drawn - mean) * (drawn - mean);
    }
    CHECK_CLOSE(sum / count, mean, 0.0, 4.0 * variation * mean / std::sqrt(count));
    CHECK_CLOSE(std::sqrt(squares / count), variation * mean, 0.03, 0.0);
}

TEST_CASE("A normal quantity is its mean and so many deviations, and never below 0", "[closed-form]") {
    CHECK_CLOSE(variate(Law::normal, 80.0, 0.1, 1.5), 92.0, 1e-14, 0.0);
    CHECK(variate(Law::normal, 80.0, 0.5, -2.5) == 0.0);
    CHECK(variate(Law::normal, 80.0, 0.0, -2.5) == 80.0);
}

TEST_CASE("The mean found from a 5th percentile has that percentile", "[closed-form]") {
    for (const double variation : {0.0, 0.1, 0.35}) {
        const double mean = lognormal_mean_of_fifth(900.0, variation);
        CHECK_CLOSE(variate(Law::lognormal, mean, variation, normal_quantile(0.05)), 900.0, 1e-13, 0.0);
    }
}

TEST_CASE("No mean, or a scatter below none, is refused", "[bad-input]") {
    CHECK_THROWS_AS(lognormal(0.0, 0.1), std::invalid_argument);
    CHECK_THROWS_AS(lognormal(-1.0, 0.1), std::invalid_argument);
    CHECK_THROWS_AS(lognormal(1.0, -0.1), std::invalid_argument);
    CHECK_THROWS_AS(variate(Law::normal, std::nan(""), 0.1, 0.0), std::invalid_argument);
}
