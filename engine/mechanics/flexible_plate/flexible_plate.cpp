#include "mechanics/flexible_plate/flexible_plate.h"

#include "mechanics/flexible_plate/full_system.h"
#include "mechanics/flexible_plate/nearest_points.h"
#include "mechanics/flexible_plate/reduced_system.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace toehold::mechanics {
namespace {

Eigen::Vector3d vector_of(const PlateLoad& load) { return {load.fz_lb, load.mx_lb_in, load.my_lb_in}; }

void add_to_patch(PatchForce& patch, const BedPoint& point, double force_lb) {
    if (force_lb <= 0.0) return;
    patch.force_lb += force_lb;
    // A sum of moments for now; divided by the force once all points are in.
    patch.at = {patch.at.x + force_lb * point.at.x, patch.at.y + force_lb * point.at.y};
    patch.contact_area_in2 += point.area_in2;
}

void find_peaks(std::vector<PatchForce>& patches, const OneWaySprings& springs, const StiffnessScale& scale,
                const Eigen::VectorXd& probe_lift) {
    for (std::size_t i = 0; i < springs.probes().size(); ++i) {
        const PressureProbe& probe = springs.probes()[i];
        PatchForce& patch = patches[probe.rectangle];
        const double stiffness = scale.bed * springs.bed()[probe.rectangle].stiffness_psi_per_in;
        const double pressure = -stiffness * probe_lift(static_cast<Eigen::Index>(i));
        if (pressure <= patch.peak_psi) continue;
        patch.peak_psi = pressure;
        patch.peak_at = probe.at;
    }
}

void find_centroid(PatchForce& patch, const BedRectangle& rectangle) {
    if (patch.force_lb > 0.0) {
        patch.at = {patch.at.x / patch.force_lb, patch.at.y / patch.force_lb};
    } else {
        patch.at = {0.5 * (rectangle.x_min + rectangle.x_max), 0.5 * (rectangle.y_min + rectangle.y_max)};
        patch.peak_at = patch.at;
    }
}

/// What is left over of the load once every spring's force, from its lift alone, has been taken from it.
Residuals residuals(const OneWaySprings& springs, const Eigen::VectorXd& signed_force, const PlateLoad& load,
                    double largest_lb, double reach_in) {
    Eigen::Vector3d left = vector_of(load);
    for (std::size_t i = 0; i < springs.size(); ++i)
        left -= signed_force(static_cast<Eigen::Index>(i)) * springs.rows()[i].rigid;
    const double applied = std::hypot(load.mx_lb_in, load.my_lb_in);
    const double moment = applied > 0.0 ? applied : largest_lb * reach_in;
    Residuals result;
    result.force = largest_lb > 0.0 ? std::abs(left(0)) / largest_lb : 0.0;
    result.moment = moment > 0.0 ? std::hypot(left(1), left(2)) / moment : 0.0;
    return result;
}

/// Of the bed under a point of the plate that stands `lift_in` over where it began; the bed's own support may have
/// sunk.
double pressure_under(Point at, double lift_in, const PlateAssembly& assembly, const std::vector<BedRectangle>& bed,
                      double scale, const PlateState& state) {
    for (std::size_t index = 0; index < bed.size(); ++index) {
        const BedRectangle& r = bed[index];
        if (at.x < r.x_min || at.x > r.x_max || at.y < r.y_min || at.y > r.y_max) continue;
        LiftRow sunk;
        assembly.measure_from_support(sunk, index, at);
        const double above = lift_in + lift_of(sunk, state.rigid, state.elastic);
        return std::max(0.0, -scale * r.stiffness_psi_per_in * above);
    }
    return 0.0;
}

/// No lift and no force.
FlexiblePlateSolution unsolved(int iterations, const OneWaySprings& springs) {
    FlexiblePlateSolution solution;
    solution.iterations = iterations;
    solution.patches.assign(springs.bed().size(), {});
    solution.tension_lb.assign(springs.anchors().size(), 0.0);
    return solution;
}

FlexiblePlateSolution solution_of(const ContactSolution& contact, const OneWaySprings& springs,
                                  const ScaledSprings& scaled, const StiffnessScale& scale,
                                  const Eigen::VectorXd& probe_lift, const PlateLoad& load, double reach_in) {
    FlexiblePlateSolution solution = unsolved(contact.iterations, springs);
    if (!contact.converged) return solution;
    solution.status = SolveStatus::solved;
    solution.lift_in = contact.state.rigid(0);
    solution.tilt_x_rad = contact.state.rigid(1);
    solution.tilt_y_rad = contact.state.rigid(2);
    const Eigen::VectorXd force = scaled.stiffness.cwiseProduct(scaled.stretch(contact.state.lift).cwiseMax(0.0));
    const std::size_t of_bed = springs.points().size();
    for (std::size_t i = 0; i < of_bed; ++i) {
        add_to_patch(solution.patches[springs.points()[i].rectangle], springs.points()[i],
                     force(static_cast<Eigen::Index>(i)));
    }
    for (std::size_t i = of_bed; i < springs.size(); ++i)
        solution.tension_lb[i - of_bed] = force(static_cast<Eigen::Index>(i));
    find_peaks(solution.patches, springs, scale, probe_lift);
    double largest = std::abs(load.fz_lb);
    for (std::size_t p = 0; p < solution.patches.size(); ++p) {
        find_centroid(solution.patches[p], springs.bed()[p]);
        largest = std::max(largest, solution.patches[p].force_lb);
    }
    for (const double tension : solution.tension_lb) largest = std::max(largest, tension);
    solution.residuals = residuals(springs, scaled.sign.cwiseProduct(force), load, largest, reach_in);
    constexpr double balanced = 1e-9;
    if (!(std::max(solution.residuals.force, solution.residuals.moment) <= balanced)) {
        // A state that reproduces itself without balancing its load: nothing is left that could.
        solution = unsolved(contact.iterations, springs);
        solution.status = SolveStatus::no_equilibrium;
    }
    return solution;
}

bool same(const StiffnessScale& a, const StiffnessScale& b) { return a.anchors == b.anchors && a.bed == b.bed; }

/// What does not ask how the supports stand.
struct OnStillSupports {
    /// What does not ask how stiff the anchors are either.
    struct Plate {
        PlateAssembly assembly;
        double reach_in = 1e-300;
        std::optional<ReducedRows> rows = std::nullopt;  ///< found when the small space is first asked for
    };
    std::shared_ptr<Plate> plate;
    OneWaySprings springs;

