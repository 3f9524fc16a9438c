#pragma once
// A quantity over triangles, linear on each.
#include "drawing/ink/canvas.h"

namespace toehold::drawing::ink {

void shade(const Canvas& canvas, const Shading& shading);

}  // namespace toehold::drawing::ink
