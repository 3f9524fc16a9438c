#include "mechanics/plane/area_moments.h"

#include <optional>

namespace toehold::mechanics {
namespace {

/// Calls visit(from, to) for every side.
template <typename Visit>
void for_each_edge(const Polygon& polygon, Visit visit) {
    if (polygon.empty()) return;
    Point from = polygon.back();
    for (const Point& to : polygon) {
        visit(from, to);
        from = to;
    }
}

std::optional<Point> first_crossing(const Polygon& polygon, const LinearField& lift) {
    std::optional<Point> found;
    for_each_edge(polygon, [&](Point from, Point to) {
        const double lift_from = lift.at(from);
        const double lift_to = lift.at(to);
        if (!found && (lift_from < 0.0) != (lift_to < 0.0)) found = crossing(from, lift_from, to, lift_to);
    });
    return found;
}

void add_edge(AreaMoments& moments, Point from, Point to) {
    moments.about_reference += side_moments(from, to, moments.reference);
}

void add_edge_below(AreaMoments& moments, const LinearField& lift, Point from, Point to) {
    const double lift_from = lift.at(from);
    const double lift_to = lift.at(to);
    if (lift_from >= 0.0 && lift_to >= 0.0) return;
    if (lift_from > 0.0) from = crossing(from, lift_from, to, lift_to);
    if (lift_to > 0.0) to = crossing(from, lift_from, to, lift_to);
    add_edge(moments, from, to);
}

}  // namespace

AreaMoments area_moments(const Polygon& polygon, Point reference) {
    AreaMoments moments{reference, {}};
    for_each_edge(polygon, [&moments](Point from, Point to) { add_edge(moments, from, to); });
    return moments;
}

Moments about_origin(const AreaMoments& moments) {
    const Point& shift = moments.reference;
    const Moments& local = moments.about_reference;
    Moments result;
    result.area = local.area;
    result.x = local.x + shift.x * local.area;
    result.y = local.y + shift.y * local.area;
    result.xx = local.xx + 2.0 * shift.x * local.x + shift.x * shift.x * local.area;
    result.xy = local.xy + shift.x * local.y + shift.y * local.x + shift.x * shift.y * local.area;
    result.yy = local.yy + 2.0 * shift.y * local.y + shift.y * shift.y * local.area;
    return result;
}

Moments moments(const Polygon& polygon) {
    if (polygon.empty()) return {};
    // About a corner of its own, so that a polygon far from the origin keeps its digits.
    return about_origin(area_moments(polygon, polygon.front()));
}

AreaMoments moments_below(const Polygon& polygon, const AreaMoments& whole, const LinearField& lift) {
    const std::optional<Point> on_zero_line = first_crossing(polygon, lift);
    if (!on_zero_line) {
        const bool below = !polygon.empty() && lift.at(polygon.front()) < 0.0;
        return below ? whole : AreaMoments{whole.reference, {}};
    }
    AreaMoments moments{*on_zero_line, {}};
    for_each_edge(polygon, [&](Point from, Point to) { add_edge_below(moments, lift, from, to); });
    return moments;
}

}  // namespace toehold::mechanics