    explicit OnStillSupports(FlexiblePlateInput& input)
        : plate(std::make_shared<Plate>(
              Plate{PlateAssembly(input.mesh, {input.modulus_psi, input.poisson, input.thickness_in})})),
          springs(plate->assembly, std::move(input.anchors), std::move(input.bed)) {
        double& reach_in = plate->reach_in;
        for (const Point node : plate->assembly.mesh().nodes) reach_in = std::max(reach_in, std::hypot(node.x, node.y));
    }
    OnStillSupports(const OnStillSupports& like, std::vector<FlexibleAnchor> anchors)
        : plate(like.plate), springs(like.springs.with(std::move(anchors))) {}
    [[nodiscard]] const ReducedRows& reduced() {
        if (!plate->rows) plate->rows = reduced_rows(plate->assembly, springs);
        return *plate->rows;
    }
};

/// The small space's memory: springs at the scale last used, the matrix kept.
struct SmallSpace {
    const ReducedRows& rows;
    StiffnessScale scale;
    ScaledSprings scaled;
    ReducedSystem system;

    SmallSpace(const ReducedRows& of, const OneWaySprings& springs, const StiffnessScale& wanted)
        : rows(of), scale(wanted), scaled(springs.scaled(wanted)), system(rows.springs, scaled) {}
    SmallSpace(const SmallSpace&) = delete;
    SmallSpace& operator=(const SmallSpace&) = delete;
};

}  // namespace

struct FlexiblePlate::Prepared {
    std::shared_ptr<OnStillSupports> still;
    // Where the supports give; absent: as `still` has it.
    std::optional<PlateAssembly> given_assembly = std::nullopt;
    std::optional<OneWaySprings> given_springs = std::nullopt;
    std::optional<ReducedRows> given_rows = std::nullopt;
    std::unique_ptr<SmallSpace> small = nullptr;
    ActiveSet active;

    explicit Prepared(std::shared_ptr<OnStillSupports> plate)
        : still(std::move(plate)), active(still->springs.size(), 1) {}

    void give(const CompliantSupports& supports) {
        given_assembly = still->plate->assembly.on(supports);
        given_springs = still->springs.above(*given_assembly);
    }
    [[nodiscard]] const PlateAssembly& assembly() const {
        return given_assembly ? *given_assembly : still->plate->assembly;
    }
    [[nodiscard]] const OneWaySprings& springs() const { return given_springs ? *given_springs : still->springs; }
    [[nodiscard]] const ReducedRows& rows() {
        if (!given_assembly) return still->reduced();
        if (!given_rows) given_rows = rows_on_supports(still->reduced(), *given_assembly, *given_springs);
        return *given_rows;
    }
    [[nodiscard]] SmallSpace& small_at(const StiffnessScale& scale) {
        if (!small || !same(scale, small->scale)) small = std::make_unique<SmallSpace>(rows(), springs(), scale);
        return *small;
    }
};

