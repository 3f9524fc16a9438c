#pragma once
// The lines that one coordinate of a point may catch on.
#include "editing/snap.h"

#include <string>
#include <vector>

namespace toehold::editing {

using format::Phrase;
using format::phrase;

enum class Direction { x, y };

[[nodiscard]] double coordinate(drawing::Point at, Direction direction);
[[nodiscard]] drawing::Point with_coordinate(drawing::Point at, Direction direction, double value_in);

/// A line square to the direction.
struct CatchLine {
    double at_in = 0.0;    ///< where the coordinate would come to stand
    drawing::Point shown;  ///< what the line is drawn from
    Phrase why;
    int rank = 0;  ///< a lower rank catches before a higher one, however near that is
};

/// The post's axis, across the direction.
[[nodiscard]] CatchLine post_axis(const model::Plate& plate, Direction direction);
/// Other holes, their mirror images in the post's axis and their distances to the plate's edge.
[[nodiscard]] std::vector<CatchLine> hole_lines(const model::Plate& plate, const std::string& moving,
                                                Direction direction);

/// The line that catches; nullptr where none is within reach, or the rules are off.
[[nodiscard]] const CatchLine* nearest(const std::vector<CatchLine>& lines, double value_in, const SnapRules& rules);

/// Both coordinates of a point, each on its own lines or else to the step.
[[nodiscard]] Snapped snap_to(drawing::Point to, const std::vector<CatchLine>& x_lines,
                              const std::vector<CatchLine>& y_lines, const SnapRules& rules);

}  // namespace toehold::editing
