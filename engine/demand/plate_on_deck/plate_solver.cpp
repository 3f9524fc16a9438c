#include "demand/plate_on_deck/plate_solver.h"

#include "demand/framing/compliance.h"
#include "demand/in_proportion.h"
#include "demand/plate_on_deck/assumptions.h"
#include "demand/plate_on_deck/envelope.h"
#include "demand/plate_on_deck/kept_plates.h"
#include "demand/plate_on_deck/mesh_input.h"
#include "mechanics/rigid_plate/anchor_group.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

using format::phrase;

constexpr double largest_residual = 1e-8;
// Beyond this the plate has left the place it was computed in; about 20 degrees.
constexpr double largest_rotation_rad = 0.35;

format::Phrase in_degrees(double direction_rad) {
    return phrase("{:.4g} degrees", direction_rad * 180.0 / std::numbers::pi);
}

void add_supports(State& state, const std::vector<mechanics::PatchForce>& patches) {
    for (const mechanics::PatchForce& patch : patches) {
        state.supports.push_back({patch.force_lb,
                                  {patch.at.x, patch.at.y},
                                  patch.peak_psi,
                                  {patch.peak_at.x, patch.peak_at.y},
                                  patch.contact_area_in2});
    }
}

void add_anchors(State& state, const std::vector<double>& tension_lb, const mechanics::ShearShares& shear) {
    for (std::size_t i = 0; i < tension_lb.size(); ++i)
        state.anchors.push_back({tension_lb[i], shear.force_lb[i].x, shear.force_lb[i].y});
}

/// A hold that needs a large turn is none.
void check_rotation(double rotation, const Push& push) {
    if (!(rotation <= largest_rotation_rad)) {
        throw Overturns(phrase("the push at {} overturns the base: rotation exceeds {}", in_degrees(push.direction_rad),
                               in_degrees(largest_rotation_rad)),
                        push.direction_rad);
    }
}

/// Of the plate or of the post's foot.
template <class Solution>
double rotation_rad(const Solution& solution, const Push& push) {
    const double rotation = std::hypot(solution.tilt_x_rad, solution.tilt_y_rad);
    check_rotation(rotation, push);
    return rotation;
}

}  // namespace

mechanics::PlateLoad plate_load(const Push& push) {
    // The push (cos, sin) at height h turns about the axis square to it: r x F with r = (0, 0, h).
    const double moment = push.load.height_in * push.load.push_lb;
    return {-push.load.down_lb, -moment * std::sin(push.direction_rad), moment * std::cos(push.direction_rad)};
}

mechanics::StiffnessScale scale(const StiffnessScenario& scenario) { return {scenario.anchors, scenario.bed}; }

PlateSolver::PlateSolver(const catalog::Resolved& resolved, const Sampling& sampling, Kept* kept)
    : PlateSolver(resolved,
                  Preparation{.flexible_framing = sampling.all_stiffnesses,
                              .bent_shape = sampling.measured,
                              .in_proportion = !model::preloaded(resolved.detail)},
                  kept) {}

PlateSolver::PlateSolver(const catalog::Resolved& resolved, const Preparation& preparation, Kept* kept)
    : resolved_(resolved), preparation_(preparation), kept_(kept), bed_(find_bed(resolved)) {
    const auto& fixed = resolved.detail.basis.stiffness;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        anchor_points_.push_back({anchor.at.x_in, anchor.at.y_in});
        anchor_stiffness_.push_back(
            fixed ? Stiffness{fixed->anchor_lb_per_in, phrase("fixed by the user: {}", fixed->reason)}
                  : anchor_stiffness(resolved, anchor));
    }
    const bool asked_for = model::plate_behaviour(resolved.detail.basis) == model::PlateBehaviour::flexible;
    if ((!asked_for && !preparation.always_flexible) || bed_.supports.empty()) return;
    try {
        if (preparation.flexible_framing) framing_ = framing_compliance(resolved, bed_);
        make_plates();
    } catch (const UnfitForMesh& unfit) {
        why_rigid_ = unfit.reason;
    }
}

mechanics::FlexiblePlate PlateSolver::plate_at(double fineness) const {
    if (kept_ != nullptr) return kept_->plates().plate(resolved_, bed_, anchor_stiffness_, fineness);
    return mechanics::FlexiblePlate(plate_input(resolved_, bed_, anchor_stiffness_, fineness));
}

void PlateSolver::make_plates() {
    plate_.emplace(plate_at(fineness_));
    if (framing_) plate_on_flexible_framing_.emplace(plate_->on(*framing_));
}

mechanics::FlexiblePlate& PlateSolver::plate_for(const StiffnessScenario& scenario) {
    return scenario.flexible_framing && plate_on_flexible_framing_ ? *plate_on_flexible_framing_ : plate_.value();
}

