// Intervals of a share against printed examples and against statsmodels 0.13.5 (proportion_confint, methods `wilson`
// and `beta`; Debian's python3-statsmodels, run once by hand).
#include "mechanics/sampling/proportion.h"

#include "support/compare.h"

#include <array>
#include <cstdint>
#include <stdexcept>

using namespace toehold::mechanics;
using toehold::test::prints_as;

namespace {

struct Known {
    std::uint64_t count, trials;
    ConfidenceInterval wilson, exact;
};

// Confidence 0.95.
constexpr std::array<Known, 8> statsmodels{
    {{12, 150, {0.046353641519, 0.134621363751}, {0.042020264700, 0.135573890213}},
     {0, 30, {0.0, 0.113513393174}, {0.0, 0.115703308222}},
     {30, 30, {0.886486606826, 1.0}, {0.884296691778, 1.0}},
     {5, 5, {0.565517535217, 1.0}, {0.478176249895, 1.0}},
     {81, 263, {0.255288519878, 0.366209576983}, {0.252736745585, 0.367621922601}},
     {1, 29, {0.006113214293, 0.171755218793}, {0.000872646884, 0.177644295489}},
     {8200, 10000, {0.812347627917, 0.827406613126}, {0.812327233466, 0.827485931284}},
     {997, 1000, {0.991216985946, 0.998979216119}, {0.991257976762, 0.999380900068}}}};

void check_both(const ConfidenceInterval& found, const ConfidenceInterval& known) {
    CHECK_CLOSE(found.low, known.low, 0.0, 1e-11);
    CHECK_CLOSE(found.high, known.high, 0.0, 1e-11);
}

}  // namespace

TEST_CASE("12 complications in 150 procedures have the intervals of a public worked example", "[published]") {
    // statulator.com, confidence interval for a single proportion: Wilson 0.046 to 0.135, exact 0.042 to 0.136.
    const ConfidenceInterval score = wilson(12, 150, 0.95), exact = clopper_pearson(12, 150, 0.95);
    CHECK(prints_as(score.low, 0.046, 0.001));
    CHECK(prints_as(score.high, 0.135, 0.001));
    CHECK(prints_as(exact.low, 0.042, 0.001));
    CHECK(prints_as(exact.high, 0.136, 0.001));
}

TEST_CASE("81 of 263 has the intervals of Newcombe's comparison of methods", "[memory]") {
    // R. G. Newcombe, Statistics in Medicine 17, 1998, Table I, from memory: 0.2553 to 0.3662, 0.2527 to 0.3676.
    const ConfidenceInterval score = wilson(81, 263, 0.95), exact = clopper_pearson(81, 263, 0.95);
    CHECK(prints_as(score.low, 0.2553, 0.0001));
    CHECK(prints_as(score.high, 0.3662, 0.0001));
    CHECK(prints_as(exact.low, 0.2527, 0.0001));
    CHECK(prints_as(exact.high, 0.3676, 0.0001));
}

TEST_CASE("Both intervals are those of another library", "[published]") {
    for (const Known& known : statsmodels) {
        INFO(known.count << " of " << known.trials);
        check_both(wilson(known.count, known.trials, 0.95), known.wilson);
        check_both(clopper_pearson(known.count, known.trials, 0.95), known.exact);
    }
    check_both(clopper_pearson(15, 148, 0.90), {0.063518448819, 0.151768370241});
}

TEST_CASE("None of a few and all of a few mirror each other, and hold 0 and 1", "[property]") {
    for (const std::uint64_t trials : {1U, 5U, 20U}) {
        const ConfidenceInterval none = wilson(0, trials, 0.95), all = wilson(trials, trials, 0.95);
        CHECK(none.low == 0.0);
        CHECK(all.high == 1.0);
        CHECK_CLOSE(none.high, 1.0 - all.low, 1e-12, 0.0);
    }
}

TEST_CASE("More trials at the same share tell it more closely", "[property]") {
    double width = 1.0;
    for (const std::uint64_t trials : {10U, 100U, 1000U, 100000U}) {
        const Proportion found = proportion(trials / 5, trials);
        CHECK_CLOSE(found.share, 0.2, 1e-12, 0.0);
        CHECK(found.interval.low < 0.2);
        CHECK(found.interval.high > 0.2);
        CHECK(found.interval.high - found.interval.low < width);
        width = found.interval.high - found.interval.low;
    }
}

TEST_CASE("A count of no trials, beyond them, or a confidence that is none is refused", "[bad-input]") {
    CHECK_THROWS_AS(wilson(0, 0, 0.95), std::invalid_argument);
    CHECK_THROWS_AS(wilson(3, 2, 0.95), std::invalid_argument);
    CHECK_THROWS_AS(clopper_pearson(1, 2, 0.0), std::invalid_argument);
    CHECK_THROWS_AS(clopper_pearson(1, 2, 1.0), std::invalid_argument);
}
