#pragma once
// Small pieces every check builds its result from.
#include "checks/result.h"

#include <string>
#include <vector>

namespace toehold::checks {

/// Degrees from 0 up to, not including, 360.
[[nodiscard]] double degrees(double direction_rad);

void append(std::vector<Step>& steps, const std::vector<Step>& more);

/// A result of `missing_evidence`: the sentence says what the file does not give.
void lacks_evidence(CheckResult& result, std::string sentence);

}  // namespace toehold::checks
