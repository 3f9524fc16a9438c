#include "demand/plate_on_deck/plate_preview.h"

#include "demand/loads/load_cases.h"
#include "demand/plate_on_deck/rigid_shape.h"
#include "demand/preview_pushes.h"

#include <algorithm>
#include <stdexcept>

namespace toehold::demand {

PlatePreview::PlatePreview(const catalog::Resolved& of)
    : resolved_(of),
      cases_(load_cases(resolved_.detail)),
      counting_cases_(cases_that_count(cases_, model::preloaded(resolved_.detail))),
      flexible_asked_for_(model::plate_behaviour(resolved_.detail.basis) == model::PlateBehaviour::flexible) {
    solver_.emplace(resolved_, Preparation{.flexible_framing = false, .always_flexible = true});
}

State PlatePreview::state(std::size_t load_case, double direction_rad) {
    const Push push{acting_load(cases_.at(load_case), direction_rad), {}, direction_rad};
    if (flexible_asked_for_ || !solver_->flexible()) return solver_->solve(push);
    try {
        return solver_->solve(push);
    } catch (const std::runtime_error&) {
        // Nobody asked for the bending plate: without it from here on.
        solver_.emplace(resolved_, Preparation{.flexible_framing = false, .always_flexible = false});
        return solver_->solve(push);
    }
}

double PlatePreview::asked_for_lb(const State& state, std::size_t anchor) const {
    return flexible_asked_for_ ? state.anchors[anchor].tension_lb : state.rigid_tension_lb[anchor];
}

mechanics::HandTension PlatePreview::hand(const LoadCase& of, double direction_rad) const {
    const ActingLoad load = acting_load(of, direction_rad);
    return mechanics::hand_tension(solver_->anchor_points(), outline(on_deck(resolved_.detail).plate),
                                   load.push_lb * load.height_in, direction_rad, mechanics::LeverArm::to_edge);
}

void PlatePreview::add_pushes(PolarEnvelope& polar, std::size_t load_case, std::size_t count) {
    for (const RoseStep step : rose_steps(cases_[load_case], count)) {
        const State found = state(load_case, step.direction_rad);
        for (std::size_t i = 0; i < found.anchors.size(); ++i) {
            double& rigid = polar.rigid_lb[i][step.index];
            double& flexible = polar.flexible_lb[i][step.index];
            rigid = std::max(rigid, found.rigid_tension_lb[i]);
            flexible = std::max(flexible, found.anchors[i].tension_lb);
            keep_largest(polar, asked_for_lb(found, i), i, step.direction_rad);
        }
    }
}

void PlatePreview::add_hand(PolarEnvelope& polar, std::size_t load_case) const {
    for (const RoseStep step : rose_steps(cases_[load_case], fewest_rose_directions)) {
        const mechanics::HandTension tensions = hand(cases_[load_case], step.direction_rad);
        for (std::size_t i = 0; i < polar.hand_lb.size(); ++i)
            polar.hand_lb[i] = std::max(polar.hand_lb[i], tensions.tension_lb[i]);
    }
}

PolarEnvelope PlatePreview::polar_envelope(int directions) {
    if (directions < fewest_rose_directions)
        throw std::invalid_argument("a rose of tensions needs at least four directions");
    const auto count = static_cast<std::size_t>(directions);
    const std::size_t anchors = resolved_.anchors.size();
    PolarEnvelope polar;
    polar.rigid_lb.assign(anchors, std::vector<double>(count, 0.0));
    polar.flexible_lb = polar.rigid_lb;
    polar.hand_lb.assign(anchors, 0.0);
    polar.largest_direction_rad = cases_.at(counting_cases_.at(0)).directions_rad.front();
    for (const std::size_t load_case : counting_cases_) {
        add_pushes(polar, load_case, count);
        add_hand(polar, load_case);
    }
    if (!solver_->flexible()) polar.flexible_lb.clear();
    return polar;
}

std::size_t PlatePreview::worst_case(double direction_rad) {
    std::size_t worst = counting_cases_.at(0);
    double largest = -1.0;
    if (counting_cases_.size() == 1) return worst;
    for (const std::size_t load_case : counting_cases_) {
        const State found = state(load_case, direction_rad);
        for (std::size_t i = 0; i < found.anchors.size(); ++i) {
            if (asked_for_lb(found, i) <= largest) continue;
            largest = asked_for_lb(found, i);
            worst = load_case;
        }
    }
    return worst;
}

PushResult PlatePreview::push(std::size_t load_case, double direction_rad) {
    const State found = state(load_case, direction_rad);
    PushResult result;
    result.load_case = load_case;
    result.direction_rad = direction_rad;
    result.rigid = found.anchors;
    for (std::size_t i = 0; i < result.rigid.size(); ++i) result.rigid[i].tension_lb = found.rigid_tension_lb[i];
    result.rigid_field = rigid_shape(resolved_, solver_->bed(), *solver_->last_rigid());
    result.rigid_field.direction_rad = direction_rad;
    if (solver_->flexible()) {
        result.flexible = found.anchors;
        DeflectedShape bent = solver_->field({acting_load(cases_[load_case], direction_rad), {}, direction_rad});
        if (!bent.nodes.empty()) result.flexible_field = std::move(bent);
    }
    result.hand_lb.assign(result.rigid.size(), std::nullopt);
    if (const std::optional<double> square = square_direction(direction_rad)) {
        const mechanics::HandTension tensions = hand(cases_[load_case], *square);
        if (tensions.lever_arm_in > 0.0)
            std::copy(tensions.tension_lb.begin(), tensions.tension_lb.end(), result.hand_lb.begin());
    }
    return result;
}

}  // namespace toehold::demand
