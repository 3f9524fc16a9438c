#pragma once
// Cg: the outer fasteners of a row take more than their share. NDS 2018 11.3.6, Eq. 11.3-1 (from memory, to be
// confirmed).

namespace toehold::resistance {

/// Load per slip of one dowel-type fastener: 180,000 D^1.5 wood to wood, 270,000 D^1.5 wood to metal; lb/in.
[[nodiscard]] double wood_to_wood_slip_modulus_lb_per_in(double diameter_in);
[[nodiscard]] double wood_to_metal_slip_modulus_lb_per_in(double diameter_in);

struct FastenerRow {
    int count = 1;                         ///< in the row, >= 1
    double spacing_in = 0.0;               ///< between neighbours, > 0 where count > 1
    double diameter_in = 0.0;              ///< nominal
    double slip_modulus_lb_per_in = 0.0;   ///< gamma, > 0 where count > 1
    double main_axial_stiffness_lb = 0.0;  ///< E A of the main member, gross, > 0 where count > 1
    double side_axial_stiffness_lb = 0.0;  ///< E A of all side members together, > 0 where count > 1
};

/// 1.0 for one fastener and for D < 1/4 in. Throws std::invalid_argument for a row without stiffness or spacing.
[[nodiscard]] double group_factor(const FastenerRow& row);

}  // namespace toehold::resistance
