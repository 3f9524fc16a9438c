#pragma once
// Changes of the plate. Each is refused where it does not go with the rest of the detail, which is then to be thrown
// away. The post, its weld and what is not named stay as they are.
#include "model/base_detail.h"
#include "search/changes/applied.h"
#include "search/changes/pattern.h"

namespace toehold::search {

enum class Holes {
    keep_edges,    ///< each stays as far from the plate's nearer edges as it was
    laid_out_next  ///< a pattern follows, so that they may stand anywhere
};

/// A rectangle of this size about the center of the outline the plate has.
Applied resize_plate(model::BaseDetail& detail, double width_in, double depth_in, Holes holes);
/// This plate in place of the detail's, its anchors in its holes.
Applied take_plate(model::BaseDetail& detail, const model::Plate& plate);
Applied set_plate_thickness(model::BaseDetail& detail, double thickness_in);
Applied set_plate_metal(model::BaseDetail& detail, const std::string& metal);
/// Round holes of the width that the plate's first hole has, one anchor in each; every anchor must be of one kind.
Applied lay_out_holes(model::BaseDetail& detail, const Pattern& pattern);
/// Every hole round and this wide.
Applied drill_holes(model::BaseDetail& detail, double hole_in, Holes holes);
/// Width of the hole, of a slot across it.
[[nodiscard]] double hole_width_in(const model::Hole& hole);

}  // namespace toehold::search
