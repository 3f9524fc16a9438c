#include "editing/snap.h"

#include "editing/parts/measures.h"
#include "editing/snap/catch_lines.h"

#include <cmath>

namespace toehold::editing {

double to_step(double value_in, double step_in) {
    if (!(step_in > 0.0) || !std::isfinite(step_in)) return value_in;
    const double stepped = std::round(value_in / step_in) * step_in;
    return std::isfinite(stepped) ? stepped : value_in;
}

Snapped snap(drawing::Point to, const model::Plate& plate, const std::string& moving, const SnapRules& rules) {
    if (!is_finite(to)) return {{bounded(to.x), bounded(to.y)}, {}};
    std::vector<CatchLine> x_lines = hole_lines(plate, moving, Direction::x);
    std::vector<CatchLine> y_lines = hole_lines(plate, moving, Direction::y);
    x_lines.push_back(post_axis(plate, Direction::x));
    y_lines.push_back(post_axis(plate, Direction::y));
    return snap_to(to, x_lines, y_lines, rules);
}

}  // namespace toehold::editing
