#pragma once
// The elevation's part that is the mount's: the post passing down the member's face.
#include "drawing/elevation/sheet.h"

namespace toehold::drawing::side {

/// The post's overlap below z = 0, along y.
[[nodiscard]] Box overlap_box(const model::BaseDetail& detail);
void add_guard(Scene& scene, const ElevationSheet& sheet);

}  // namespace toehold::drawing::side
