#pragma once
// A small space for a plate's deflection: its responses to each anchor's pull and to polynomial pressures on the bed.
// The plate smooths what presses on it, so a few dozen responses meet the full mesh to about 1e-4 of the largest force
// and commonly to 1e-5; thin plates on stiff beds are given more of them. `FlexiblePlate` can measure by how much they
// miss.
#include "mechanics/flexible_plate/contact_solver.h"
#include "mechanics/flexible_plate/one_way_springs.h"

#include <Eigen/Core>

#include <optional>

namespace toehold::mechanics {

using RowMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// Rows over (lift, tilt_x, tilt_y, reduced elastic freedoms), in which the plate's stiffness is the identity.
struct ReducedRows {
    RowMatrix springs;
    RowMatrix probes;
};
/// Of a plate on supports that stand still.
[[nodiscard]] ReducedRows reduced_rows(const PlateAssembly& assembly, const OneWaySprings& springs);
/// The same plate on supports that give: their motions join the space. Apart from the springs the plate and its
/// supports do not touch, so that nothing else changes.
[[nodiscard]] ReducedRows rows_on_supports(const ReducedRows& still, const PlateAssembly& on_supports,
                                           const OneWaySprings& measured_from_supports);

/// The linear solves of `solve_contact` in the small space. The matrix is kept and changed spring by spring, because
/// neighbouring sets of working springs differ little.
class ReducedSystem {
  public:
    ReducedSystem(const RowMatrix& rows, const ScaledSprings& springs);
    void load(const Eigen::Vector3d& load) { load_ = load; }
    [[nodiscard]] std::optional<PlateState> equilibrium(const ActiveSet& active, const Eigen::Vector3d& from);
    [[nodiscard]] double energy_product(const Eigen::VectorXd& a, const Eigen::VectorXd& b) const { return a.dot(b); }

  private:
    void add_spring(Eigen::Index spring, double sense);
    void clear_springs();
    void activate(const ActiveSet& active);
    void add_all(const ActiveSet& active);
    [[nodiscard]] PlateState state_of(const Eigen::VectorXd& solution) const;
    [[nodiscard]] std::optional<PlateState> hardly_held(const Eigen::VectorXd& force, const Eigen::Vector3d& from);

    const RowMatrix& rows_;
    const ScaledSprings& springs_;
    Eigen::Vector3d load_ = Eigen::Vector3d::Zero();
    ActiveSet active_;
    Eigen::MatrixXd matrix_;  ///< lower half
    Eigen::VectorXd preload_force_;
};

}  // namespace toehold::mechanics
