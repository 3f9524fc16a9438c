#include "session/region_scene.h"

#include "drawing/scene/shapes.h"
#include "model/placement.h"
#include "session/region_border.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace toehold::session {
namespace {

using drawing::Fill;
using drawing::Pen;
using drawing::Point;
using drawing::Scene;
using editing::Dragged;

Point point(const model::Position& at) { return {at.x_in, at.y_in}; }
double apart(const Point& one, const Point& other) { return std::hypot(other.x - one.x, other.y - one.y); }

/// How a coordinate of its own becomes a line across the drawing: what it runs along, and from where to where.
struct Across {
    bool upright = true;  ///< the coordinate runs along x, its lines stand upright
    double low = 0.0, high = 0.0;
    double at_zero = 0.0, sense = 1.0;  ///< place of the coordinate's zero on its axis, and which way it grows
    [[nodiscard]] double place(double value) const { return at_zero + sense * value; }
    [[nodiscard]] Point end(double value, bool upper) const {
        const double other = upper ? high : low;
        return upright ? Point{place(value), other} : Point{other, place(value)};
    }
};

Across across_plan(const solving::RegionNews& news, const model::BaseDetail& detail) {
    Across across;
    const model::PlanAxis along = news.along.value_or(model::PlanAxis::x);
    across.upright = along == model::PlanAxis::x;
    const editing::AcrossExtent extent = editing::extent_across(detail, news.dragged, along);
    across.low = extent.low;
    across.high = extent.high;
    return across;
}

/// A longer screw reaches deeper.
Across across_length(const solving::RegionNews& news, const Point& tip) {
    constexpr double half_in = 0.9;
    Across across;
    across.upright = false;
    across.low = tip.x - half_in;
    across.high = tip.x + half_in;
    across.sense = -1.0;
    across.at_zero = tip.y + news.now_in;
    return across;
}

/// Absent: of a place in the plane.
std::optional<Across> across_of(const solving::RegionNews& news, const model::BaseDetail& detail,
                                const std::optional<Point>& tip) {
    if (news.plane) return std::nullopt;
    if (news.along) return across_plan(news, detail);
    if (tip) return across_length(news, *tip);
    return std::nullopt;
}

/// One area of all the pieces, so that none shows a seam to the next.
void add_area(Scene& scene, const std::vector<study::Polygon>& pieces, const std::optional<Across>& across, Fill fill) {
    if (pieces.empty()) return;
    drawing::Path area;
    area.closed = true;
    area.pen = Pen::none;
    area.fill = fill;
    for (const study::Polygon& piece : pieces) {
        std::vector<Point> corners;
        if (across) {
            const double from = piece.front().x_in, to = piece.back().x_in;
            corners = {across->end(from, false), across->end(to, false), across->end(to, true),
                       across->end(from, true)};
        } else {
            for (const model::Position& corner : piece) corners.push_back(point(corner));
        }
        std::vector<drawing::Place>& contour = area.contours.emplace_back();
        for (const Point& corner : corners) contour.push_back(drawing::standing(corner));
    }
    scene.items.emplace_back(std::move(area));
}

/// As it is drawn: an end of an interval is a line across.
std::vector<Point> points_of(const BorderStretch& stretch, const std::optional<Across>& across) {
    if (across) {
        const double end = stretch.places.front().x_in;
        return {across->end(end, false), across->end(end, true)};
    }
    std::vector<Point> points;
    for (const model::Position& place : stretch.places) points.push_back(point(place));
    return points;
}

/// Beside the border, on the side away from `within`, so that it covers as little of the region as may be.
drawing::Text label(const Point& at, const Point& within, const std::string& words) {
    using Side = drawing::Across;
    using drawing::Upright;
    constexpr double away_mm = 1.2;
    const double right = at.x - within.x, up = at.y - within.y;
    const bool beside = std::abs(right) >= std::abs(up);
    drawing::Text text;
    text.at = {at, beside ? Point{std::copysign(away_mm, right), 0.0} : Point{0.0, std::copysign(away_mm, up)}};
    text.words = words;
    text.size = drawing::TextSize::small;
    text.across = !beside ? Side::middle : right > 0.0 ? Side::left : Side::right;
    text.upright = beside ? Upright::middle : up > 0.0 ? Upright::bottom : Upright::top;
    text.pen = Pen::handle;
    text.on_paper = true;
    return text;
}

/// Half way along.
Point middle_of(const std::vector<Point>& points) {
    double left = 0.0;
    for (std::size_t k = 1; k < points.size(); ++k) left += 0.5 * apart(points[k - 1], points[k]);
    for (std::size_t k = 1; k < points.size(); ++k) {
        const Point &from = points[k - 1], &to = points[k];
        const double length = apart(from, to);
        if (length > 0.0 && left <= length) {
            const double share = left / length;
            return {from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)};
        }
        left -= length;
    }
    return points.back();
}

/// Each limit is named once, at the longest stretch it stops.
void add_border(Scene& scene, const study::Region& region, const std::optional<Across>& across,
                const format::Locale& locale) {
    constexpr std::size_t most_named = 4;
    const std::vector<BorderStretch> all = stretches(region.border);
    for (const BorderStretch& stretch : all) {
        const Pen pen = region.provisional ? Pen::snap : Pen::handle;
        scene.items.emplace_back(drawing::stroke_through(points_of(stretch, across), pen));
    }
    std::vector<Point> corners;
    for (const BorderStretch& stretch : all) {
        for (const Point& corner : points_of(stretch, across)) corners.push_back(corner);
    }
    const Point within = drawing::middle(drawing::around(corners));
    std::vector<std::string> named;
    for (const BorderStretch& stretch : all) {
        const bool is_named = std::find(named.begin(), named.end(), stretch.limit.id) != named.end();
        if (is_named || stretch.limit.title.empty() || named.size() == most_named) continue;
        named.push_back(stretch.limit.id);
        const Point at = middle_of(points_of(stretch, across));
        scene.items.emplace_back(label(at, within, format::text(stretch.limit.title, locale)));
    }
}

}  // namespace

editing::Sheet region_sheet(const solving::RegionNews& news) {
    return news.dragged.kind == Dragged::Kind::length ? editing::Sheet::section : editing::Sheet::plan;
}

Scene region_scene(const solving::RegionNews& news, const model::BaseDetail& detail, std::optional<Point> tip,
                   const format::Locale& locale) {
    Scene scene;
    scene.name = "Where it holds";
    const std::optional<Across> across = across_of(news, detail, tip);
    if (!news.plane && !across) return scene;
    add_area(scene, news.region.likely, across, Fill::likely);
    add_area(scene, news.region.holds, across, Fill::holding);
    add_border(scene, news.region, across, locale);
    return scene;
}

}  // namespace toehold::session
