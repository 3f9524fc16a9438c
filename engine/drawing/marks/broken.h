#pragma once
// Things that go on beyond the sheet: drawn as far as it shows them, with a break line where they are broken off.
#include "drawing/scene.h"

#include <string>

namespace toehold::drawing {

/// The part of a rectangle inside the window; its sides are stroked where they are its own, broken where the window
/// cuts it off to the left or right. Nothing where the two have no area in common.
void add_broken_rectangle(Scene& scene, const Box& box, const Box& window, Pen pen, Fill fill, const std::string& part);
/// Upright, or level, from one end to the other, with the double bend of a break in its middle.
void add_break_line(Scene& scene, Point from, Point to, const std::string& part);

}  // namespace toehold::drawing
