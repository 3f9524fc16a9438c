#include "demand/solver.h"

#include "mechanics/shear.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

constexpr double largest_residual = 1e-8;

mechanics::PlateLoad plate_load(const LoadCase& load, double direction_rad) {
    // The push (cos, sin) at height h turns about the axis square to it: r x F with r = (0, 0, h).
    return {-load.down_lb, -load.height_in * load.push_lb * std::sin(direction_rad),
            load.height_in * load.push_lb * std::cos(direction_rad)};
}

std::string in_degrees(double direction_rad) {
    return fmt::format("{:.4g} degrees", direction_rad * 180.0 / std::numbers::pi);
}

void add_forces(State& state, const mechanics::RigidPlateSolution& solution, const mechanics::ShearShares& shear) {
    for (std::size_t index = 0; index < solution.tension_lb.size(); ++index) {
        state.anchors.push_back({solution.tension_lb[index], shear.force_lb[index].x, shear.force_lb[index].y});
    }
    for (const mechanics::PatchForce& patch : solution.patches) {
        state.supports.push_back({patch.force_lb,
                                  {patch.at.x, patch.at.y},
                                  patch.peak_psi,
                                  {patch.peak_at.x, patch.peak_at.y},
                                  patch.contact_area_in2});
    }
    state.rotation_rad = std::hypot(solution.tilt_x_rad, solution.tilt_y_rad);
}

}  // namespace

double AnchorForce::shear_lb() const { return std::hypot(shear_x_lb, shear_y_lb); }

Solver::Solver(const catalog::Resolved& resolved) : bed_(find_bed(resolved)) {
    const auto& fixed = resolved.detail.basis.stiffness;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        anchor_points_.push_back({anchor.at.x_in, anchor.at.y_in});
        anchor_stiffness_.push_back(fixed ? Stiffness{fixed->anchor_lb_per_in, "fixed by the user: " + fixed->reason}
                                          : anchor_stiffness(resolved, anchor));
    }
}

void Solver::scale(const StiffnessScenario& scenario) {
    scaled_patches_ = bed_.patches;
    for (mechanics::BedPatch& patch : scaled_patches_) patch.stiffness_psi_per_in *= scenario.bed;
    scaled_anchors_.clear();
    for (std::size_t index = 0; index < anchor_points_.size(); ++index) {
        scaled_anchors_.push_back({anchor_points_[index], anchor_stiffness_[index].value * scenario.anchors});
    }
}

void Solver::record(const mechanics::Residuals& residuals) {
    proof_.force_residual = std::max(proof_.force_residual, residuals.force);
    proof_.moment_residual = std::max(proof_.moment_residual, residuals.moment);
    proof_.complementarity_residual = std::max(proof_.complementarity_residual, residuals.complementarity);
    ++proof_.solves;
}

State Solver::solve(const std::vector<LoadCase>& cases, std::size_t load_case,
                    const std::vector<StiffnessScenario>& scenarios, std::size_t scenario, double direction_rad) {
    scale(scenarios.at(scenario));
    const LoadCase& load = cases.at(load_case);
    mechanics::RigidPlateSolution solution = mechanics::solve_rigid_plate(
        scaled_anchors_, scaled_patches_, plate_load(load, direction_rad), previous_ ? &*previous_ : nullptr);
    if (solution.status == mechanics::SolveStatus::no_equilibrium) {
        throw Overturns("nothing described can balance the push at " + in_degrees(direction_rad) +
                            ": the anchors and what the plate bears on leave it free to turn over",
                        direction_rad);
    }
    const mechanics::Residuals& residuals = solution.residuals;
    const double worst = std::max({residuals.force, residuals.moment, residuals.complementarity});
    // Written so that a residual that is not a number is refused too.
    if (solution.status != mechanics::SolveStatus::solved || !(worst <= largest_residual)) {
        throw std::runtime_error("the solve at " + in_degrees(direction_rad) + " misses equilibrium: residual " +
                                 fmt::format("{:.3g}", worst));
    }
    record(residuals);
    const mechanics::ShearShares shear = mechanics::share_shear(
        anchor_points_, {load.push_lb * std::cos(direction_rad), load.push_lb * std::sin(direction_rad)});
    if (!shear.balanced) {
        throw Overturns("one anchor cannot hold the plate against twisting about it at " + in_degrees(direction_rad),
                        direction_rad);
    }
    State state;
    state.load_case = load_case;
    state.scenario = scenario;
    state.direction_rad = direction_rad;
    add_forces(state, solution, shear);
    previous_ = std::move(solution);
    return state;
}

}  // namespace toehold::demand
