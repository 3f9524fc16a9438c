#pragma once
// Plain pieces every drawing is made of, and boxes around them. Coordinates in inches of the thing drawn unless a name
// ends in mm, which is millimetres of paper.
// The last hand on every drawing: nothing that is not finite leaves the room, and bounds have an area.
#include "drawing/scene/scene.h"

#include <string>
#include <vector>

namespace toehold::drawing {

[[nodiscard]] Place standing(Point at);
[[nodiscard]] Place standing(Point at, Point paper_mm);
[[nodiscard]] Place moved_mm(const Place& place, double right_mm, double up_mm);

[[nodiscard]] Path line(const Place& from, const Place& to, Pen pen, model::PartId part = {});
[[nodiscard]] Path line(Point from, Point to, Pen pen, model::PartId part = {});
/// Open, through all the points.
[[nodiscard]] Path stroke_through(const std::vector<Point>& points, Pen pen, model::PartId part = {});
[[nodiscard]] Path area(const std::vector<Point>& corners, Pen pen, Fill fill, model::PartId part = {});
[[nodiscard]] Path rectangle(const Box& box, Pen pen, Fill fill, model::PartId part = {});
/// Of paper, from a place: its lower left corner stands at `low_mm` from there.
[[nodiscard]] Path rectangle_mm(const Place& place, Point low_mm, Point size_mm, Pen pen, Fill fill,
                                model::PartId part = {});

/// The box of some points; the box of none is a point at the origin.
[[nodiscard]] Box around(const std::vector<Point>& points);
[[nodiscard]] Box around(const Box& one, const Box& other);
[[nodiscard]] Box grown(const Box& box, double by_in);
/// What the two have in common; a box without area where that is nothing.
[[nodiscard]] Box common(const Box& one, const Box& other);
[[nodiscard]] double width(const Box& box);
[[nodiscard]] double height(const Box& box);
[[nodiscard]] Point middle(const Box& box);
[[nodiscard]] bool has_area(const Box& box);

/// Without the items, and the contours, that a nonsense detail drove beyond any sheet.
[[nodiscard]] Scene finished(Scene scene);

}  // namespace toehold::drawing
