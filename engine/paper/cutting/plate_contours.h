#pragma once
// A plate's edges as a cutting table follows them: true arcs, every contour closed, counter-clockwise.
#include "model/plate.h"
#include "paper/cutting/dxf.h"

namespace toehold::paper {

/// `scale`: drawing units for an inch, > 0. Corners that fall together are one.
[[nodiscard]] dxf::Entity outline_contour(const model::Outline& outline, double scale, const std::string& layer);
[[nodiscard]] dxf::Entity hole_contour(const model::Hole& hole, double scale, const std::string& layer);

/// Around the outline, in.
[[nodiscard]] drawing::Box outline_box_in(const model::Outline& outline);

}  // namespace toehold::paper
