#pragma once
// A view that shows everything painted of a scene as large as an area allows. `drawing::fit` keeps one margin on every
// side for what stands off on paper; here the room of each line and word is measured, which small cells need.
#include "drawing/scene/view.h"

namespace toehold::drawing {

/// Where words alone would fill the area, the thing
/// drawn keeps nearly half of it and they may be cut off. A scene without size is shown as `drawing::fit` does.
[[nodiscard]] View fit_tightly(const Scene& scene, const Area& area, double units_per_mm);
/// At this scale, with the middle of everything painted in the middle of the area; of the thing drawn where the rest
/// has no room.
[[nodiscard]] View centered_at_scale(const Scene& scene, const Area& area, double units_per_in, double units_per_mm);

}  // namespace toehold::drawing
