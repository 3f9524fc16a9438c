#pragma once
// The standard normal distribution and its inverse, by formulas of our own: those of the standard library's
// distributions differ from one library to the next.

namespace toehold::mechanics {

/// Chance that a standard normal variate is at most `z`; any finite z, also far out in either tail.
[[nodiscard]] double normal_probability(double z);

/// The z below which a standard normal variate lies with this chance, 0 < probability < 1; within 2e-15 of the exact
/// value, relatively. Algorithm AS 241 (PPND16), M. J. Wichura, Applied Statistics 37, 1988, pages 477 to 484: its
/// constants were read in two public listings. Throws std::invalid_argument outside.
[[nodiscard]] double normal_quantile(double probability);

}  // namespace toehold::mechanics
