#include "editing/parts/measures.h"

#include <algorithm>
#include <cmath>

namespace toehold::editing {
namespace {

constexpr double largest_measure_in = 1200.0;  ///< of any detail, as `model::validate` has it

}  // namespace

double bounded(double value_in) {
    if (!std::isfinite(value_in)) return 0.0;
    return std::clamp(value_in, -largest_measure_in, largest_measure_in);
}

double at_least(double value_in, double least_in) {
    if (!std::isfinite(value_in)) return least_in;
    return std::clamp(value_in, least_in, std::max(least_in, largest_measure_in));
}

model::Position bounded(model::Position at) { return {bounded(at.x_in), bounded(at.y_in)}; }

bool is_finite(drawing::Point at) { return std::isfinite(at.x) && std::isfinite(at.y); }

double slot_angle(double angle_deg) {
    if (!std::isfinite(angle_deg)) return 0.0;
    return std::abs(angle_deg) <= 360.0 ? angle_deg : std::remainder(angle_deg, 180.0);
}

double signed_area(const std::vector<model::Position>& corners) {
    double twice = 0.0;
    for (std::size_t index = 0; index < corners.size(); ++index) {
        const model::Position a = corners[index], b = corners[(index + 1) % corners.size()];
        twice += a.x_in * b.y_in - b.x_in * a.y_in;
    }
    return 0.5 * twice;
}

}  // namespace toehold::editing
