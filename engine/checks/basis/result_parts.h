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
void lacks_evidence(CheckResult& result, format::Phrase sentence);
/// No load path, whatever the size of the demand: nothing resists it.
void nothing_resists(CheckResult& result, double demand, std::string unit, format::Phrase why);

/// The link from one part to the next, by what joins them.
[[nodiscard]] Link link_between(model::PartId from, model::PartId to, format::Phrase by);
/// `clause` empty: the rule's own.
[[nodiscard]] Finding finding_on(model::PartId part, Severity severity, format::Phrase message,
                                 std::string clause = {});
/// One sentence after the other; either may be empty.
[[nodiscard]] format::Phrase sentences(format::Phrase first, format::Phrase second);

}  // namespace toehold::checks
