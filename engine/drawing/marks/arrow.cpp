#include "drawing/marks/arrow.h"

#include "drawing/marks/shapes.h"

#include <cmath>
#include <numbers>

namespace toehold::drawing {
namespace {

Point unit(Point direction) {
    const double length = std::hypot(direction.x, direction.y);
    return length > 0.0 ? Point{direction.x / length, direction.y / length} : Point{0.0, 1.0};
}

}  // namespace

Path arrow_head(const Place& tip, Point direction, const ArrowStyle& style) {
    const Point along = unit(direction);
    const double half_mm = 0.5 * style.head_width_mm;
    const Place base = moved_mm(tip, -style.head_mm * along.x, -style.head_mm * along.y);
    return {{{tip, moved_mm(base, -half_mm * along.y, half_mm * along.x),
              moved_mm(base, half_mm * along.y, -half_mm * along.x)}},
            true,
            Pen::none,
            style.fill,
            style.part};
}

void add_arrow(Scene& scene, const Place& tail, const Place& tip, Point direction, const ArrowStyle& style) {
    const Point along = unit(direction);
    const double into_head_mm = 0.8 * style.head_mm;
    scene.items.emplace_back(
        line(tail, moved_mm(tip, -into_head_mm * along.x, -into_head_mm * along.y), style.pen, style.part));
    scene.items.emplace_back(arrow_head(tip, direction, style));
}

void add_turn(Scene& scene, const Place& center, double radius_mm, bool clockwise, const ArrowStyle& style) {
    constexpr int chords = 24;
    constexpr double three_quarters = 1.5 * std::numbers::pi;
    const double from = clockwise ? 1.25 * std::numbers::pi : -0.25 * std::numbers::pi;
    const double turn = clockwise ? -three_quarters : three_quarters;
    std::vector<Place> arc;
    double angle = from;
    for (int index = 0; index <= chords; ++index) {
        angle = from + turn * index / chords;
        arc.push_back(moved_mm(center, radius_mm * std::cos(angle), radius_mm * std::sin(angle)));
    }
    const double sense = clockwise ? -1.0 : 1.0;
    const Point tangent{-sense * std::sin(angle), sense * std::cos(angle)};
    const Place tip = moved_mm(arc.back(), style.head_mm * tangent.x, style.head_mm * tangent.y);
    scene.items.emplace_back(Path{{std::move(arc)}, false, style.pen, Fill::none, style.part});
    scene.items.emplace_back(arrow_head(tip, tangent, style));
}

}  // namespace toehold::drawing
