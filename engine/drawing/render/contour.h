#pragma once
// Contours in surface units (y down), and the plain geometry that painting and picking share.
#include "drawing/scene/view.h"

#include <vector>

namespace toehold::drawing::render {

using Contour = std::vector<Point>;

[[nodiscard]] std::vector<Contour> on_surface(const Path& path, const View& view);
/// Without points: a box of no size at the origin.
[[nodiscard]] Box bounds(const std::vector<Contour>& contours);
[[nodiscard]] bool meet(const Box& one, const Box& other);

/// To the nearest point of the line; infinite for a contour without points.
[[nodiscard]] double distance(Point point, const Contour& contour, bool closed);
/// By the even-odd rule; every contour counts as closed.
[[nodiscard]] bool inside(Point point, const std::vector<Contour>& contours);

/// The line that runs beside this one, `by` to its left as it is walked (y down); corners mitred up to twice `by`.
[[nodiscard]] Contour beside(const Contour& contour, bool closed, double by);
/// With every level and every upright side moved onto the nearest middle of a pixel, so that thin lines stay sharp.
[[nodiscard]] Contour sharpened(const Contour& contour, bool closed, double pixel);

}  // namespace toehold::drawing::render
