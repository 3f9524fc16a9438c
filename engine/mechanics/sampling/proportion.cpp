#include "mechanics/sampling/proportion.h"

#include "mechanics/sampling/normal_distribution.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

void require_sound_count(std::uint64_t count, std::uint64_t trials, double confidence) {
    if (trials == 0 || count > trials) throw std::invalid_argument("a proportion needs a count of one trial or more");
    if (!(confidence > 0.0 && confidence < 1.0))
        throw std::invalid_argument("an interval needs a confidence between 0 and 1");
}

/// ln of n over k.
double log_binomial(std::uint64_t trials, std::uint64_t count) {
    const std::uint64_t fewer = std::min(count, trials - count);
    double sum = 0.0;
    for (std::uint64_t one = 1; one <= fewer; ++one)
        sum += std::log(static_cast<double>(trials - fewer + one) / static_cast<double>(one));
    return sum;
}

/// Chance of `count` or more, where `chance` is at most count/trials: from there on every term is below the one before.
double tail(double log_coefficient, std::uint64_t count, std::uint64_t trials, double chance) {
    const double successes = static_cast<double>(count), failures = static_cast<double>(trials - count);
    double term = std::exp(log_coefficient + successes * std::log(chance) + failures * std::log1p(-chance));
    double sum = term;
    const double odds = chance / (1.0 - chance);
    constexpr double too_small = 1e-17;
    for (std::uint64_t one = count; one < trials && term > too_small * sum; ++one) {
        term *= static_cast<double>(trials - one) / static_cast<double>(one + 1) * odds;
        sum += term;
    }
    return sum;
}

/// The chance under which `count` or more would come up as rarely as `tail_chance`.
double lower_limit(std::uint64_t count, std::uint64_t trials, double tail_chance) {
    if (count == 0) return 0.0;
    const double all = static_cast<double>(trials);
    if (count == trials) return std::pow(tail_chance, 1.0 / all);
    const double log_coefficient = log_binomial(trials, count);
    double low = 0.0, high = static_cast<double>(count) / all;
    constexpr int halvings = 60;
    for (int step = 0; step < halvings; ++step) {
        const double middle = 0.5 * (low + high);
        (tail(log_coefficient, count, trials, middle) < tail_chance ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

}  // namespace

ConfidenceInterval wilson(std::uint64_t count, std::uint64_t trials, double confidence) {
    require_sound_count(count, trials, confidence);
    const double all = static_cast<double>(trials), share = static_cast<double>(count) / all;
    const double z = normal_quantile(0.5 + 0.5 * confidence);
    const double weight = z * z / all;
    const double center = share + 0.5 * weight;
    const double reach = z * std::sqrt(share * (1.0 - share) / all + 0.25 * weight / all);
    return {count == 0 ? 0.0 : (center - reach) / (1.0 + weight),
            count == trials ? 1.0 : (center + reach) / (1.0 + weight)};
}

ConfidenceInterval clopper_pearson(std::uint64_t count, std::uint64_t trials, double confidence) {
    require_sound_count(count, trials, confidence);
    const double each_side = 0.5 * (1.0 - confidence);
    return {lower_limit(count, trials, each_side), 1.0 - lower_limit(trials - count, trials, each_side)};
}

Proportion proportion(std::uint64_t count, std::uint64_t trials, double confidence) {
    const ConfidenceInterval interval = wilson(count, trials, confidence);
    return {static_cast<double>(count) / static_cast<double>(trials), interval};
}

}  // namespace toehold::mechanics
