#include "drawing/marks/broken.h"

#include "drawing/marks/shapes.h"

namespace toehold::drawing {

void add_break_line(Scene& scene, Point from, Point to, const std::string& part) {
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
                          const std::string& part) {
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

}  // namespace toehold::drawing
