#include "mechanics/sampling/breaking_loads.h"

#include "mechanics/sampling/normal_distribution.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

std::span<const FirstBreak> below(const BreakingLoads& drawn, double load) {
    const auto end = std::lower_bound(drawn.breaks.begin(), drawn.breaks.end(), load,
                                      [](const FirstBreak& one, double limit) { return one.load < limit; });
    return {drawn.breaks.begin(), end};
}

std::vector<std::uint64_t> counted(std::span<const FirstBreak> breaks, std::size_t links) {
    std::vector<std::uint64_t> counts(links);
    for (const FirstBreak& one : breaks) ++counts.at(one.link);
    return counts;
}

}  // namespace

Proportion carrying(const BreakingLoads& drawn, double load, double confidence) {
    return proportion(drawn.breaks.size() - below(drawn, load).size(), drawn.breaks.size(), confidence);
}

std::vector<std::uint64_t> first_breaks(const BreakingLoads& drawn) { return counted(drawn.breaks, drawn.links); }

std::vector<std::uint64_t> first_breaks_below(const BreakingLoads& drawn, double load) {
    return counted(below(drawn, load), drawn.links);
}

double load_at_share(const BreakingLoads& drawn, double share) {
    if (!(share >= 0.0 && share <= 1.0) || drawn.breaks.empty())
        throw std::invalid_argument("a share of breaking loads is between 0 and 1");
    const double place = share * static_cast<double>(drawn.breaks.size() - 1);
    const auto lower = static_cast<std::size_t>(place);
    const std::size_t upper = std::min(lower + 1, drawn.breaks.size() - 1);
    const double part = place - std::floor(place);
    return (1.0 - part) * drawn.breaks[lower].load + part * drawn.breaks[upper].load;
}

ConfidenceInterval mean_interval(const BreakingLoads& drawn, double confidence) {
    if (!(confidence > 0.0 && confidence < 1.0))
        throw std::invalid_argument("an interval needs a confidence between 0 and 1");
    const double reach = normal_quantile(0.5 + 0.5 * confidence) * drawn.load_deviation /
                         std::sqrt(static_cast<double>(drawn.breaks.size()));
    return {drawn.mean_load - reach, drawn.mean_load + reach};
}

}  // namespace toehold::mechanics
