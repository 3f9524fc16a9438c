#include "study/proof_load/movement.h"

#include "catalog/resolve.h"
#include "checks/post/post_stiffness.h"
#include "demand/framing/find_framing.h"
#include "demand/loads/code_loads.h"
#include "demand/loads/load_cases.h"
#include "demand/mount.h"
#include "demand/peak.h"
#include "demand/stiffness_range.h"
#include "model/mount.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numbers>
#include <stdexcept>
#include <utility>

namespace toehold::study {
namespace {

using demand::Demand;
using demand::RangeEnd;
using format::phrase;

constexpr double outward_rad = 0.5 * std::numbers::pi;

/// An outward push at both ends of the range and at its center, soft first.
Demand three_ends(const catalog::Resolved& resolved, demand::MountSolver& solver) {
    Demand demand;
    demand.cases = {demand::proof_case(resolved.detail).value()};
    demand.supports = solver.supports();
    for (const RangeEnd end : {RangeEnd::soft, RangeEnd::central, RangeEnd::stiff}) {
        demand.scenarios.push_back(demand::stiffness_scenario(resolved, end, end));
        demand.states.push_back(demand::solve_state(demand, solver, 0, demand.scenarios.size() - 1, outward_rad));
    }
    demand.framing = demand::find_framing(resolved, demand);
    return demand;
}

MovementParts parts_of(const Demand& demand, std::size_t end, double post, bool framing_gives) {
    const demand::LoadCase& push = demand.cases.front();
    MovementParts parts;
    parts.post = post;
    parts.base = std::abs(demand.states[end].rotation_rad) * push.height_in / push.push_lb;
    if (framing_gives && demand.framing && !demand.framing->states.empty())
        parts.framing = std::abs(demand.framing->states.at(end).top_in) / push.push_lb;
    return parts;
}

ComputedMovement movement_of(const catalog::Resolved& resolved, const checks::PostStiffness& post) {
    const std::unique_ptr<demand::MountSolver> solver = demand::make_mount_solver(resolved, demand::Sampling::probe());
    const Demand demand = three_ends(resolved, *solver);
    ComputedMovement movement;
    movement.height_in = demand.cases.front().height_in;
    const double bent = checks::bent_in(post, 1.0, movement.height_in, movement.height_in, 1.0);
    movement.play_in = post.play_rad * movement.height_in;
    movement.soft = parts_of(demand, 0, bent, true);
    movement.central = parts_of(demand, 1, bent, true);
    movement.stiff = parts_of(demand, 2, bent, false);
    movement.framing_lacks = demand::framing_lacks(demand);
    return movement;
}

}  // namespace

double ComputedMovement::rotational_stiffness(const MovementParts& parts) const {
    return height_in * height_in / (parts.base + parts.framing);
}

ComputedMovementOutcome computed_movement(const catalog::Resolved& resolved) {
    if (model::preloaded(resolved.detail))
        return {std::nullopt,
                phrase("An anchor has a stated preload, so that the movement does not grow with the push. "
                       "Leave out `preload`; wood lets go of it.")};
    const std::optional<checks::PostStiffness> post = checks::post_stiffness(resolved);
    if (!post) return {std::nullopt, phrase("Post grade is not specified.")};
    catalog::Resolved pushed = resolved;
    pushed.detail.loads.proof_push_lb = demand::code_concentrated_lb;
    try {
        return {movement_of(pushed, *post), {}};
    } catch (const demand::NoDemand& fault) {
        return {std::nullopt, fault.why};
    }
}

MeasuredOutcome fit(std::vector<mechanics::Reading> readings) {
    constexpr std::size_t enough_for_play = 3;
    Measured measured{std::move(readings), {}, false};
    measured.with_play = measured.readings.size() >= enough_for_play;
    try {
        measured.line = measured.with_play ? mechanics::line_with_play(measured.readings)
                                           : mechanics::line_through_origin(measured.readings);
    } catch (const std::invalid_argument&) {
        return {
            std::nullopt,
            phrase("no stiffness fits the readings: the push must grow with the movement, and the guard must move")};
    }
    if (!(measured.line.stiffness > 0.0))
        return {std::nullopt, phrase("no stiffness fits the readings: one needs a push above 0")};
    return {std::move(measured), {}};
}

Compared compare(const ComputedMovement& computed, Measured measured) {
    Compared compared;
    const double per_lb = 1.0 / measured.line.stiffness;
    const double soft = computed.soft.total(), stiff = computed.stiff.total();
    if (per_lb > soft) {
        compared.agreement = Agreement::softer;
        compared.times = per_lb / soft;
    } else if (per_lb < stiff) {
        compared.agreement = Agreement::stiffer;
        compared.times = per_lb / stiff;
    }
    const double of_base = per_lb - computed.central.post;
    constexpr double rounding = 1e-9;
    if (of_base > rounding * per_lb) compared.rotational_stiffness = computed.height_in * computed.height_in / of_base;
    compared.measured = std::move(measured);
    return compared;
}

}  // namespace toehold::study
