#pragma once
// The region where a dragged thing passes every check, as it lies over the drawing in which it is dragged.
#include "drawing/scene/scene.h"
#include "editing/handles.h"
#include "format/phrase.h"
#include "model/base_detail.h"
#include "solving/regions.h"

#include <optional>

namespace toehold::session {

/// In which drawing it lies: the plan; of a screw's length the section.
[[nodiscard]] editing::Sheet region_sheet(const solving::RegionNews& news);

/// `detail`: as it was when it was asked. `tip`: of a screw's length, where the tip stood in the section, which the
/// length is measured from. Shaded where it holds, the border named by what stops it; broken until it is confirmed.
[[nodiscard]] drawing::Scene region_scene(const solving::RegionNews& news, const model::BaseDetail& detail,
                                          std::optional<drawing::Point> tip, const format::Locale& locale);

}  // namespace toehold::session
