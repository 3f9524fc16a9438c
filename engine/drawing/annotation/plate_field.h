#pragma once
// The bed's pressure and the plate's deflection as drawings show them: shares of the largest, lines of equal pressure,
// both along an upright plane.
#include "drawing/scene/scene.h"

#include <array>
#include <optional>
#include <vector>

namespace toehold::demand {
struct DeflectedShape;
}

namespace toehold::drawing {

struct SectionPlane;

[[nodiscard]] double largest_psi(const demand::DeflectedShape& field);
/// Absent where nothing is pressed.
[[nodiscard]] std::optional<Shading> pressure_shading(const demand::DeflectedShape& field);
/// Lines where the level of a shading equals `level`, as one path; without contours where there are none.
[[nodiscard]] Path level_line(const Shading& shading, double level, Pen pen);
/// Length of one inch of deflection in the section, such that the largest is about a tenth of the plate's width.
[[nodiscard]] double exaggeration(const demand::DeflectedShape& field);

struct CutEnd {
    double along_in = 0.0, lift_in = 0.0, pressure_psi = 0.0;
};
/// One piece for every triangle the plane crosses, its lower end first.
[[nodiscard]] std::vector<std::array<CutEnd, 2>> field_cut(const demand::DeflectedShape& field,
                                                           const SectionPlane& plane);

}  // namespace toehold::drawing
