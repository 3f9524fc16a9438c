#pragma once
// The last hand on every drawing: nothing that is not finite leaves the room, and bounds have an area.
#include "drawing/scene.h"

namespace toehold::drawing {

/// Without the items, and the contours, that a nonsense detail drove beyond any sheet.
[[nodiscard]] Scene finished(Scene scene);

}  // namespace toehold::drawing