FlexiblePlate::FlexiblePlate(FlexiblePlateInput input)
    : prepared_(std::make_unique<Prepared>(std::make_shared<OnStillSupports>(input))) {}
FlexiblePlate::FlexiblePlate(std::unique_ptr<Prepared> prepared) : prepared_(std::move(prepared)) {}
FlexiblePlate::~FlexiblePlate() = default;
FlexiblePlate::FlexiblePlate(FlexiblePlate&&) noexcept = default;
FlexiblePlate& FlexiblePlate::operator=(FlexiblePlate&&) noexcept = default;

FlexiblePlate FlexiblePlate::on(const CompliantSupports& supports) const {
    auto prepared = std::make_unique<Prepared>(prepared_->still);
    prepared->give(supports);
    return FlexiblePlate(std::move(prepared));
}

FlexiblePlate FlexiblePlate::with(std::vector<FlexibleAnchor> anchors) const {
    return FlexiblePlate(
        std::make_unique<Prepared>(std::make_shared<OnStillSupports>(*prepared_->still, std::move(anchors))));
}

void FlexiblePlate::begin_like(const FlexiblePlate& other) {
    const OneWaySprings &here = prepared_->springs(), &there = other.prepared_->springs();
    const std::vector<std::optional<std::size_t>> nearest = nearest_points(here.points(), there.points());
    for (std::size_t i = 0; i < nearest.size(); ++i) {
        if (nearest[i]) prepared_->active[i] = other.prepared_->active[*nearest[i]];
    }
    std::copy_n(other.prepared_->active.begin() + static_cast<std::ptrdiff_t>(there.points().size()),
                std::min(here.anchors().size(), there.anchors().size()),
                prepared_->active.begin() + static_cast<std::ptrdiff_t>(here.points().size()));
}

int FlexiblePlate::unknowns() const { return prepared_->assembly().freedoms() + 3; }
int FlexiblePlate::reduced_unknowns() const {
    return prepared_->small ? static_cast<int>(prepared_->small->rows.springs.cols()) : 0;
}

FlexiblePlateSolution FlexiblePlate::solve(const PlateLoad& load, const StiffnessScale& scale) {
    Prepared& p = *prepared_;
    SmallSpace& small = p.small_at(scale);
    small.system.load(vector_of(load));
    const ContactSolution contact = solve_contact(small.system, small.scaled, vector_of(load), p.active);
    if (!contact.converged) p.active.assign(p.active.size(), 1);
    const Eigen::VectorXd probe_lift =
        contact.converged ? Eigen::VectorXd(small.rows.probes * contact.state.all()) : Eigen::VectorXd();
    return solution_of(contact, p.springs(), small.scaled, scale, probe_lift, load, p.still->plate->reach_in);
}

FlexiblePlateSolution FlexiblePlate::solve_on_full_mesh(const PlateLoad& load, const StiffnessScale& scale,
                                                        PlateField* field) const {
    const Prepared& p = *prepared_;
    const PlateAssembly& assembly = p.assembly();
    const OneWaySprings& springs = p.springs();
    const ScaledSprings scaled = springs.scaled(scale);
    FullSystem system(assembly, springs, scaled, vector_of(load));
    ActiveSet active = p.active;
    const ContactSolution contact = solve_contact(system, scaled, vector_of(load), active);
    if (field != nullptr && contact.converged) {
        field->nodes = assembly.mesh().nodes;
        field->triangles = assembly.mesh().triangles;
        field->lift_in.clear();
        field->pressure_psi.clear();
        for (std::size_t node = 0; node < field->nodes.size(); ++node) {
            const Point at = field->nodes[node];
            const int freedom = assembly.freedom(static_cast<int>(node));
            field->lift_in.push_back(contact.state.rigid.dot(Eigen::Vector3d(1.0, at.y, -at.x)) +
                                     (freedom < 0 ? 0.0 : contact.state.elastic(freedom)));
            field->pressure_psi.push_back(
                pressure_under(at, field->lift_in.back(), assembly, springs.bed(), scale.bed, contact.state));
        }
    }
    Eigen::VectorXd probe_lift(contact.converged ? static_cast<Eigen::Index>(springs.probes().size()) : 0);
    for (Eigen::Index i = 0; i < probe_lift.size(); ++i) {
        probe_lift(i) =
            lift_of(springs.probes()[static_cast<std::size_t>(i)].row, contact.state.rigid, contact.state.elastic);
    }
    return solution_of(contact, springs, scaled, scale, probe_lift, load, p.still->plate->reach_in);
}

}  // namespace toehold::mechanics
