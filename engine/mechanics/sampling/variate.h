#pragma once
// A random quantity with a given mean and coefficient of variation (its standard deviation over its mean), made of a
// standard normal number. Any unit.

namespace toehold::mechanics {

enum class Law {
    lognormal,  ///< never negative; what products of many causes tend to, and what strengths are described by
    normal,     ///< cut off at 0, since a strength is never negative
};

/// Mean and standard deviation of the logarithm of a lognormal quantity.
struct Lognormal {
    double log_mean = 0.0;  ///< the logarithm of the median
    double log_deviation = 0.0;
};
/// s^2 = ln(1 + V^2), m = ln(mean) - s^2/2. Throws std::invalid_argument unless mean > 0 and V >= 0, both finite.
[[nodiscard]] Lognormal lognormal(double mean, double variation);

/// The quantity where the standard normal number is `normal`: exp(m + s z), or mean (1 + V z) and at least 0. Errors as
/// above.
[[nodiscard]] double variate(Law law, double mean, double variation, double normal);

/// Mean of a lognormal quantity whose 5th percentile and variation are known: the inverse of
/// exp(m - 1.645 s). Errors as above.
[[nodiscard]] double lognormal_mean_of_fifth(double fifth_percentile, double variation);

}  // namespace toehold::mechanics
