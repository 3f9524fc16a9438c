#include "demand/preview.h"

#include "demand/load_cases.h"
#include "demand/preview_rigid_field.h"
#include "demand/solver.h"
#include "mechanics/rigid_plate/anchor_group.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace toehold::demand {
namespace {

constexpr double full_turn = 2.0 * std::numbers::pi;
constexpr double quarter_turn = 0.5 * std::numbers::pi;

/// What no other load case outdoes in any direction. Forces grow in proportion to a push that nothing accompanies, so
/// of those only the one with the largest moment counts; a preload or a vertical force ends that proportion.
std::vector<std::size_t> cases_that_count(const std::vector<LoadCase>& cases, bool preloaded) {
    std::vector<std::size_t> count;
    std::optional<std::size_t> largest;
    const auto moment = [&cases](std::size_t i) { return cases[i].push_lb * cases[i].height_in; };
    for (std::size_t i = 0; i < cases.size(); ++i) {
        if (preloaded || cases[i].down_lb != 0.0) {
            count.push_back(i);
        } else if (!largest || moment(i) > moment(*largest)) {
            largest = i;
        }
    }
    if (largest) count.push_back(*largest);
    return count;
}

/// Square to the plate's sides; absent for a push aslant.
std::optional<double> square_direction(double direction_rad) {
    constexpr double nearly_square = 0.5 * std::numbers::pi / 180.0;
    const double square = std::round(direction_rad / quarter_turn) * quarter_turn;
    if (std::abs(direction_rad - square) > nearly_square) return std::nullopt;
    return square;
}

}  // namespace

struct Preview::Prepared {
    catalog::Resolved resolved;
    std::vector<LoadCase> cases;
    std::vector<std::size_t> counting_cases;
    bool flexible_asked_for;
    std::optional<Solver> solver;

    explicit Prepared(const catalog::Resolved& of)
        : resolved(of),
          cases(load_cases(resolved.detail)),
          counting_cases(cases_that_count(cases, model::preloaded(resolved.detail))),
          flexible_asked_for(model::plate_behaviour(resolved.detail.basis) == model::PlateBehaviour::flexible) {
        solver.emplace(resolved, Preparation{.framing_gives = false, .always_flexible = true});
    }

    /// Forces of every anchor in a state are the flexible plate's where there is one.
    State state(std::size_t load_case, double direction_rad) {
        const Push push{cases.at(load_case), {}, direction_rad};
        if (flexible_asked_for || !solver->flexible()) return solver->solve(push);
        try {
            return solver->solve(push);
        } catch (const std::runtime_error&) {
            // Nobody asked for the bending plate: without it from here on.
            solver.emplace(resolved, Preparation{.framing_gives = false, .always_flexible = false});
            return solver->solve(push);
        }
    }

    [[nodiscard]] double asked_for_lb(const State& state, std::size_t anchor) const {
        return flexible_asked_for ? state.anchors[anchor].tension_lb : state.rigid_tension_lb[anchor];
    }

    [[nodiscard]] mechanics::HandTension hand(const LoadCase& load, double direction_rad) const {
        return mechanics::hand_tension(solver->anchor_points(), outline(on_deck(resolved.detail).plate),
                                       load.push_lb * load.height_in, direction_rad, mechanics::LeverArm::to_edge);
    }
};

Preview::Preview(const catalog::Resolved& resolved) : prepared_(std::make_unique<Prepared>(resolved)) {}
Preview::~Preview() = default;
Preview::Preview(Preview&&) noexcept = default;
Preview& Preview::operator=(Preview&&) noexcept = default;

const std::vector<LoadCase>& Preview::cases() const { return prepared_->cases; }

