#pragma once
// Results that come to the same, so that a reader sees one row for them: the four anchors of a symmetric base, both
// ends of a block.
#include "checks/result.h"

#include <cstddef>
#include <vector>

namespace toehold::review {

/// How far apart the ratios of one group may be, relative to its worst.
inline constexpr double alike_within = 0.01;

/// Of the same check and title, on parts of the same kind and piece, with the same status, and with ratios that near.
[[nodiscard]] bool alike(const checks::CheckResult& one, const checks::CheckResult& other);

struct Group {
    std::vector<std::size_t> results;  ///< places among the results, worst first; never empty
    [[nodiscard]] std::size_t worst() const { return results.front(); }
};

/// Of those `among` the results, in the order of the worst of each group. A result is in the first group it fits.
[[nodiscard]] std::vector<Group> grouped(const std::vector<checks::CheckResult>& results,
                                         const std::vector<std::size_t>& among);
/// Of all of them.
[[nodiscard]] std::vector<Group> grouped(const std::vector<checks::CheckResult>& results);

}  // namespace toehold::review
