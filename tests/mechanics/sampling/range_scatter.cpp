// The mean range of normal samples against numerical integration (scipy 1.10.1, run once by hand) and against drawing.
#include "mechanics/sampling/range_scatter.h"

#include "mechanics/sampling/random_numbers.h"
#include "support/compare.h"

#include <algorithm>
#include <array>
#include <stdexcept>

using namespace toehold::mechanics;

TEST_CASE("The mean range of n normal results is the integral of 1 - F^n - (1 - F)^n", "[closed-form]") {
    constexpr std::array<double, 9> integrated{1.1283791670955123, 1.6925687506432687, 2.0587507460079277,
                                               2.3259289472810396, 2.5344127212229424, 2.7043567512138087,
                                               2.847200612090555,  2.9700263244184733, 3.077505461670345};
    for (int results = 2; results <= 10; ++results)
        CHECK_CLOSE(1.0 / deviation_of_range(1.0, results), integrated.at(static_cast<std::size_t>(results - 2)), 3e-6,
                    0.0);
}

TEST_CASE("Ranges of five drawn results give the deviation they were drawn with", "[property]") {
    RandomNumbers random(4);
    constexpr int series = 4000;
    double sum = 0.0;
    for (int number = 0; number < series; ++number) {
        std::array<double, 5> results{};
        for (double& result : results) result = 200.0 + 20.0 * random.normal();
        const auto [least, largest] = std::minmax_element(results.begin(), results.end());
        sum += deviation_of_range(*largest - *least, 5);
    }
    CHECK_CLOSE(sum / series, 20.0, 0.03, 0.0);
}

TEST_CASE("Results all alike do not scatter", "[closed-form]") {
    CHECK(deviation_of_range(0.0, 5) == 0.0);
    CHECK_CLOSE(deviation_of_range(0.05, 2), 0.05 / 1.12838, 1e-12, 0.0);
}

TEST_CASE("One result, eleven, or a range below none tells no scatter", "[bad-input]") {
    CHECK_THROWS_AS(deviation_of_range(1.0, 1), std::invalid_argument);
    CHECK_THROWS_AS(deviation_of_range(1.0, 11), std::invalid_argument);
    CHECK_THROWS_AS(deviation_of_range(-1.0, 5), std::invalid_argument);
}
