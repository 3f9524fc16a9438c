#include "model/segment.h"

#include <algorithm>
#include <cmath>

namespace toehold::model {
namespace {

double turn(Position a, Position b, Position c) {
    return (b.x_in - a.x_in) * (c.y_in - a.y_in) - (b.y_in - a.y_in) * (c.x_in - a.x_in);
}

}  // namespace

double distance_in(Position point, const Segment& segment) {
    const double dx = segment.to.x_in - segment.from.x_in;
    const double dy = segment.to.y_in - segment.from.y_in;
    const double length_squared = dx * dx + dy * dy;
    double along = 0.0;
    if (length_squared > 0.0) {
        along = ((point.x_in - segment.from.x_in) * dx + (point.y_in - segment.from.y_in) * dy) / length_squared;
        along = std::clamp(along, 0.0, 1.0);
    }
    return std::hypot(point.x_in - segment.from.x_in - along * dx, point.y_in - segment.from.y_in - along * dy);
}

bool cross(const Segment& a, const Segment& b) {
    const double b_from = turn(a.from, a.to, b.from);
    const double b_to = turn(a.from, a.to, b.to);
    const double a_from = turn(b.from, b.to, a.from);
    const double a_to = turn(b.from, b.to, a.to);
    return ((b_from > 0.0) != (b_to > 0.0)) && ((a_from > 0.0) != (a_to > 0.0));
}

double distance_in(const Segment& a, const Segment& b) {
    if (cross(a, b)) return 0.0;
    return std::min({distance_in(a.from, b), distance_in(a.to, b), distance_in(b.from, a), distance_in(b.to, a)});
}

std::vector<Segment> sides(const std::vector<Position>& corners) {
    std::vector<Segment> result;
    result.reserve(corners.size());
    for (std::size_t index = 0; index < corners.size(); ++index) {
        result.push_back({corners[index], corners[(index + 1) % corners.size()]});
    }
    return result;
}

}  // namespace toehold::model
