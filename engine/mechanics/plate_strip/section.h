#pragma once
// Straight sections through a base plate, tangent to the post's outline or through an anchor: where the strip method
// (common practice) checks the plate's bending. The peak moment of plate theory at a tube's corner is singular, so no
// value at a point means anything there; a section in equilibrium does.
//
// Plan coordinates about the post's axis, in. Plain values; no model.
#include "mechanics/plane/geometry.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace toehold::mechanics {

/// Outside outline of the post's foot about the origin. Round: width and depth are the diameter.
struct FootOutline {
    bool round = false;
    double width_in = 0.0;  ///< along x
    double depth_in = 0.0;  ///< along y
};

/// A round hole (`from` and `to` are its center) or a slot: all within the radius of the straight line between them.
struct PlateHole {
    Point from, to;
    double radius_in = 0.0;
};

struct PlateShape {
    Polygon outline;
    std::vector<PlateHole> holes;
};

/// The line n . p = offset; what lies beyond it bends the plate there. Places along it are t = (-n_y, n_x) . p.
struct PlateSection {
    double normal_rad = 0.0;
    double normal_x = 0.0, normal_y = 0.0;
    double offset_in = 0.0;             ///< from the post's axis, >= 0
    Interval chord;                     ///< of the plate, the part that meets the post or the anchor
    std::vector<Interval> holes;        ///< where the section passes through holes
    std::optional<std::size_t> anchor;  ///< through whose center it passes; absent: tangent to the post

    [[nodiscard]] double beyond_in(Point point) const;
    [[nodiscard]] double along_in(Point point) const;
    /// Metal inside the span: cut by the plate's edges, holes taken out.
    [[nodiscard]] double width_in(Interval span) const;
};

/// What the hole takes of the section's line; empty where it does not meet it.
[[nodiscard]] Interval cut_by_hole(const PlateSection& section, const PlateHole& hole);

/// Both ways parallel to x, both ways parallel to y, and the four diagonals, each touching the post. A line that meets
/// no plate beside the post is left out.
[[nodiscard]] std::vector<PlateSection> tangent_sections(const FootOutline& foot, const PlateShape& plate);

/// Through each anchor's center: square to the line from the post's axis to the anchor, and parallel to x and to y (the
/// sides of a rectangular plate). One that would cross the post's outline is left out.
[[nodiscard]] std::vector<PlateSection> anchor_sections(const FootOutline& foot, const PlateShape& plate,
                                                        std::span<const Point> anchors);

}  // namespace toehold::mechanics
