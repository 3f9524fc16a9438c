#include "mechanics/sampling/weakest_link.h"

#include "mechanics/sampling/random_numbers.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <utility>

namespace toehold::mechanics {
namespace {

constexpr double never = std::numeric_limits<double>::infinity();

void require(bool sound, const char* what) {
    if (!sound) throw std::invalid_argument(what);
}

bool none_below_zero(double value) { return value >= 0.0 && std::isfinite(value); }

void require_sound(const Chain& chain, const Drawing& drawing) {
    require(drawing.samples >= 1 && drawing.samples <= most_samples, "a chain is drawn once to ten million times");
    require(!chain.links.empty(), "a chain needs a link");
    for (const CommonFactor& factor : chain.factors)
        require(none_below_zero(factor.variation), "a common factor's variation is 0 or more");
    for (const ChainLink& link : chain.links) {
        require(link.mean_strength > 0.0 && std::isfinite(link.mean_strength), "a link's mean strength is above 0");
        require(none_below_zero(link.variation), "a link's variation is 0 or more");
        require(none_below_zero(link.demand_per_load) && none_below_zero(link.constant_demand),
                "a link's demand is 0 or more");
        for (const SharedFactor& shared : link.shared)
            require(shared.factor < chain.factors.size() && std::isfinite(shared.power),
                    "a link shares in a factor that the chain has");
    }
}

/// A chain's strengths, sample by sample.
class Strengths {
  public:
    explicit Strengths(const Chain& chain) : chain_(chain), logarithms_(chain.factors.size()) {
        for (const CommonFactor& factor : chain.factors) factors_.push_back(lognormal(1.0, factor.variation));
        for (const ChainLink& link : chain.links) own_.push_back(lognormal(link.mean_strength, link.variation));
    }

    void draw(RandomNumbers& random, std::span<double> strengths) {
        for (std::size_t factor = 0; factor < factors_.size(); ++factor)
            logarithms_[factor] = factors_[factor].log_mean + factors_[factor].log_deviation * random.normal();
        for (std::size_t link = 0; link < own_.size(); ++link) strengths[link] = strength(link, random.normal());
    }

  private:
    [[nodiscard]] double strength(std::size_t number, double normal) const {
        const ChainLink& link = chain_.links[number];
        double common = 0.0;
        for (const SharedFactor& shared : link.shared) common += shared.power * logarithms_[shared.factor];
        if (link.law == Law::normal)
            return std::max(link.mean_strength * (1.0 + link.variation * normal), 0.0) * std::exp(common);
        return std::exp(own_[number].log_mean + own_[number].log_deviation * normal + common);
    }

    const Chain& chain_;
    std::vector<Lognormal> factors_, own_;
    std::vector<double> logarithms_;  ///< of this sample's common factors
};

double breaking_load(const ChainLink& link, double strength) {
    const double left = strength - link.constant_demand;
    if (left < 0.0) return 0.0;
    return link.demand_per_load > 0.0 ? left / link.demand_per_load : never;
}

FirstBreak first_of(std::span<const double> loads) {
    const auto least = std::min_element(loads.begin(), loads.end());
    return {*least, static_cast<std::uint32_t>(least - loads.begin())};
}

BreakingLoads summary(std::vector<FirstBreak> breaks, std::size_t links) {
    const double count = static_cast<double>(breaks.size());
    double sum = 0.0, squares = 0.0;
    for (const FirstBreak& one : breaks) sum += one.load;
    const double mean = sum / count;
    for (const FirstBreak& one : breaks) squares += (one.load - mean) * (one.load - mean);
    std::stable_sort(breaks.begin(), breaks.end(),
                     [](const FirstBreak& one, const FirstBreak& other) { return one.load < other.load; });
    return {std::move(breaks), links, mean, count > 1.0 ? std::sqrt(squares / (count - 1.0)) : 0.0};
}

}  // namespace

BreakingLoads draw(const Chain& chain, const Drawing& drawing, const LoadsThatBreak& find) {
    require_sound(chain, drawing);
    RandomNumbers random(drawing.seed);
    Strengths drawn(chain);
    std::vector<double> strengths(chain.links.size()), loads(chain.links.size());
    std::vector<FirstBreak> breaks;
    breaks.reserve(drawing.samples);
    for (std::uint64_t sample = 0; sample < drawing.samples; ++sample) {
        drawn.draw(random, strengths);
        find(strengths, loads);
        breaks.push_back(first_of(loads));
        require(none_below_zero(breaks.back().load), "every sample of a chain breaks at a load of 0 or more");
    }
    return summary(std::move(breaks), chain.links.size());
}

BreakingLoads draw(const Chain& chain, const Drawing& drawing) {
    require(std::any_of(chain.links.begin(), chain.links.end(),
                        [](const ChainLink& link) { return link.demand_per_load > 0.0; }),
            "a chain needs a link that the load can break");
    return draw(chain, drawing, [&](std::span<const double> strengths, std::span<double> loads) {
        for (std::size_t link = 0; link < loads.size(); ++link)
            loads[link] = breaking_load(chain.links[link], strengths[link]);
    });
}

}  // namespace toehold::mechanics
