#pragma once
// What an area is made of, as a drawing says it: lines at 45 degrees for cut metal, growth rings for wood cut across,
// grain for wood cut along it or seen on its side. Spacings are of paper; the pattern hangs on the shape, not the
// window.
#include "drawing/render/canvas.h"

namespace toehold::drawing::render {

/// Nothing for a fill that is plain.
void hatch(const Canvas& canvas, const std::vector<Contour>& contours, Fill fill);

/// A quantity over triangles, linear on each.
void shade(const Canvas& canvas, const Shading& shading);

}  // namespace toehold::drawing::render
