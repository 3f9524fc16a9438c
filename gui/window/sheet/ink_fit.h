#pragma once
// A view that shows all the ink of a scene as large as an area allows. `drawing::fit` keeps one margin on every side
// for what stands off on paper; here each line and word is asked for its own, which small cells need.
#include "drawing/view.h"

namespace toehold::window {

/// Words are taken to be about as wide as their letters are many. Where words alone would fill the area, the thing
/// drawn keeps nearly half of it and they may be cut off. A scene without size is shown as `drawing::fit` does.
[[nodiscard]] drawing::View fit_ink(const drawing::Scene& scene, const drawing::Area& area, double units_per_mm);

}  // namespace toehold::window
