#include "resistance/ultimate/load_test.h"

#include <algorithm>
#include <stdexcept>

namespace toehold::resistance::ultimate {
namespace {

void require_load(double load_lb) {
    if (!(load_lb > 0.0)) throw std::invalid_argument("a load of a load test is above 0");
}

}  // namespace

double recovered_share(double largest_in, double left_in) {
    if (!(largest_in > 0.0 && left_in >= 0.0 && left_in <= largest_in))
        throw std::invalid_argument("a recovery needs a movement above 0 and no more than that left of it");
    return 1.0 - left_in / largest_in;
}

bool recovers(double largest_in, double left_in) {
    constexpr double rounding = 1e-9;
    return recovered_share(largest_in, left_in) >= least_recovered - rounding;
}

double reload_lb(double design_lb, std::optional<double> at_movement_limit_lb) {
    require_load(design_lb);
    if (at_movement_limit_lb) require_load(*at_movement_limit_lb);
    return carried_over_design * std::min(design_lb, at_movement_limit_lb.value_or(design_lb));
}

double allowable_lb(const TestedLoads& loads) {
    require_load(loads.largest_applied_lb);
    double allowable = loads.largest_applied_lb / carried_over_design;
    if (loads.breaking_lb) {
        require_load(*loads.breaking_lb);
        allowable = std::min(allowable, *loads.breaking_lb / carried_over_design);
    }
    if (loads.at_movement_limit_lb) {
        require_load(*loads.at_movement_limit_lb);
        allowable = std::min(allowable, *loads.at_movement_limit_lb);
    }
    return allowable;
}

}  // namespace toehold::resistance::ultimate
