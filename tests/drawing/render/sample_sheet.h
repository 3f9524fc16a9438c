#pragma once
// A scene with every pen, fill and kind of text, for looking at and for measuring: not a drawing of anything.
#include "drawing/scene/scene.h"

namespace toehold::test {

[[nodiscard]] drawing::Scene sample_sheet();
[[nodiscard]] drawing::Path rectangle(double left, double bottom, double right, double top, drawing::Pen pen,
                                      drawing::Fill fill, model::PartId part = {});
/// A square of `sides` by `sides` cells, two triangles each, with a level that falls from one corner.
[[nodiscard]] drawing::Shading sloping(double left, double bottom, double size, int sides);

}  // namespace toehold::test