namespace {

/// A step of the rose and the direction it stands for.
struct Step {
    std::size_t index = 0;
    double direction_rad = 0.0;
};

std::vector<Step> steps(const model::Loads& loads, std::size_t count) {
    if (loads.directions == model::Directions::outward) {
        const auto nearest = static_cast<std::size_t>(std::lround(static_cast<double>(count) / 4.0));
        return {{nearest, quarter_turn}};
    }
    std::vector<Step> all;
    for (std::size_t i = 0; i < count; ++i)
        all.push_back({i, full_turn * static_cast<double>(i) / static_cast<double>(count)});
    return all;
}

void keep_largest(Petals& petals, double tension_lb, std::size_t anchor, double direction_rad) {
    if (tension_lb <= petals.largest_lb) return;
    petals.largest_lb = tension_lb;
    petals.largest_anchor = anchor;
    petals.largest_direction_rad = direction_rad;
}

}  // namespace

Petals Preview::petals(int directions) {
    constexpr int fewest = 4;
    if (directions < fewest) throw std::invalid_argument("a rose of tensions needs at least four directions");
    Prepared& p = *prepared_;
    const auto count = static_cast<std::size_t>(directions);
    const std::size_t anchors = p.resolved.anchors.size();
    Petals petals;
    petals.rigid_lb.assign(anchors, std::vector<double>(count, 0.0));
    petals.flexible_lb = petals.rigid_lb;
    petals.hand_lb.assign(anchors, 0.0);
    petals.largest_direction_rad =
        p.resolved.detail.loads.directions == model::Directions::outward ? quarter_turn : 0.0;
    for (const std::size_t load_case : p.counting_cases) {
        for (const Step step : steps(p.resolved.detail.loads, count)) {
            const State state = p.state(load_case, step.direction_rad);
            for (std::size_t i = 0; i < anchors; ++i) {
                double& rigid = petals.rigid_lb[i][step.index];
                double& flexible = petals.flexible_lb[i][step.index];
                rigid = std::max(rigid, state.rigid_tension_lb[i]);
                flexible = std::max(flexible, state.anchors[i].tension_lb);
                keep_largest(petals, p.asked_for_lb(state, i), i, step.direction_rad);
            }
        }
        for (const Step step : steps(p.resolved.detail.loads, fewest)) {
            const mechanics::HandTension hand = p.hand(p.cases[load_case], step.direction_rad);
            for (std::size_t i = 0; i < anchors; ++i)
                petals.hand_lb[i] = std::max(petals.hand_lb[i], hand.tension_lb[i]);
        }
    }
    if (!p.solver->flexible()) petals.flexible_lb.clear();
    return petals;
}

std::size_t Preview::worst_case(double direction_rad) {
    Prepared& p = *prepared_;
    std::size_t worst = p.counting_cases.at(0);
    double largest = -1.0;
    if (p.counting_cases.size() == 1) return worst;
    for (const std::size_t load_case : p.counting_cases) {
        const State state = p.state(load_case, direction_rad);
        for (std::size_t i = 0; i < state.anchors.size(); ++i) {
            if (p.asked_for_lb(state, i) <= largest) continue;
            largest = p.asked_for_lb(state, i);
            worst = load_case;
        }
    }
    return worst;
}

PushResult Preview::push(std::size_t load_case, double direction_rad) {
    Prepared& p = *prepared_;
    const State state = p.state(load_case, direction_rad);
    PushResult result;
    result.load_case = load_case;
    result.direction_rad = direction_rad;
    result.rigid = state.anchors;
    for (std::size_t i = 0; i < result.rigid.size(); ++i) result.rigid[i].tension_lb = state.rigid_tension_lb[i];
    result.rigid_field = rigid_field(p.resolved, p.solver->bed(), *p.solver->last_rigid());
    result.rigid_field.direction_rad = direction_rad;
    if (p.solver->flexible()) {
        result.flexible = state.anchors;
        PlateField bent = p.solver->field({p.cases[load_case], {}, direction_rad});
        if (!bent.nodes.empty()) result.flexible_field = std::move(bent);
    }
    result.hand_lb.assign(result.rigid.size(), std::nullopt);
    if (const std::optional<double> square = square_direction(direction_rad)) {
        const mechanics::HandTension hand = p.hand(p.cases[load_case], *square);
        if (hand.lever_arm_in > 0.0) std::copy(hand.tension_lb.begin(), hand.tension_lb.end(), result.hand_lb.begin());
    }
    return result;
}

}  // namespace toehold::demand
