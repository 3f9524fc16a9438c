#pragma once
// A rectangular piece of wood bent about both of its axes, without axial force: NDS 2018 3.9.2 with the factors of
// Table 4.3.1. Width along x, depth along y, in; moments lb in, by their size.
#include "checks/basis/wood_basis.h"

#include <vector>

namespace toehold::checks {

struct WoodBending {
    double width_in = 0.0, depth_in = 0.0;
    Adjusted edgewise, flatwise;  ///< load on the narrow and on the wide face, psi
    double critical_psi = 0.0;    ///< FbE; 0: does not buckle sideways
};
/// `free_in`: length that nothing holds sideways, >= 0.
[[nodiscard]] WoodBending wood_bending(const catalog::LumberGrade& grade, double width_in, double depth_in,
                                       double free_in, const model::Basis& basis);

struct WoodBendingUse {
    double about_x_psi = 0.0, about_y_psi = 0.0;
    double ratio = 0.0;  ///< of what it may carry; infinite: it buckles sideways
};
[[nodiscard]] WoodBendingUse bending_use(const WoodBending& wood, double about_x_lb_in, double about_y_lb_in);

/// The same of a section that has less to bend than the whole, as one with holes.
struct BendingModuli {
    double about_x_in3 = 0.0, about_y_in3 = 0.0;
};
[[nodiscard]] WoodBendingUse bending_use(const WoodBending& wood, const BendingModuli& moduli, double about_x_lb_in,
                                         double about_y_lb_in);

/// Section moduli and the stresses of this use.
[[nodiscard]] std::vector<Step> stress_steps(const WoodBending& wood, const WoodBendingUse& use);
/// Reference and adjusted design values of the grade, with every factor.
[[nodiscard]] std::vector<Step> allowable_steps(const WoodBending& wood, const catalog::LumberGrade& grade);
/// The ratio, finite.
[[nodiscard]] Step use_step(const WoodBendingUse& use);

}  // namespace toehold::checks
