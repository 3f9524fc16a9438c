// How far a flexible plate's tensions may be from those of an ever finer mesh, and the bent shape on the full mesh.
#include "demand/plate_on_deck/plate_solver.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {
namespace {

constexpr double finer = 1.5;

double largest(const std::vector<double>& values) {
    return values.empty() ? 0.0 : *std::max_element(values.begin(), values.end());
}

DeflectedShape shape_of(const mechanics::PlateField& bent, double direction_rad) {
    DeflectedShape shape;
    shape.direction_rad = direction_rad;
    for (std::size_t i = 0; i < bent.nodes.size(); ++i)
        shape.nodes.push_back({{bent.nodes[i].x, bent.nodes[i].y}, bent.lift_in[i], bent.pressure_psi[i]});
    shape.triangles = bent.triangles;
    return shape;
}

}  // namespace

void PlateSolver::refine_mesh() {
    fineness_ *= finer;
    solved_.clear();
    make_plates();
}

DeflectedShape PlateSolver::field(const Push& push) {
    mechanics::PlateField bent;
    const mechanics::FlexiblePlateSolution solution =
        plate_for(push.scenario).solve_on_full_mesh(plate_load(push), scale(push.scenario), &bent);
    if (solution.status != mechanics::SolveStatus::solved) bent = {};
    return shape_of(bent, push.direction_rad);
}

MeshAccuracy PlateSolver::measure(const Push& push) {
    mechanics::FlexiblePlate& coarse = plate_for(push.scenario);
    mechanics::FlexiblePlate fine = plate_at(finer * fineness_);
    if (&coarse != &*plate_) fine = fine.on(*framing_);
    const mechanics::PlateLoad load = plate_load(push);
    const double reduced = largest(coarse.solve(load, scale(push.scenario)).tension_lb);
    mechanics::PlateField bent;
    const double full = largest(coarse.solve_on_full_mesh(load, scale(push.scenario), &bent).tension_lb);
    measured_shape_ = shape_of(bent, push.direction_rad);
    fine.begin_like(coarse);
    const mechanics::FlexiblePlateSolution finest = fine.solve_on_full_mesh(load, scale(push.scenario));
    MeshAccuracy accuracy{coarse.unknowns(), coarse.reduced_unknowns(), 0.0, 0.0};
    // A pull that is small beside the bearing is the small difference of large forces, and is measured by those.
    constexpr double small_pull = 0.05;
    double measure = largest(finest.tension_lb);
    for (const mechanics::PatchForce& patch : finest.patches) measure = std::max(measure, small_pull * patch.force_lb);
    if (measure > 0.0) {
        accuracy.mesh_error = std::abs(full - largest(finest.tension_lb)) / measure;
        accuracy.reduction_error = std::abs(reduced - full) / measure;
    }
    return accuracy;
}

bool PlateSolver::accurate(const Push& governing) {
    constexpr double accepted_error = 0.01;
    if (!flexible()) return true;
    accuracy_ = measure(governing);
    if (accuracy_->mesh_error + accuracy_->reduction_error <= accepted_error) return true;
    refine_mesh();
    return false;
}

}  // namespace toehold::demand
