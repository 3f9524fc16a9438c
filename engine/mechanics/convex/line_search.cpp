#include "mechanics/convex/line_search.h"

#include <cmath>

namespace toehold::mechanics {
namespace {

struct LinePlace {
    double step = 0.0, slope = 0.0;
};

/// Regula falsi with the Illinois weighting (Dowell and Jarratt, BIT 11, 1971), until the slope is below `enough`.
double level_between(const SlopeAlong& slope_along, LinePlace low, LinePlace high, double enough, int most_places) {
    for (int place = 0; place < most_places; ++place) {
        const double step = (low.step * high.slope - high.step * low.slope) / (high.slope - low.slope);
        const LinePlace middle{step, slope_along(step)};
        if (std::abs(middle.slope) <= enough) return step;
        if ((middle.slope < 0.0) != (high.slope < 0.0)) {
            low = high;
        } else {
            low.slope /= 2.0;
        }
        high = middle;
    }
    return high.step;
}

}  // namespace

double step_down(const SlopeAlong& slope_along, double slope_at_start, int most_places) {
    constexpr double kept_as_it_is = 0.5, searched_to = 0.1;
    LinePlace low{0.0, slope_at_start}, high{1.0, slope_along(1.0)};
    if (std::abs(high.slope) <= kept_as_it_is * std::abs(slope_at_start)) return high.step;
    for (int doubling = 0; high.slope < 0.0; ++doubling) {
        if (doubling == most_places) return high.step;
        low = high;
        high = {2.0 * high.step, slope_along(2.0 * high.step)};
    }
    return level_between(slope_along, low, high, searched_to * std::abs(slope_at_start), most_places);
}

}  // namespace toehold::mechanics
