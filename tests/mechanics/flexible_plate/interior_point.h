#pragma once
// The flexible plate's discrete energy brought to its lowest by Ipopt, a general-purpose interior-point program
// (A. Waechter, L. T. Biegler 2006), as the quadratic program
//   least  1/2 e' K e + sum k/2 t^2 - load . rigid    with  t >= sign w + gap,  t >= 0
// over the elastic freedoms e, the rigid body and the springs' stretches t. It never asks which springs work.
#include "mechanics/flexible_plate/one_way_springs.h"

namespace toehold::test {

struct LowestState {
    Eigen::Vector3d rigid;
    Eigen::VectorXd force;  ///< of every spring, >= 0
};

/// Throws std::runtime_error where Ipopt does not end with its own tolerances met.
[[nodiscard]] LowestState lowest_by_interior_point(const mechanics::PlateAssembly& assembly,
                                                   const mechanics::OneWaySprings& springs,
                                                   const mechanics::ScaledSprings& scaled, const Eigen::Vector3d& load);

}  // namespace toehold::test
