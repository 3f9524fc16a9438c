#pragma once
// A view that shows all the ink of a scene as large as an area allows. `drawing::fit` keeps one margin on every side
// for what stands off on paper; here each line and word is asked for its own, which small cells need.
#include "drawing/view.h"

namespace toehold::drawing {

/// Where words alone would fill the area, the thing
/// drawn keeps nearly half of it and they may be cut off. A scene without size is shown as `drawing::fit` does.
[[nodiscard]] View fit_ink(const Scene& scene, const Area& area, double units_per_mm);
/// At this scale, with the middle of the ink in the middle of the area; of the thing drawn where the ink has no room.
[[nodiscard]] View ink_in_the_middle(const Scene& scene, const Area& area, double units_per_in, double units_per_mm);

}  // namespace toehold::drawing
