#pragma once
// Arrows, break lines, and the frames that say a status; all keep their size on paper.
#include "checks/result.h"
#include "drawing/scene/scene.h"

#include <optional>
#include <string>

namespace toehold::drawing {

struct ArrowStyle {
    Pen pen = Pen::demand;
    Fill fill = Fill::demand;
    double head_mm = 3.0;        ///< length of the head
    double head_width_mm = 1.8;  ///< across it
    model::PartId part;
};

/// A head with its tip at the place, pointing along `direction` (any length but 0).
[[nodiscard]] Path arrow_head(const Place& tip, Point direction, const ArrowStyle& style);
/// Shaft from tail to tip, and the head. Tail and tip lie along `direction` on paper.
void add_arrow(Scene& scene, const Place& tail, const Place& tip, Point direction, const ArrowStyle& style);
/// Three quarters of a turn about a place, clockwise or not, with a head at its end: a moment.
void add_turn(Scene& scene, const Place& center, double radius_mm, bool clockwise, const ArrowStyle& style);

/// The part of a rectangle inside the window; its sides are stroked where they are its own, broken where the window
/// cuts it off to the left or right. Nothing where the two have no area in common.
void add_broken_rectangle(Scene& scene, const Box& box, const Box& window, Pen pen, Fill fill,
                          const model::PartId& part);
/// Upright, or level, from one end to the other, with the double bend of a break in its middle.
void add_break_line(Scene& scene, Point from, Point to, const model::PartId& part);

/// Plain where it holds, heavy and doubled where it fails, broken where there is no path, dotted where evidence is
/// missing.
[[nodiscard]] Pen frame_pen(checks::Status status);
/// A thin ring where nothing was checked.
[[nodiscard]] Pen frame_pen(const std::optional<checks::Status>& status);
/// How wide the frame around a letter or a short id is, mm.
[[nodiscard]] double frame_width_mm(const std::string& words);
inline constexpr double frame_height_mm = 4.6;
/// Words in a frame whose lower left corner stands at the place.
void add_framed(Scene& scene, const Place& low, const std::string& words, Pen frame, const model::PartId& part);

}  // namespace toehold::drawing
