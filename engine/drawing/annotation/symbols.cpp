#include "drawing/annotation/symbols.h"

#include "drawing/scene/shapes.h"

#include <algorithm>
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

void add_break_line(Scene& scene, Point from, Point to, const model::PartId& part) {
    constexpr double reach_mm = 1.3, half_mm = 0.9;
    const bool upright = from.x == to.x;
    const Place center = standing({0.5 * (from.x + to.x), 0.5 * (from.y + to.y)});
    const auto bend = [&](double along_mm, double aside_mm) {
        return upright ? moved_mm(center, aside_mm, along_mm) : moved_mm(center, along_mm, aside_mm);
    };
    scene.items.emplace_back(Path{{{standing(from), bend(-half_mm, 0.0), bend(-0.3 * half_mm, reach_mm),
                                    bend(0.3 * half_mm, -reach_mm), bend(half_mm, 0.0), standing(to)}},
                                  false,
                                  Pen::thin,
                                  Fill::none,
                                  part});
}

void add_broken_rectangle(Scene& scene, const Box& box, const Box& window, Pen pen, Fill fill,
                          const model::PartId& part) {
    const Box shown = common(box, window);
    if (!has_area(shown)) return;
    scene.items.emplace_back(rectangle(shown, Pen::none, fill, part));
    const Point lower_right{shown.high.x, shown.low.y}, upper_left{shown.low.x, shown.high.y};
    if (box.low.y >= window.low.y) scene.items.emplace_back(line(shown.low, lower_right, pen, part));
    if (box.high.y <= window.high.y) scene.items.emplace_back(line(upper_left, shown.high, pen, part));
    if (box.low.x >= window.low.x) {
        scene.items.emplace_back(line(shown.low, upper_left, pen, part));
    } else {
        add_break_line(scene, shown.low, upper_left, part);
    }
    if (box.high.x <= window.high.x) {
        scene.items.emplace_back(line(lower_right, shown.high, pen, part));
    } else {
        add_break_line(scene, lower_right, shown.high, part);
    }
}

Pen frame_pen(checks::Status status) {
    switch (status) {
        case checks::Status::holds:
            return Pen::holds;
        case checks::Status::fails:
            return Pen::fails;
        case checks::Status::no_path:
            return Pen::no_path;
        case checks::Status::missing_evidence:
            break;
    }
    return Pen::missing;
}

Pen frame_pen(const std::optional<checks::Status>& status) { return status ? frame_pen(*status) : Pen::thin; }

double frame_width_mm(const std::string& words) {
    constexpr double character_mm = 2.1, around_mm = 2.4;
    return std::max(frame_height_mm, around_mm + character_mm * static_cast<double>(words.size()));
}

void add_framed(Scene& scene, const Place& low, const std::string& words, Pen frame, const model::PartId& part) {
    const double width_mm = frame_width_mm(words);
    scene.items.emplace_back(rectangle_mm(low, {}, {width_mm, frame_height_mm}, frame, Fill::paper, part));
    Text text;
    text.at = moved_mm(low, 0.5 * width_mm, 0.5 * frame_height_mm);
    text.words = words;
    text.across = Across::middle;
    text.upright = Upright::middle;
    text.bold = true;
    text.part = part;
    scene.items.emplace_back(std::move(text));
}

}  // namespace toehold::drawing
