#pragma once
// What every painter of one kind of item needs to know.
#include "drawing/render/contour.h"
#include "drawing/render/palette.h"

typedef struct _cairo cairo_t;

namespace toehold::drawing::render {

struct Canvas {
    cairo_t* cairo = nullptr;
    View view;
    Ground ground = Ground::paper;
    Box visible;         ///< what of the surface is painted at all, in its units
    double pixel = 0.0;  ///< surface units for a pixel; 0 on paper, where lines are as thin as they are
};

/// Reads what is visible, and the size of a pixel, from the surface.
[[nodiscard]] Canvas canvas(cairo_t* cairo, const View& view, Ground ground);

[[nodiscard]] double units(const Canvas& canvas, double mm);
/// Width of a line, never so thin that a screen loses it.
[[nodiscard]] double line_width(const Canvas& canvas, double width_mm);
void use_colour(const Canvas& canvas, const Colour& colour);

}  // namespace toehold::drawing::render
