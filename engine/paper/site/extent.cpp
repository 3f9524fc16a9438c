#include "paper/site/extent.h"

#include "drawing/render/lettering.h"
#include "drawing/render/palette.h"
#include "drawing/scene/shapes.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace toehold::paper::site {
namespace {

constexpr double mm_per_in_of_paper = 25.4;
/// What hangs below the line, of the font's height.
constexpr double hanging = 0.24;

drawing::Point on_paper(const drawing::Place& place, double mm_per_in) {
    return {place.at.x * mm_per_in + place.paper_mm.x, place.at.y * mm_per_in + place.paper_mm.y};
}

drawing::Box box_of(const drawing::Path& path, double mm_per_in) {
    std::vector<drawing::Point> points;
    for (const auto& contour : path.contours) {
        for (const drawing::Place& place : contour) points.push_back(on_paper(place, mm_per_in));
    }
    return drawing::around(points);
}

drawing::Box box_of(const drawing::Circle& circle, double mm_per_in) {
    const drawing::Point center = on_paper(circle.center, mm_per_in);
    return drawing::grown({center, center}, circle.radius_in * mm_per_in + circle.radius_mm);
}

drawing::Box box_of(const drawing::Text& text, double mm_per_in) { return extent_mm(text, mm_per_in); }

drawing::Box box_of(const drawing::Shading& shading, double mm_per_in) {
    std::vector<drawing::Point> points;
    for (const drawing::Point& node : shading.nodes) points.push_back({node.x * mm_per_in, node.y * mm_per_in});
    return drawing::around(points);
}

}  // namespace

drawing::Box extent_mm(const drawing::Text& text, double mm_per_in) {
    const double below = hanging * drawing::text_height_mm(text.size), capitals = drawing::capitals_mm(text.size);
    const double wide = drawing::text_width_mm(text.words, {text.size, text.bold, text.math});
    const drawing::Point at = on_paper(text.at, mm_per_in);
    const double left = text.across == drawing::Across::left     ? at.x
                        : text.across == drawing::Across::middle ? at.x - 0.5 * wide
                                                                 : at.x - wide;
    const double foot = text.upright == drawing::Upright::bottom   ? at.y
                        : text.upright == drawing::Upright::middle ? at.y - 0.5 * capitals
                                                                   : at.y - capitals;
    return {{left, foot - below}, {left + wide, foot + capitals}};
}

drawing::Box extent_mm(const drawing::Scene& scene, double mm_per_in) {
    if (scene.items.empty()) return {};
    constexpr double far = std::numeric_limits<double>::max();
    drawing::Box all{{far, far}, {-far, -far}};
    for (const drawing::Item& item : scene.items)
        all = drawing::around(all, std::visit([&](const auto& one) { return box_of(one, mm_per_in); }, item));
    return all;
}

Placed fitted(const SceneAtScale& make, const Frame& frame, double lettering, double largest) {
    constexpr double smaller = 0.95;
    constexpr int most_tries = 90;
    const double wide_mm = frame.width / lettering, high_mm = frame.height / lettering;
    double mm_per_in = largest * mm_per_in_of_paper / lettering;
    drawing::Scene scene = make(mm_per_in);
    drawing::Box extent = extent_mm(scene, mm_per_in);
    for (int tries = 0; tries < most_tries; ++tries) {
        if (drawing::width(extent) <= wide_mm && drawing::height(extent) <= high_mm) break;
        mm_per_in *= smaller;
        scene = make(mm_per_in);
        extent = extent_mm(scene, mm_per_in);
    }
    const drawing::Point middle = drawing::middle(extent);
    return {
        std::move(scene),
        {},
        {frame.left + 0.5 * frame.width - lettering * middle.x, frame.top + 0.5 * frame.height + lettering * middle.y},
        mm_per_in * lettering / mm_per_in_of_paper,
        lettering};
}

double proportion(const SceneAtScale& make, double width_mm, double largest) {
    constexpr double any_height_mm = 1e4;
    const Placed placed = fitted(make, {0.0, 0.0, width_mm, any_height_mm}, 1.0, largest);
    const drawing::Box extent = extent_mm(placed.scene, placed.scale * mm_per_in_of_paper);
    return drawing::height(extent) / width_mm;
}

void Taken::take_texts(const drawing::Scene& scene) {
    for (const drawing::Item& item : scene.items) {
        if (const auto* const text = std::get_if<drawing::Text>(&item)) take(extent_mm(*text, mm_per_in_));
    }
}

bool Taken::free(const drawing::Box& box_mm) const {
    return std::none_of(boxes_mm_.begin(), boxes_mm_.end(),
                        [&](const drawing::Box& one) { return drawing::has_area(drawing::common(one, box_mm)); });
}

void Taken::add_where_free(drawing::Scene& scene, drawing::Text text, const std::vector<drawing::Place>& places) {
    constexpr double around_mm = 0.6;
    for (const drawing::Place& place : places) {
        text.at = place;
        const drawing::Box box = drawing::grown(extent_mm(text, mm_per_in_), around_mm);
        if (!free(box)) continue;
        take(box);
        scene.items.emplace_back(std::move(text));
        return;
    }
}

}  // namespace toehold::paper::site
