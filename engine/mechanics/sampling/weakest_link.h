#pragma once
// At what load a chain of links breaks, and at which of them, where their strengths scatter. Strengths are drawn many
// times; every time the link that breaks at the least load breaks the whole. Nothing is shared out anew after that, so
// a chain whose links would help each other is called weaker than it is.
//
// What several links have in common, such as the density of the wood that holds four screws, is a common factor: it
// moves them together. Plain arrays; every strength in the unit of its own demand, loads in any one unit.
#include "mechanics/sampling/variate.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace toehold::mechanics {

/// Lognormal with mean 1; multiplies the strengths of the links that share in it.
struct CommonFactor {
    double variation = 0.0;  ///< coefficient of variation, >= 0
};

/// A link's strength grows with this power of a common factor: 1.5 for a lag screw's withdrawal in the wood's density.
struct SharedFactor {
    std::size_t factor = 0;  ///< number in `Chain::factors`
    double power = 1.0;
};

/// demand = constant_demand + demand_per_load * load.
struct ChainLink {
    double mean_strength = 0.0;  ///< where every common factor is 1; > 0
    double variation = 0.0;      ///< of the link alone, the common factors apart; >= 0
    Law law = Law::lognormal;
    double demand_per_load = 0.0;  ///< >= 0; 0: the load never breaks it
    double constant_demand = 0.0;  ///< there before the load, >= 0, as the deck's own weight
    std::vector<SharedFactor> shared;
};

struct Chain {
    std::vector<CommonFactor> factors;
    std::vector<ChainLink> links;
};

struct Drawing {
    std::uint64_t samples = 20000;  ///< 1 to `most_samples`
    std::uint64_t seed = 1;         ///< the same seed, the same result
};
inline constexpr std::uint64_t most_samples = 10'000'000;

/// One sample: the least load that breaks a link, and which. Of equals the first; a link broken before any load: 0.
struct FirstBreak {
    double load = 0.0;
    std::uint32_t link = 0;
};

struct BreakingLoads {
    std::vector<FirstBreak> breaks;  ///< one a sample, by ascending load
    std::size_t links = 0;
    double mean_load = 0.0;
    double load_deviation = 0.0;  ///< standard deviation of the samples; 0 of one
};

/// Demands in proportion to the load, or to it beside a constant. Throws std::invalid_argument on a link or factor
/// outside the ranges above, on no link that the load could break, and on a number of samples outside its range.
[[nodiscard]] BreakingLoads draw(const Chain& chain, const Drawing& drawing);

/// Where demands do not grow in proportion: given the strengths of a sample, find the load that breaks each link
/// (infinity: none). The links' own demands are not used. Called once a sample, in order.
using LoadsThatBreak = std::function<void(std::span<const double> strengths, std::span<double> loads)>;
[[nodiscard]] BreakingLoads draw(const Chain& chain, const Drawing& drawing, const LoadsThatBreak& find);

}  // namespace toehold::mechanics
