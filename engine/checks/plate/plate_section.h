#pragma once
// Straight sections through a plate, tangent to the post's outline or through its anchors: where the strip method
// checks its bending. The peak plate moment at a tube's corner is singular, so no point value there means anything; a
// section in equilibrium does. Plan coordinates in.
#include "checks/post/post_foot.h"
#include "mechanics/plane/geometry.h"
#include "model/plate.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::checks {

struct Interval {
    double from = 0.0, to = 0.0;
    [[nodiscard]] double length() const { return to > from ? to - from : 0.0; }
};

/// The line n . p = offset; what lies beyond it bends the plate there. Places along it are t = (-n_y, n_x) . p.
struct PlateSection {
    double normal_rad = 0.0;
    double normal_x = 0.0, normal_y = 0.0;
    double offset_in = 0.0;             ///< from the post's axis, >= 0
    Interval chord;                     ///< of the plate, the part that meets the post or the anchor
    std::vector<Interval> holes;        ///< where the section passes through holes
    std::optional<std::size_t> anchor;  ///< through whose centre it passes; absent: tangent to the post

    [[nodiscard]] double beyond_in(model::Position point) const;
    [[nodiscard]] double along_in(model::Position point) const;
    /// Metal inside the span: cut by the plate's edges, holes taken out.
    [[nodiscard]] double width_in(Interval span) const;
};

/// Both ways parallel to x, both ways parallel to y, and the four diagonals, each touching the post. A line that meets
/// no plate beside the post is left out.
[[nodiscard]] std::vector<PlateSection> tangent_sections(const PostFoot& foot, const model::Plate& plate);

/// Through each anchor's centre: square to the line from the post's axis to the anchor, and parallel to x and to y (the
/// sides of a rectangular plate). One that would cross the post's outline is left out. `places`: of the anchors.
[[nodiscard]] std::vector<PlateSection> anchor_sections(const PostFoot& foot, const model::Plate& plate,
                                                        const std::vector<model::Position>& places);

}  // namespace toehold::checks
