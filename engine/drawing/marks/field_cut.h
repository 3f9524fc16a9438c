#pragma once
// The plate's deflection and the bed's pressure along an upright plane.
#include "drawing/drawings.h"

#include <array>
#include <vector>

namespace toehold::drawing {

struct CutEnd {
    double along_in = 0.0, lift_in = 0.0, pressure_psi = 0.0;
};
/// One piece for every triangle the plane crosses, its lower end first.
[[nodiscard]] std::vector<std::array<CutEnd, 2>> field_cut(const demand::DeflectedShape& field,
                                                           const SectionPlane& plane);

}  // namespace toehold::drawing
