#include "demand/loads/code_loads.h"

#include "units/length.h"

#include <numbers>

namespace toehold::demand {
namespace {

bool suffices(model::Directions stated, model::GuardDirections asked_for) {
    switch (asked_for) {
        case model::GuardDirections::any:
            return stated == model::Directions::all_round;
        case model::GuardDirections::not_along:
            return stated != model::Directions::outward;
        case model::GuardDirections::outward_and_down:
            break;
    }
    return true;
}

}  // namespace

std::optional<double> code_line_lb_per_ft(const model::Guard& guard) {
    switch (guard.occupancy) {
        case model::Occupancy::one_and_two_family:
            return std::nullopt;
        case model::Occupancy::limited:
            return 20.0;
        case model::Occupancy::other:
            break;
    }
    return 50.0;
}

std::optional<double> code_line_lb(const model::BaseDetail& detail) {
    const std::optional<double> line = code_line_lb_per_ft(detail.guard);
    const std::optional<double> length_in = model::tributary_length_in(detail.guard, detail.loads);
    if (!line || !length_in) return std::nullopt;
    return *line * *length_in / units::inches_per_foot;
}

model::Directions code_directions(const model::BaseDetail& detail) {
    const bool may_do_without = detail.guard.handrail == false;
    const model::GuardDirections asked_for =
        may_do_without ? model::directions_without_handrail(model::building_code(detail.basis))
                       : model::GuardDirections::any;
    return suffices(detail.loads.directions, asked_for) ? detail.loads.directions : model::Directions::all_round;
}

std::vector<double> directions_rad(model::Directions directions) {
    constexpr double outward = 0.5 * std::numbers::pi;
    if (directions == model::Directions::outward) return {outward};
    if (directions == model::Directions::across) return {outward, 3.0 * outward};
    constexpr int count = 72;
    std::vector<double> all;
    all.reserve(count);
    for (int index = 0; index < count; ++index) all.push_back(2.0 * std::numbers::pi * index / count);
    return all;
}

}  // namespace toehold::demand
