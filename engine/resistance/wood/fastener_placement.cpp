#include "resistance/wood/fastener_placement.h"

#include "resistance/wood/dowel_properties.h"
#include "units/limit.h"

#include <algorithm>

namespace toehold::resistance {
namespace {

double reduced(double actual_in, double least_in, double full_in) {
    if (!units::at_least(actual_in, least_in)) return 0.0;
    return std::min(1.0, actual_in / full_in);
}

}  // namespace

double edge_loaded_along_in(double diameter_in, double length_in_wood_in, double rows_apart_in) {
    const double least_in = 1.5 * diameter_in;
    return !units::at_most(length_in_wood_in, 6.0 * diameter_in) ? std::max(least_in, 0.5 * rows_apart_in) : least_in;
}

double rows_loaded_across_in(double diameter_in, double length_in_wood_in) {
    return std::clamp((5.0 * length_in_wood_in + 10.0 * diameter_in) / 8.0, 2.5 * diameter_in, 5.0 * diameter_in);
}

double end_distance_factor(double end_in, double diameter_in, EndLoading loading) {
    if (!units::at_least(diameter_in, thick_dowel_in)) return 1.0;
    if (loading == EndLoading::toward) return reduced(end_in, 3.5 * diameter_in, 7.0 * diameter_in);
    return reduced(end_in, 2.0 * diameter_in, 4.0 * diameter_in);
}

double spacing_factor(double spacing_in, double diameter_in) {
    if (!units::at_least(diameter_in, thick_dowel_in)) return 1.0;
    return reduced(spacing_in, 3.0 * diameter_in, 4.0 * diameter_in);
}

}  // namespace toehold::resistance