void PlateSolver::record(const mechanics::Residuals& residuals, const Push& push) {
    const double worst = std::max({residuals.force, residuals.moment, residuals.complementarity});
    // Written so that a residual that is not a number is refused too.
    if (!(worst <= largest_residual)) {
        throw NoDemand(
            phrase("the solve at {} misses equilibrium: residual {:.3g}", in_degrees(push.direction_rad), worst));
    }
    proof_.force_residual = std::max(proof_.force_residual, residuals.force);
    proof_.moment_residual = std::max(proof_.moment_residual, residuals.moment);
    proof_.complementarity_residual = std::max(proof_.complementarity_residual, residuals.complementarity);
    ++proof_.solves;
}

mechanics::RigidPlateSolution PlateSolver::solve_rigid(const Push& push) {
    std::vector<mechanics::BedPatch> patches = bed_.patches;
    for (mechanics::BedPatch& patch : patches) patch.stiffness_psi_per_in *= push.scenario.bed;
    std::vector<mechanics::AnchorSpring> anchors;
    for (std::size_t i = 0; i < anchor_points_.size(); ++i) {
        anchors.push_back({anchor_points_[i], anchor_stiffness_[i].value * push.scenario.anchors});
    }
    mechanics::RigidPlateSolution solution =
        mechanics::solve_rigid_plate(anchors, patches, plate_load(push), previous_ ? &*previous_ : nullptr);
    if (solution.status == mechanics::SolveStatus::no_equilibrium) {
        throw Overturns(phrase("nothing described can balance the push at {}: the anchors and what the plate bears on "
                               "leave it free to turn over",
                               in_degrees(push.direction_rad)),
                        push.direction_rad);
    }
    if (solution.status != mechanics::SolveStatus::solved) {
        throw NoDemand(phrase("the rigid plate found no answer at {}", in_degrees(push.direction_rad)));
    }
    record(solution.residuals, push);
    return solution;
}

State PlateSolver::solve(const Push& push) {
    const bool push_alone = push.load.down_lb == 0.0 && push.load.push_lb * push.load.height_in > 0.0;
    return preparation_.in_proportion && push_alone ? solve_in_proportion(push) : solve_anew(push);
}

/// Bed and anchors work one way only, but from the first pound on: under pushes alone, in one direction, every force
/// and motion grows with the moment, and the shear with the push.
State PlateSolver::solve_in_proportion(const Push& push) {
    const auto known = solved_.find(key(push));
    if (known == solved_.end()) {
        State state = solve_anew(push);
        solved_.insert({key(push), {push.load, state}});
        return state;
    }
    const auto& [load, like] = known->second;
    State state = grown(like, push.load.push_lb * push.load.height_in / (load.push_lb * load.height_in),
                        push.load.push_lb / load.push_lb);
    check_rotation(std::max(state.rotation_rad, state.rigid_rotation_rad), push);
    return state;
}

PlateSolver::DirectionAndStiffness PlateSolver::key(const Push& push) {
    const StiffnessScenario& at = push.scenario;
    return {push.direction_rad, at.bed, at.anchors, at.flexible_framing ? 1.0 : 0.0};
}

State PlateSolver::solve_anew(const Push& push) {
    const mechanics::ShearShares shear = mechanics::share_shear(
        anchor_points_,
        {push.load.push_lb * std::cos(push.direction_rad), push.load.push_lb * std::sin(push.direction_rad)});
    if (!shear.balanced) {
        throw Overturns(
            phrase("one anchor cannot hold the plate against twisting about it at {}", in_degrees(push.direction_rad)),
            push.direction_rad);
    }
    State state;
    state.direction_rad = push.direction_rad;
    // Beside a flexible plate the rigid one is only shown at the nominal stiffness; what cannot balance at all shows
    // there too.
    if (!plate_ || push.scenario.nominal()) {
        previous_ = solve_rigid(push);
        state.rigid_tension_lb = previous_->tension_lb;
        state.rigid_rotation_rad = rotation_rad(*previous_, push);
    }
    if (!plate_) {
        add_anchors(state, previous_->tension_lb, shear);
        add_supports(state, previous_->patches);
        state.rotation_rad = state.rigid_rotation_rad;
        return state;
    }
    const mechanics::FlexiblePlateSolution flexible =
        plate_for(push.scenario).solve(plate_load(push), scale(push.scenario));
    if (flexible.status != mechanics::SolveStatus::solved) {
        if (model::preloaded(resolved_.detail)) {
            throw Overturns(phrase("the anchors' preload cannot be balanced by what the plate bears on"),
                            push.direction_rad);
        }
        throw NoDemand(phrase("the flexible plate found no answer at {}", in_degrees(push.direction_rad)));
    }
    record(flexible.residuals, push);
    add_anchors(state, flexible.tension_lb, shear);
    add_supports(state, flexible.patches);
    state.rotation_rad = rotation_rad(flexible, push);
    return state;
}

void PlateSolver::complete(Demand& demand, const Push& governing) {
    add_plate_envelopes(demand, *this, resolved_.detail);
    demand.assumptions = plate_assumptions(*this, resolved_.detail);
    if (flexible() && preparation_.bent_shape)
        demand.field = measured_shape_ ? std::move(*measured_shape_) : field(governing);
    demand.proof = proof_;
    demand.proof.plate = accuracy_;
}

}  // namespace toehold::demand
