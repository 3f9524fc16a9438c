#include "drawing/render/contour.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace toehold::drawing::render {
namespace {

double distance_to_segment(Point point, Point from, Point to) {
    const double dx = to.x - from.x, dy = to.y - from.y;
    const double squared = dx * dx + dy * dy;
    const double along = squared > 0.0 ? ((point.x - from.x) * dx + (point.y - from.y) * dy) / squared : 0.0;
    const double t = std::clamp(along, 0.0, 1.0);
    return std::hypot(point.x - from.x - t * dx, point.y - from.y - t * dy);
}

struct Side {
    double nx = 0.0, ny = 0.0;  ///< unit normal, to the left
};

std::optional<Side> side(Point from, Point to) {
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    if (!(length > 0.0)) return std::nullopt;
    return Side{(to.y - from.y) / length, -(to.x - from.x) / length};
}

/// Step from a corner to the corner of the line beside it.
Point corner_step(const std::optional<Side>& before, const std::optional<Side>& after, double by) {
    if (!before && !after) return {};
    const Side one = before.value_or(after.value_or(Side{}));
    const Side two = after.value_or(one);
    const double nx = one.nx + two.nx, ny = one.ny + two.ny;
    const double squared = nx * nx + ny * ny;
    constexpr double sharpest = 1.0;  // the mitre is 2 / |n1 + n2| long: no longer than twice the offset
    const double scale = 2.0 * by / std::max(squared, sharpest);
    return {nx * scale, ny * scale};
}

double pixel_middle(double value, double pixel) { return (std::floor(value / pixel) + 0.5) * pixel; }

}  // namespace

std::vector<Contour> on_surface(const Path& path, const View& view) {
    std::vector<Contour> contours;
    contours.reserve(path.contours.size());
    for (const std::vector<Place>& places : path.contours) {
        Contour& contour = contours.emplace_back();
        contour.reserve(places.size());
        for (const Place& place : places) contour.push_back(to_surface(view, place));
    }
    return contours;
}

Box bounds(const std::vector<Contour>& contours) {
    constexpr double far = std::numeric_limits<double>::infinity();
    Box box{{far, far}, {-far, -far}};
    for (const Contour& contour : contours) {
        for (const Point& point : contour) {
            box.low = {std::min(box.low.x, point.x), std::min(box.low.y, point.y)};
            box.high = {std::max(box.high.x, point.x), std::max(box.high.y, point.y)};
        }
    }
    return box.low.x <= box.high.x ? box : Box{};
}

bool meet(const Box& one, const Box& other) {
    return one.low.x <= other.high.x && other.low.x <= one.high.x && one.low.y <= other.high.y &&
           other.low.y <= one.high.y;
}

double distance(Point point, const Contour& contour, bool closed) {
    double nearest = std::numeric_limits<double>::infinity();
    if (contour.size() == 1) return distance_to_segment(point, contour.front(), contour.front());
    for (std::size_t i = 1; i < contour.size(); ++i)
        nearest = std::min(nearest, distance_to_segment(point, contour[i - 1], contour[i]));
    if (closed && contour.size() > 2)
        nearest = std::min(nearest, distance_to_segment(point, contour.back(), contour.front()));
    return nearest;
}

bool inside(Point point, const std::vector<Contour>& contours) {
    bool in = false;
    for (const Contour& contour : contours) {
        for (std::size_t i = 0; i < contour.size(); ++i) {
            const Point a = contour[i], b = contour[(i + 1) % contour.size()];
            const bool crosses = (a.y > point.y) != (b.y > point.y);
            if (crosses && point.x < a.x + (point.y - a.y) * (b.x - a.x) / (b.y - a.y)) in = !in;
        }
    }
    return in;
}

Contour beside(const Contour& contour, bool closed, double by) {
    Contour offset;
    offset.reserve(contour.size());
    const std::size_t count = contour.size();
    for (std::size_t i = 0; i < count; ++i) {
        std::optional<Side> before, after;
        if (i > 0 || closed) before = side(contour[(i + count - 1) % count], contour[i]);
        if (i + 1 < count || closed) after = side(contour[i], contour[(i + 1) % count]);
        const Point step = corner_step(before, after, by);
        offset.push_back({contour[i].x + step.x, contour[i].y + step.y});
    }
    return offset;
}

Contour sharpened(const Contour& contour, bool closed, double pixel) {
    constexpr double level = 1e-6;
    Contour sharp = contour;
    const std::size_t sides = closed ? contour.size() : contour.size() - std::min<std::size_t>(1, contour.size());
    for (std::size_t i = 0; i < sides; ++i) {
        const std::size_t next = (i + 1) % contour.size();
        const Point a = contour[i], b = contour[next];
        if (std::abs(a.x - b.x) < level) sharp[i].x = sharp[next].x = pixel_middle(a.x, pixel);
        if (std::abs(a.y - b.y) < level) sharp[i].y = sharp[next].y = pixel_middle(a.y, pixel);
    }
    return sharp;
}

}  // namespace toehold::drawing::render
