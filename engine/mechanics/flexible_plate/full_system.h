#pragma once
// The linear solves of `solve_contact` with every freedom of the mesh: the reference for the small space.
#include "mechanics/flexible_plate/contact_solver.h"
#include "mechanics/flexible_plate/one_way_springs.h"

#include <optional>

namespace toehold::mechanics {

class FullSystem {
  public:
    FullSystem(const PlateAssembly& assembly, const OneWaySprings& springs, const ScaledSprings& scaled,
               const Eigen::Vector3d& load)
        : assembly_(assembly), springs_(springs), scaled_(scaled), load_(load) {}
    [[nodiscard]] std::optional<PlateState> equilibrium(const ActiveSet& active, const Eigen::Vector3d& from) const;
    [[nodiscard]] double energy_product(const Eigen::VectorXd& a, const Eigen::VectorXd& b) const {
        return a.dot(assembly_.stiffness().selfadjointView<Eigen::Lower>() * b);
    }

  private:
    const PlateAssembly& assembly_;
    const OneWaySprings& springs_;
    const ScaledSprings& scaled_;
    Eigen::Vector3d load_;
};

}  // namespace toehold::mechanics
