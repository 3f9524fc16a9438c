#pragma once
// One page with all of the sheet: the four drawings, the title block, the verdict with its reason, and the cautions.
#include "drawing/render/painter.h"
#include "session/session.h"

namespace toehold::window {

/// `page` in units of the surface; `units_per_mm` of paper.
void paint_page(cairo_t* cairo, const drawing::Area& page, double units_per_mm, const session::Session& session);

}  // namespace toehold::window
