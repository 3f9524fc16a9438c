#pragma once
// Arrows whose heads keep their size on paper.
#include "drawing/scene.h"

#include <string>

namespace toehold::drawing {

struct ArrowStyle {
    Pen pen = Pen::demand;
    Fill fill = Fill::demand;
    double head_mm = 3.0;        ///< length of the head
    double head_width_mm = 1.8;  ///< across it
    std::string part;
};

/// A head with its tip at the place, pointing along `direction` (any length but 0).
[[nodiscard]] Path arrow_head(const Place& tip, Point direction, const ArrowStyle& style);
/// Shaft from tail to tip, and the head. Tail and tip lie along `direction` on paper.
void add_arrow(Scene& scene, const Place& tail, const Place& tip, Point direction, const ArrowStyle& style);
/// Three quarters of a turn about a place, clockwise or not, with a head at its end: a moment.
void add_turn(Scene& scene, const Place& center, double radius_mm, bool clockwise, const ArrowStyle& style);

}  // namespace toehold::drawing
