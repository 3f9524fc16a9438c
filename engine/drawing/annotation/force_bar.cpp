#include "drawing/annotation/force_bar.h"

#include "drawing/scene/shapes.h"

#include <algorithm>

namespace toehold::drawing {
namespace {

double largest_pull(const AnchorMark& mark) { return std::max(mark.largest_tension_lb, mark.tension_lb.value_or(0.0)); }

/// A bar from the start over `length_mm`, `inset_mm` in from the edges of the row.
Path bar(const Place& start, bool to_the_right, double length_mm, double inset_mm, Pen pen, Fill fill,
         const model::PartId& part) {
    return rectangle_mm(start, {to_the_right ? 0.0 : -length_mm, inset_mm}, {length_mm, bar_height_mm - 2.0 * inset_mm},
                        pen, fill, part);
}

/// Three sides of a bar: its end lies beyond the paper.
Path open_bar(const Place& start, double end_mm, Pen pen, const model::PartId& part) {
    return {{{moved_mm(start, end_mm, 0.0), start, moved_mm(start, 0.0, bar_height_mm),
              moved_mm(start, end_mm, bar_height_mm)}},
            false,
            pen,
            Fill::paper,
            part};
}

}  // namespace

BarScale bar_scale(const Overlay& overlay) {
    constexpr double capacity_at_most = 4.0;
    double pull_lb = 0.0, capacity_lb = 0.0;
    for (const AnchorMark& mark : overlay.anchors) {
        pull_lb = std::max(pull_lb, largest_pull(mark));
        capacity_lb = std::max(capacity_lb, mark.capacity_lb.value_or(0.0));
    }
    BarScale scale;
    const double longest_lb =
        std::max(pull_lb, pull_lb > 0.0 ? std::min(capacity_lb, capacity_at_most * pull_lb) : capacity_lb);
    if (longest_lb > 0.0) scale.mm_per_lb = scale.longest_mm / longest_lb;
    return scale;
}

void add_force_bar(Scene& scene, const Place& start, bool to_the_right, const AnchorMark& mark, const BarScale& scale,
                   bool stale) {
    const model::PartId& part = mark.part;
    const double sign = to_the_right ? 1.0 : -1.0;
    if (mark.capacity_lb && *mark.capacity_lb > 0.0) {
        const double length_mm = scale.mm_per_lb * *mark.capacity_lb;
        if (length_mm > scale.longest_mm * 1.001) {
            scene.items.emplace_back(open_bar(start, sign * scale.longest_mm, Pen::capacity, part));
        } else {
            scene.items.emplace_back(bar(start, to_the_right, length_mm, 0.0, Pen::capacity, Fill::paper, part));
        }
    }
    if (mark.tension_lb && *mark.tension_lb > 0.0) {
        scene.items.emplace_back(bar(start, to_the_right, scale.mm_per_lb * *mark.tension_lb, 0.7, Pen::none,
                                     stale ? Fill::demand_pale : Fill::demand, part));
    }
    const double largest_mm = sign * scale.mm_per_lb * largest_pull(mark);
    if (largest_pull(mark) > 0.0) {
        scene.items.emplace_back(line(moved_mm(start, largest_mm, -0.5),
                                      moved_mm(start, largest_mm, bar_height_mm + 0.5), stale ? Pen::thin : Pen::demand,
                                      part));
    }
    scene.items.emplace_back(
        line(moved_mm(start, 0.0, -0.5), moved_mm(start, 0.0, bar_height_mm + 0.5), Pen::holds, part));
}

}  // namespace toehold::drawing
