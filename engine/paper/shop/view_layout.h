#pragma once
// The three views in third-angle alignment at one customary scale: the plan above the front, the right side beside it.
#include "paper/sheet.h"
#include "paper/shop/views.h"

namespace toehold::paper::shop {

struct Views {
    std::vector<Placed> placed;       ///< plan, front, right side; their titles after them
    double scale = 1.0;               ///< mm of paper for a mm of the plate
    bool corners_dimensioned = true;  ///< else the outline's corners must be listed
};

/// In a frame given in mm of lettering; `lettering`: mm of the sheet for one of those. At the largest customary scale
/// that has room for everything, else at whatever scale has.
[[nodiscard]] Views laid_out_views(const catalog::Resolved& resolved, const format::Locale& locale,
                                   const drawing::Area& frame, double lettering);

}  // namespace toehold::paper::shop
