#include "demand/preview_pushes.h"

#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

constexpr double full_turn = 2.0 * std::numbers::pi;
constexpr double quarter_turn = 0.5 * std::numbers::pi;

}  // namespace

std::vector<std::size_t> cases_that_count(const std::vector<LoadCase>& cases, bool preloaded) {
    std::vector<std::size_t> count;
    std::optional<std::size_t> largest;
    const auto moment = [&cases](std::size_t i) { return cases[i].push_lb * cases[i].height_in; };
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const bool upright = cases[i].push_lb == 0.0 && cases[i].wind_lb == 0.0;
        if (cases[i].covered_by || upright) continue;
        if (preloaded || cases[i].down_lb != 0.0 || cases[i].wind_lb != 0.0) {
            count.push_back(i);
        } else if (!largest || moment(i) > moment(*largest)) {
            largest = i;
        }
    }
    if (largest) count.push_back(*largest);
    return count;
}

std::optional<double> square_direction(double direction_rad) {
    constexpr double nearly_square = 0.5 * std::numbers::pi / 180.0;
    const double square = std::round(direction_rad / quarter_turn) * quarter_turn;
    if (std::abs(direction_rad - square) > nearly_square) return std::nullopt;
    return square;
}

std::vector<RoseStep> rose_steps(const LoadCase& load, std::size_t count) {
    std::vector<RoseStep> all;
    if (load.directions_rad.size() <= 2) {
        for (const double direction : load.directions_rad) {
            const double nearest = std::round(direction / full_turn * static_cast<double>(count));
            all.push_back({static_cast<std::size_t>(nearest) % count, direction});
        }
        return all;
    }
    for (std::size_t i = 0; i < count; ++i)
        all.push_back({i, full_turn * static_cast<double>(i) / static_cast<double>(count)});
    return all;
}

void keep_largest(PolarEnvelope& polar, double tension_lb, std::size_t anchor, double direction_rad) {
    if (tension_lb <= polar.largest_lb) return;
    polar.largest_lb = tension_lb;
    polar.largest_anchor = anchor;
    polar.largest_direction_rad = direction_rad;
}

}  // namespace toehold::demand
