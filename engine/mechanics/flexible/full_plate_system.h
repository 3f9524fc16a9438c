#pragma once
// The linear solves of `settle` with every freedom of the mesh: the reference for the small space.
#include "mechanics/flexible/one_way_springs.h"
#include "mechanics/flexible/settle.h"

#include <optional>

namespace toehold::mechanics {

class FullPlateSystem {
  public:
    FullPlateSystem(const PlateAssembly& assembly, const OneWaySprings& springs, const ScaledSprings& scaled,
                    const Eigen::Vector3d& load)
        : assembly_(assembly), springs_(springs), scaled_(scaled), load_(load) {}
    [[nodiscard]] std::optional<PlateState> lowest(const Working& works) const;
    [[nodiscard]] double energy_product(const Eigen::VectorXd& a, const Eigen::VectorXd& b) const {
        return a.dot(assembly_.stiffness() * b);
    }

  private:
    const PlateAssembly& assembly_;
    const OneWaySprings& springs_;
    const ScaledSprings& scaled_;
    Eigen::Vector3d load_;
};

}  // namespace toehold::mechanics
