#pragma once
// Small pieces every check builds its result from.
#include "checks/result.h"

#include <string>
#include <vector>

namespace toehold::checks {

/// A reference value with every factor applied, and one worked line a factor.
struct Adjusted {
    double value = 0.0;       ///< reference value times every factor
    std::vector<Step> steps;  ///< the factors, one line each, in the order of the standard's table; no product line
};

/// Degrees from 0 up to, not including, 360.
[[nodiscard]] double degrees(double direction_rad);

/// Demand over capacity where a check looks for its worst state, as `conclude` forms it: infinity where capacity is 0
/// and demand is not, 0 where neither is there.
[[nodiscard]] double ratio(double demand, double capacity);

void append(std::vector<Step>& steps, const std::vector<Step>& more);

/// A result of `missing_evidence`: the sentence says what the file does not give.
void lacks_evidence(CheckResult& result, std::string sentence);
/// No load path, whatever the size of the demand: nothing resists it.
void nothing_resists(CheckResult& result, double demand, std::string unit, std::string why);

}  // namespace toehold::checks
