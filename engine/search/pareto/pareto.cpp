#include "search/pareto/pareto.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace toehold::search {
namespace {

/// A score as it is shown, the cost first: less is better in each.
using Shown = std::array<double, 5>;

double hundredths(double value) { return std::isfinite(value) ? std::round(100.0 * value) : value; }

Shown shown(const Score& score) {
    return {hundredths(score.steel_cost), hundredths(score.weight_lb), static_cast<double>(score.pieces),
            static_cast<double>(score.anchors), hundredths(score.governing_ratio)};
}

bool as_good(const Shown& one, const Shown& other) {
    for (std::size_t at = 0; at < one.size(); ++at) {
        if (one[at] > other[at]) return false;
    }
    return true;
}

}  // namespace

bool beats(const Score& one, const Score& other) {
    const Shown first = shown(one), second = shown(other);
    return as_good(first, second) && first != second;
}

std::vector<std::size_t> front_of(const std::vector<Result>& results) {
    std::vector<Shown> all;
    all.reserve(results.size());
    for (const Result& result : results) all.push_back(shown(result.score));
    std::vector<std::size_t> order(results.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return all[a] != all[b] ? all[a] < all[b] : results[a].candidate < results[b].candidate;
    });
    // Whatever beats a result, or equals it with a lower number, comes before it in this order.
    std::vector<std::size_t> front;
    for (const std::size_t place : order) {
        const bool beaten = std::any_of(front.begin(), front.end(),
                                        [&](std::size_t before) { return as_good(all[before], all[place]); });
        if (!beaten) front.push_back(place);
    }
    return front;
}

}  // namespace toehold::search
