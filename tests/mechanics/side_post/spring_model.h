#pragma once
// The same post put together a second way: nodes at even steps that move by themselves, Bernoulli's beam between them,
// the bed as many point springs, and its energy brought to its lowest by Ipopt (mechanics/interior_point.h), which
// never asks which springs work. Nothing of the engine is in it.
#include "mechanics/side_post/side_post.h"

#include <vector>

namespace toehold::test {

struct SpringModelForces {
    std::vector<double> tension_lb;  ///< of every fastener
    std::vector<double> slip_x_lb;
    std::vector<double> bearing_lb;              ///< of every bearing
    std::vector<mechanics::SpaceVector> top_in;  ///< of the axis at each load
};

/// A post without shear deformation and with at most one body. `steps`: even pieces over the height of what holds it,
/// four rows of `across` springs a piece.
[[nodiscard]] SpringModelForces solve_as_springs(const mechanics::SidePost& post,
                                                 const std::vector<mechanics::PostLoad>& loads, int steps, int across);

}  // namespace toehold::test
