#pragma once
// The symbol of the weld at the post's foot, as AWS A2.4 draws it (from memory): arrow to the joint, a circle at the
// arrow's bend where it runs all around, reference line; below it the sign for the arrow's side, above it the same for
// the plate's other face: of a fillet a triangle with its upright leg to the left, of a groove the single bevel. To the
// sign's left its size, the effective throat in brackets; in the tail CJP of a complete penetration groove, and the
// sides where it does not run all around.
#include "drawing/scene/scene.h"
#include "model/post.h"
#include "units/quantity.h"

#include <string>

namespace toehold::paper::shop {

struct WeldSign {
    std::string size;  ///< `3/16`, `(1/8)`; of a complete penetration groove none
    bool groove = false;
    bool all_around = true;
    bool both_faces = false;
    std::string tail;  ///< empty: no tail
};
/// `sides`: as the drawing words them, empty for all around.
[[nodiscard]] WeldSign weld_sign(const model::Weld& weld, units::System system, const std::string& sides);

/// mm from the arrow's tip to the sign's right end, and to its reference line.
[[nodiscard]] double weld_sign_reach_mm(const WeldSign& sign);
inline constexpr double weld_sign_height_mm = 15.0;

void add_weld_sign(drawing::Scene& scene, const drawing::Place& tip, const WeldSign& sign);

}  // namespace toehold::paper::shop
