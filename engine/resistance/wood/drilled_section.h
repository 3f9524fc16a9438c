#pragma once
// A rectangle of wood with holes drilled through its depth: what is left for bending, net section by NDS 2018 3.1.2
// (from memory, to be confirmed). in, in3. The stress that gathers beside a hole is not counted, as in the standard.
#include <span>

namespace toehold::resistance {

/// A hole that runs along the depth, through all of it.
struct DrilledHole {
    double across_in = 0.0;  ///< of its center from the middle of the width
    double diameter_in = 0.0;
};

/// Elastic moduli of the net section, >= 0. Width along x, depth along y, both > 0. About y the middle of the whole
/// section is kept as the axis.
struct NetModuli {
    double about_x_in3 = 0.0, about_y_in3 = 0.0;
};
[[nodiscard]] NetModuli net_moduli(double width_in, double depth_in, std::span<const DrilledHole> holes);

/// Fasteners closer than this along the grain, in neighboring rows, count as in one section: 4 D, 3.1.2.2.
[[nodiscard]] constexpr double one_section_in(double diameter_in) { return 4.0 * diameter_in; }

}  // namespace toehold::resistance
