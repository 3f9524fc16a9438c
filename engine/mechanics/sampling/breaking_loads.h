#pragma once
// What drawn breaking loads tell: how likely the chain carries a load, which link breaks first and how often, and the
// load it carries with a given chance. Shares come with their Wilson intervals: the interval is of the drawing alone,
// and shrinks with more samples; how true the means and variations are that went in, it does not tell.
#include "mechanics/sampling/proportion.h"
#include "mechanics/sampling/weakest_link.h"

#include <cstdint>
#include <vector>

namespace toehold::mechanics {

/// Samples whose every link is whole at `load`: those that break above it or at it.
[[nodiscard]] Proportion carrying(const BreakingLoads& drawn, double load, double confidence = 0.95);

/// Of every link, in how many samples it broke first.
[[nodiscard]] std::vector<std::uint64_t> first_breaks(const BreakingLoads& drawn);
/// The same among the samples that broke below `load`: what a test up to that load would show.
[[nodiscard]] std::vector<std::uint64_t> first_breaks_below(const BreakingLoads& drawn, double load);

/// Load below which this share of the samples broke, 0 <= share <= 1, straight between two samples. Throws
/// std::invalid_argument outside.
[[nodiscard]] double load_at_share(const BreakingLoads& drawn, double share);

/// Interval of the mean breaking load, mean -+ z s/sqrt(n): the central limit, for hundreds of samples or more.
[[nodiscard]] ConfidenceInterval mean_interval(const BreakingLoads& drawn, double confidence = 0.95);

}  // namespace toehold::mechanics
