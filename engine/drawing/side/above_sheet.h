#pragma once
// What the parts of the view from above share, and the parts themselves. Coordinates: x and y.
#include "drawing/side/shape.h"

namespace toehold::drawing::side {

struct AboveSheet {
    const Subject& subject;
    Shape shape;
    std::vector<Fixing> fixings;  ///< the highest last, which is seen
    Box post, shown;
};
[[nodiscard]] AboveSheet above_sheet(const Subject& subject);

void add_above_members(Scene& scene, const AboveSheet& sheet);
/// Layers and bracket plate between post and member.
void add_above_between(Scene& scene, const AboveSheet& sheet);
/// As lines along y with heads, nuts and what is under them.
void add_above_fasteners(Scene& scene, const AboveSheet& sheet);
/// Past the member along their line of force.
void add_above_ties(Scene& scene, const AboveSheet& sheet);
/// Where a tie's name stands.
[[nodiscard]] Point tie_end(const AboveSheet& sheet, const model::TensionTie& tie);

}  // namespace toehold::drawing::side
