#include "mechanics/sampling/variate.h"

#include "mechanics/sampling/normal_distribution.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::mechanics {

Lognormal lognormal(double mean, double variation) {
    if (!(mean > 0.0) || !(variation >= 0.0) || !std::isfinite(mean) || !std::isfinite(variation))
        throw std::invalid_argument("a variate needs a mean above 0 and a variation of 0 or more");
    const double variance = std::log1p(variation * variation);
    return {std::log(mean) - 0.5 * variance, std::sqrt(variance)};
}

double variate(Law law, double mean, double variation, double normal) {
    const Lognormal parameters = lognormal(mean, variation);
    if (law == Law::normal) return std::max(mean * (1.0 + variation * normal), 0.0);
    return std::exp(parameters.log_mean + parameters.log_deviation * normal);
}

double lognormal_mean_of_fifth(double fifth_percentile, double variation) {
    const Lognormal of_mean_one = lognormal(1.0, variation);
    return fifth_percentile / std::exp(of_mean_one.log_mean + of_mean_one.log_deviation * normal_quantile(0.05));
}

}  // namespace toehold::mechanics
