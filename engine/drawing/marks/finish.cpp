#include "drawing/marks/finish.h"

#include "drawing/marks/shapes.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
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

bool drawable(const Text& text) { return drawable(text.at) && std::isfinite(text.angle_deg); }
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
