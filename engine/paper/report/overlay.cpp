#include "paper/report/overlay.h"

#include "drawing/annotation/anchor_marks.h"
#include "drawing/annotation/side_forces.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::paper::report {
namespace {

constexpr std::size_t steps_of_a_turn = 72;

drawing::AnchorMark mark_of(const review::Review& review, const demand::State& state, std::size_t anchor) {
    const demand::AnchorForce& force = state.anchors.at(anchor);
    const drawing::ShownForce shown{force.tension_lb, force.shear_x_lb, force.shear_y_lb,
                                    review.demand->anchors.at(anchor).tension_lb};
    return drawing::anchor_mark(review.resolved.anchors.at(anchor).id, shown, &review);
}

/// Which of the steps a direction is; absent for one between them, which the search for a maximum adds.
std::optional<std::size_t> step_of(double direction_rad) {
    constexpr double same = 1e-6;
    const double steps = direction_rad / (2.0 * std::numbers::pi) * static_cast<double>(steps_of_a_turn);
    const double whole = std::round(steps);
    if (std::abs(steps - whole) > same) return std::nullopt;
    const long step = std::lround(whole) % static_cast<long>(steps_of_a_turn);
    return static_cast<std::size_t>(step < 0 ? step + static_cast<long>(steps_of_a_turn) : step);
}

}  // namespace

const demand::State* governing_state(const review::Review& review) {
    if (!review.demand || review.demand->anchors.empty()) return nullptr;
    const auto& anchors = review.demand->anchors;
    const auto worst = std::max_element(anchors.begin(), anchors.end(),
                                        [](const auto& a, const auto& b) { return a.tension_lb < b.tension_lb; });
    return &review.demand->states.at(worst->state);
}

drawing::Overlay overlay(const review::Review& review, const format::Locale& locale) {
    drawing::Overlay overlay;
    overlay.locale = locale;
    overlay.as_computed = false;  // they are of the state that pulls most
    const demand::State* const state = governing_state(review);
    if (state == nullptr) return overlay;
    const demand::ActingLoad load = demand::acting_load(*review.demand, *state);
    overlay.push = drawing::PushShown{state->direction_rad, load.push_lb, load.down_lb, load.height_in, true};
    for (std::size_t anchor = 0; anchor < review.resolved.anchors.size(); ++anchor)
        overlay.anchors.push_back(mark_of(review, *state, anchor));
    overlay.field = review.demand->field;
    drawing::show_side_forces(overlay, *review.demand, *state);
    return overlay;
}

std::vector<drawing::PolarCurve> polar_curves(const review::Review& review) {
    std::vector<drawing::PolarCurve> curves;
    if (!review.demand) return curves;
    for (const catalog::Anchor& anchor : review.resolved.anchors)
        curves.push_back({model::anchor_part(anchor.id), std::vector<double>(steps_of_a_turn, 0.0)});
    for (const demand::State& state : review.demand->states) {
        const bool pushed = demand::acting_load(*review.demand, state).push_lb > 0.0;  // not straight down or up
        if (!pushed || !review.demand->scenarios.at(state.scenario).nominal()) continue;
        const std::optional<std::size_t> step = step_of(state.direction_rad);
        if (!step) continue;
        for (std::size_t anchor = 0; anchor < curves.size(); ++anchor) {
            double& largest = curves[anchor].tension_lb[*step];
            largest = std::max(largest, state.anchors.at(anchor).tension_lb);
        }
    }
    return curves;
}

}  // namespace toehold::paper::report
