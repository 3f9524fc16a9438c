#include "session/region_scene.h"

#include "drawing/scene/shapes.h"
#include "model/placement.h"

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

/// A stretch of the border that one limit stops.
struct Stretch {
    study::Limit limit;
    std::vector<std::pair<Point, Point>> pieces;
    double long_in = 0.0;
};

Point point(const model::Position& at) { return {at.x_in, at.y_in}; }

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
    const editing::Extent extent = editing::extent_across(detail, news.dragged, along);
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

void add_area(Scene& scene, const std::vector<Point>& corners) {
    scene.items.emplace_back(drawing::area(corners, Pen::none, Fill::holding));
}

std::vector<Stretch> stretches(const std::vector<study::RegionBorder>& border, const std::optional<Across>& across) {
    std::vector<Stretch> found;
    for (const study::RegionBorder& piece : border) {
        auto same = std::find_if(found.begin(), found.end(),
                                 [&](const Stretch& one) { return one.limit.id == piece.limit.id; });
        if (same == found.end()) same = found.insert(found.end(), {piece.limit, {}, 0.0});
        const Point from = across ? across->end(piece.from.x_in, false) : point(piece.from);
        const Point to = across ? across->end(piece.from.x_in, true) : point(piece.to);
        same->pieces.emplace_back(from, to);
        same->long_in += std::hypot(to.x - from.x, to.y - from.y);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Stretch& one, const Stretch& other) { return one.long_in > other.long_in; });
    return found;
}

drawing::Text label(const Point& at, const std::string& words) {
    drawing::Text text;
    text.at = {at, {0.0, 0.0}};
    text.words = words;
    text.size = drawing::TextSize::small;
    text.across = drawing::Across::middle;
    text.upright = drawing::Upright::middle;
    text.on_paper = true;
    return text;
}

/// The middle of the piece in the middle of the stretch.
Point middle_of(const Stretch& stretch) {
    const auto& [from, to] = stretch.pieces[stretch.pieces.size() / 2];
    return {0.5 * (from.x + to.x), 0.5 * (from.y + to.y)};
}

void add_border(Scene& scene, const std::vector<Stretch>& all, bool provisional, const format::Locale& locale) {
    constexpr std::size_t named = 4;
    for (const Stretch& stretch : all) {
        for (const auto& [from, to] : stretch.pieces)
            scene.items.emplace_back(drawing::line(from, to, provisional ? Pen::hidden : Pen::cut));
    }
    for (std::size_t at = 0; at < std::min(all.size(), named); ++at) {
        const format::Phrase& title = all[at].limit.title;
        if (title.empty()) continue;
        scene.items.emplace_back(label(middle_of(all[at]), format::text(title, locale)));
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
    for (const study::Polygon& polygon : news.region.holds) {
        if (across) {
            const double from = polygon.front().x_in, to = polygon.back().x_in;
            add_area(scene, {across->end(from, false), across->end(to, false), across->end(to, true),
                             across->end(from, true)});
        } else {
            std::vector<Point> corners;
            for (const model::Position& corner : polygon) corners.push_back(point(corner));
            add_area(scene, corners);
        }
    }
    add_border(scene, stretches(news.region.border, across), news.region.provisional, locale);
    return scene;
}

}  // namespace toehold::session
