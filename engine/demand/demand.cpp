#include "demand/demand.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace toehold::demand {
namespace {

constexpr double full_turn = 2.0 * std::numbers::pi;
constexpr double one_direction_rad = 1e-9;

double within_one_turn(double direction_rad) {
    const double turned = std::fmod(direction_rad, full_turn);
    return turned < 0.0 ? turned + full_turn : turned;
}

}  // namespace

double AnchorForce::shear_lb() const { return std::hypot(shear_x_lb, shear_y_lb); }

void RotationalStiffness::add(Sample sample) {
    sample.direction_rad = within_one_turn(sample.direction_rad);
    const auto after = std::find_if(samples_.begin(), samples_.end(), [&](const Sample& other) {
        return other.direction_rad >= sample.direction_rad - one_direction_rad;
    });
    if (after != samples_.end() && after->direction_rad <= sample.direction_rad + one_direction_rad) {
        after->lb_in_per_rad = std::min(after->lb_in_per_rad, sample.lb_in_per_rad);
    } else {
        samples_.insert(after, sample);
    }
}

double RotationalStiffness::at(double direction_rad) const {
    if (samples_.empty()) throw std::logic_error("no direction was looked at");
    const double direction = within_one_turn(direction_rad);
    const auto after = std::find_if(samples_.begin(), samples_.end(),
                                    [&](const Sample& sample) { return sample.direction_rad >= direction; });
    const Sample& next = after == samples_.end() ? samples_.front() : *after;
    const Sample& before = after == samples_.begin() ? samples_.back() : *(after - 1);
    const double between = within_one_turn(next.direction_rad - before.direction_rad);
    if (between <= 0.0) return next.lb_in_per_rad;
    const double part = within_one_turn(direction - before.direction_rad) / between;
    return before.lb_in_per_rad + part * (next.lb_in_per_rad - before.lb_in_per_rad);
}

Demand::Demand() = default;
Demand::Demand(const Demand&) = default;
Demand::Demand(Demand&&) noexcept = default;
Demand& Demand::operator=(const Demand&) = default;
Demand& Demand::operator=(Demand&&) noexcept = default;
Demand::~Demand() = default;

}  // namespace toehold::demand
