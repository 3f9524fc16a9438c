#include "demand/line/base_stiffness.h"

#include "demand/framing/find_framing.h"
#include "demand/loads/code_loads.h"
#include "demand/loads/load_cases.h"
#include "demand/mount.h"
#include "demand/peak.h"
#include "demand/stiffness_range.h"
#include "model/mount.h"

#include <array>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

using format::phrase;

enum End : std::size_t { soft_end, central_end, stiff_end };

/// In the order of BaseStiffness: outward, inward, right, left.
constexpr std::array<double, 4> ways_rad{0.5 * std::numbers::pi, 1.5 * std::numbers::pi, 0.0, std::numbers::pi};

/// Tightened anchors hold a base stiffer under a small push than under the whole one. A post that shares meets at least
/// about this part of it.
constexpr double least_part = 0.25;

LoadCase push_of(const catalog::Resolved& resolved, double part) {
    LoadCase push;
    push.id = "guard-line";
    push.push_lb = part * live_load_factor(resolved.detail.basis) * code_concentrated_lb;
    push.height_in = model::lever_height_in(resolved.detail);
    push.directions_rad.assign(ways_rad.begin(), ways_rad.end());
    return push;
}

/// The four pushes at each end of the stiffness, in that order.
Demand solved(const catalog::Resolved& resolved, MountSolver& solver) {
    Demand demand;
    demand.cases = {push_of(resolved, 1.0), push_of(resolved, least_part)};
    for (const RangeEnd end : {RangeEnd::soft, RangeEnd::central, RangeEnd::stiff})
        demand.scenarios.push_back(stiffness_scenario(resolved, end, end));
    demand.supports = solver.supports();
    for (const std::size_t end : {soft_end, central_end, stiff_end}) {
        const std::size_t load_case = end == stiff_end ? 1 : 0;
        for (const double way : ways_rad) demand.states.push_back(solve_state(demand, solver, load_case, end, way));
    }
    demand.framing = find_framing(resolved, demand);
    return demand;
}

/// With the framing's give but at the stiff end. Its forces are those of framing that stands still, which by the
/// theorem of least work makes the base no stiffer than it is.
double turn_rad(const Demand& demand, std::size_t index, bool framing_gives) {
    const State& state = demand.states[index];
    double turn = std::abs(state.rotation_rad);
    if (framing_gives && demand.framing && !demand.framing->states.empty())
        turn += std::abs(demand.framing->states.at(index).top_in) / demand.cases[state.load_case].height_in;
    return turn;
}

BaseStiffness stiffness_at(const Demand& demand, End end) {
    std::array<double, ways_rad.size()> found{};
    for (std::size_t way = 0; way < found.size(); ++way) {
        const std::size_t index = end * ways_rad.size() + way;
        const LoadCase& push = demand.cases[demand.states[index].load_case];
        const double turn = turn_rad(demand, index, end != stiff_end);
        if (!(turn > 0.0)) throw NoDemand(phrase("the base does not turn under a push, so that it has no stiffness"));
        found[way] = push.push_lb * push.height_in / turn;
    }
    return {found[0], found[1], found[2], found[3]};
}

}  // namespace

BaseStiffnessOutcome find_base_stiffness(const catalog::Resolved& resolved, Kept* kept) {
    BaseStiffnessOutcome outcome;
    try {
        const std::unique_ptr<MountSolver> solver = make_mount_solver(resolved, Sampling::probe(), kept);
        const Demand demand = solved(resolved, *solver);
        outcome.range = BaseStiffnessRange{stiffness_at(demand, soft_end), stiffness_at(demand, central_end),
                                           stiffness_at(demand, stiff_end), framing_lacks(demand)};
    } catch (const NoDemand& fault) {
        outcome.failure = fault.why;
    }
    return outcome;
}

}  // namespace toehold::demand
