#pragma once
// A quantity over triangles, linear on each.
#include "drawing/paint/canvas.h"

namespace toehold::drawing::paint {

void shade(const Canvas& canvas, const Shading& shading);

}  // namespace toehold::drawing::paint
