#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/annotation/symbols.h"
#include "drawing/elevation/sheet.h"
#include "drawing/scene/shapes.h"
#include "format/figures.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

constexpr double along_the_rail = 0.05;

ArrowStyle style_of(const Overlay& overlay) {
    ArrowStyle style;
    style.head_mm = 4.2;
    style.head_width_mm = 2.6;
    style.part = {model::PartKind::push};
    if (overlay.stale) {
        style.pen = Pen::thin;
        style.fill = Fill::demand_pale;
    }
    return style;
}

Text push_text(const Place& at, std::string words, const Overlay& overlay, Across across) {
    Text text;
    text.at = at;
    text.words = std::move(words);
    text.across = across;
    text.pen = overlay.stale ? Pen::dimension : Pen::demand;
    text.on_paper = true;
    text.part = {model::PartKind::push};
    return text;
}

/// Toward the reader a point in a ring, away from the reader a cross in it.
void add_push_along_rail(Scene& scene, const Place& at, bool toward_reader, const ArrowStyle& style) {
    constexpr double ring_mm = 2.6, point_mm = 0.7;
    scene.items.emplace_back(Circle{at, 0.0, ring_mm, style.pen, Fill::paper, {model::PartKind::push}});
    if (toward_reader) {
        scene.items.emplace_back(Circle{at, 0.0, point_mm, Pen::none, style.fill, {model::PartKind::push}});
        return;
    }
    const double reach = ring_mm * std::sqrt(0.5);
    for (const double slope : {-1.0, 1.0}) {
        scene.items.emplace_back(line(moved_mm(at, -reach, -slope * reach), moved_mm(at, reach, slope * reach),
                                      style.pen, {model::PartKind::push}));
    }
}

void add_moment(Scene& scene, const ElevationSheet& sheet, const Overlay& overlay, double side) {
    constexpr double radius_mm = 5.5;
    const PushShown& push = *overlay.push;
    const Place foot = standing({0.0, sheet.plate.high.y}, {0.0, 1.0});
    ArrowStyle style = style_of(overlay);
    style.head_mm = 2.6;
    style.head_width_mm = 2.0;
    if (std::abs(std::sin(push.direction_rad)) > along_the_rail) add_turn(scene, foot, radius_mm, side > 0.0, style);
    const std::string moment = format::figure_text(push.push_lb * push.height_in, "lb-in", overlay.locale.system);
    Text text = push_text(standing({-side * 0.5 * sheet.post_in, sheet.plate.high.y}, {-side * 9.5, 4.0}),
                          words_of_today(moment, overlay.stale), overlay, side > 0.0 ? Across::right : Across::left);
    text.size = TextSize::small;
    scene.items.emplace_back(std::move(text));
}

}  // namespace

void add_push_at(Scene& scene, const PushPlace& place, const Overlay& overlay) {
    constexpr double line_mm = 3.6;
    const PushShown& push = *overlay.push;
    const double side = place.side, outward = std::sin(push.direction_rad);
    const ArrowStyle style = style_of(overlay);
    const Place face = standing({-side * place.half_post_in, place.height_in});
    if (std::abs(outward) < along_the_rail) {
        add_push_along_rail(scene, standing({0.0, place.height_in}), std::cos(push.direction_rad) > 0.0, style);
    } else {
        add_arrow(scene, moved_mm(face, -side * place.shaft_mm, 0.0), face, {side, 0.0}, style);
    }
    const Across across = side > 0.0 ? Across::right : Across::left;
    Text words = push_text(moved_mm(face, -side * 5.0, 2.0 + line_mm), push_words(push, overlay), overlay, across);
    words.bold = true;
    scene.items.emplace_back(std::move(words));
    std::string toward = direction_words(push, overlay.locale);
    if (push.governing) toward = format::text(format::phrase("{}, governing", toward), overlay.locale);
    Text direction = push_text(moved_mm(face, -side * 5.0, 2.0), toward, overlay, across);
    direction.size = TextSize::small;
    scene.items.emplace_back(std::move(direction));
}

void add_elevation_push(Scene& scene, const ElevationSheet& sheet) {
    const Overlay* const overlay = sheet.subject.overlay;
    if (overlay == nullptr || !overlay->push) return;
    const double side = push_side(sheet);
    add_push_at(scene, {0.5 * sheet.post_in, overlay->push->height_in, side}, *overlay);
    add_moment(scene, sheet, *overlay, side);
}

}  // namespace toehold::drawing
