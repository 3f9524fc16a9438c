#pragma once
// How well a count tells a chance: so many out of so many trials, and between which chances the true one lies with a
// stated confidence.
#include <cstdint>

namespace toehold::mechanics {

struct ConfidenceInterval {
    double low = 0.0, high = 0.0;
};

/// A share that was counted, and its interval; all 0 to 1.
struct Proportion {
    double share = 0.0;
    ConfidenceInterval interval;
};

// Both throw std::invalid_argument unless 0 <= count <= trials, trials > 0 and 0 < confidence < 1.

/// E. B. Wilson's score interval (Journal of the American Statistical Association 22, 1927), without a correction for
/// continuity: covers about as often as it says, for many trials. `confidence` of both sides together, as 0.95.
[[nodiscard]] ConfidenceInterval wilson(std::uint64_t count, std::uint64_t trials, double confidence);

/// C. J. Clopper and E. S. Pearson's exact interval (Biometrika 26, 1934): covers at least as often as it says, also
/// for a handful of trials, as of guards that were tested. Takes time in proportion to `trials`.
[[nodiscard]] ConfidenceInterval clopper_pearson(std::uint64_t count, std::uint64_t trials, double confidence);

/// The share with its Wilson interval.
[[nodiscard]] Proportion proportion(std::uint64_t count, std::uint64_t trials, double confidence = 0.95);

}  // namespace toehold::mechanics
