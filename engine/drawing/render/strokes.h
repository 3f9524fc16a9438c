#pragma once
// Lines: their width, dashes and, where two run beside each other, both.
#include "drawing/render/canvas.h"

namespace toehold::drawing::render {

/// A circle on the surface.
struct Disc {
    Point center;
    double radius = 0.0;
};

void trace(const Canvas& canvas, const std::vector<Contour>& contours, bool closed);
void trace(const Canvas& canvas, const Disc& disc);

void draw_line(const Canvas& canvas, const std::vector<Contour>& contours, bool closed, const Stroke& stroke);
void draw_line(const Canvas& canvas, const Disc& disc, const Stroke& stroke);

}  // namespace toehold::drawing::render
