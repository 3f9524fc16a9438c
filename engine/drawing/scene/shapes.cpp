#include "drawing/scene/shapes.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::drawing {
namespace {

std::vector<Place> places(const std::vector<Point>& points) {
    std::vector<Place> result;
    result.reserve(points.size());
    for (const Point& point : points) result.push_back(standing(point));
    return result;
}

std::vector<Point> corners(const Box& box) {
    return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

}  // namespace

Place standing(Point at) { return {at, {}}; }
Place standing(Point at, Point paper_mm) { return {at, paper_mm}; }

Place moved_mm(const Place& place, double right_mm, double up_mm) {
    return {place.at, {place.paper_mm.x + right_mm, place.paper_mm.y + up_mm}};
}

Path line(const Place& from, const Place& to, Pen pen, model::PartId part) {
    return {{{from, to}}, false, pen, Fill::none, std::move(part)};
}

Path line(Point from, Point to, Pen pen, model::PartId part) {
    return line(standing(from), standing(to), pen, std::move(part));
}

Path stroke_through(const std::vector<Point>& points, Pen pen, model::PartId part) {
    return {{places(points)}, false, pen, Fill::none, std::move(part)};
}

Path area(const std::vector<Point>& corners, Pen pen, Fill fill, model::PartId part) {
    return {{places(corners)}, true, pen, fill, std::move(part)};
}

Path rectangle(const Box& box, Pen pen, Fill fill, model::PartId part) {
    return area(corners(box), pen, fill, std::move(part));
}

Path rectangle_mm(const Place& place, Point low_mm, Point size_mm, Pen pen, Fill fill, model::PartId part) {
    std::vector<Place> contour;
    for (const Point& corner : corners({low_mm, {low_mm.x + size_mm.x, low_mm.y + size_mm.y}}))
        contour.push_back(moved_mm(place, corner.x, corner.y));
    return {{std::move(contour)}, true, pen, fill, std::move(part)};
}

Box around(const std::vector<Point>& points) {
    if (points.empty()) return {};
    Box box{points.front(), points.front()};
    for (const Point& point : points) box = around(box, {point, point});
    return box;
}

Box around(const Box& one, const Box& other) {
    return {{std::min(one.low.x, other.low.x), std::min(one.low.y, other.low.y)},
            {std::max(one.high.x, other.high.x), std::max(one.high.y, other.high.y)}};
}

Box grown(const Box& box, double by_in) {
    return {{box.low.x - by_in, box.low.y - by_in}, {box.high.x + by_in, box.high.y + by_in}};
}

Box common(const Box& one, const Box& other) {
    const Point low{std::max(one.low.x, other.low.x), std::max(one.low.y, other.low.y)};
    return {low,
            {std::max(low.x, std::min(one.high.x, other.high.x)), std::max(low.y, std::min(one.high.y, other.high.y))}};
}

double width(const Box& box) { return box.high.x - box.low.x; }
double height(const Box& box) { return box.high.y - box.low.y; }
Point middle(const Box& box) { return {0.5 * (box.low.x + box.high.x), 0.5 * (box.low.y + box.high.y)}; }
bool has_area(const Box& box) { return width(box) > 0.0 && height(box) > 0.0; }

namespace {

/// No sheet, and no surface's arithmetic, goes beyond this.
constexpr double largest_in = 1e6;

/// Half the size of a drawing with nothing in it.
constexpr double fallback_in = 3.0;

bool drawable(double value) { return std::abs(value) <= largest_in; }
bool drawable(const Point& point) { return drawable(point.x) && drawable(point.y); }
bool drawable(const Place& place) { return drawable(place.at) && drawable(place.paper_mm); }

template <class Range>
bool all_drawable(const Range& range) {
    return std::all_of(range.begin(), range.end(), [](const auto& one) { return drawable(one); });
}

bool drawable(const Path& path) {
    return !path.contours.empty() && std::all_of(path.contours.begin(), path.contours.end(), [](const auto& contour) {
        return !contour.empty() && all_drawable(contour);
    });
}

bool drawable(const Circle& circle) {
    return drawable(circle.center) && drawable(circle.radius_in) && drawable(circle.radius_mm) &&
           circle.radius_in + circle.radius_mm >= 0.0;
}

bool drawable(const Text& text) {
    return drawable(text.at) && std::isfinite(text.angle_deg) && (!text.aside || drawable(text.aside->at));
}
bool drawable(const Shading& shading) { return all_drawable(shading.nodes) && all_drawable(shading.level); }

}  // namespace

Scene finished(Scene scene) {
    const auto beyond = [](const Item& item) {
        return !std::visit([](const auto& one) { return drawable(one); }, item);
    };
    scene.items.erase(std::remove_if(scene.items.begin(), scene.items.end(), beyond), scene.items.end());
    if (!drawable(scene.bounds.low) || !drawable(scene.bounds.high)) scene.bounds = {};
    if (!has_area(scene.bounds)) scene.bounds = grown(scene.bounds, fallback_in);
    return scene;
}

}  // namespace toehold::drawing
