#pragma once
// The bed's pressure as shares of its largest, and its lines of equal pressure.
#include "demand/demand.h"
#include "drawing/scene.h"

#include <optional>

namespace toehold::drawing {

[[nodiscard]] double largest_psi(const demand::DeflectedShape& field);
/// Absent where nothing is pressed.
[[nodiscard]] std::optional<Shading> pressure_shading(const demand::DeflectedShape& field);
/// Lines where the level of a shading equals `level`, as one path; without contours where there are none.
[[nodiscard]] Path level_line(const Shading& shading, double level, Pen pen);
/// Whether the triangle's indices are nodes of the field.
[[nodiscard]] bool has_nodes(const demand::DeflectedShape& field, const std::array<int, 3>& triangle);

}  // namespace toehold::drawing
