#pragma once
// The sign of a fillet weld all round, as AWS A2.4 draws it (from memory): arrow to the joint, circle at the arrow's
// bend, reference line, the triangle below it for the arrow's side with its upright leg to the left, size to its left.
#include "drawing/scene/scene.h"

#include <string>

namespace toehold::paper::shop {

/// mm from the arrow's tip to the sign's right end, and to its reference line.
[[nodiscard]] double fillet_sign_reach_mm(const std::string& size);
inline constexpr double fillet_sign_height_mm = 15.0;

void add_fillet_sign(drawing::Scene& scene, const drawing::Place& tip, const std::string& size);

}  // namespace toehold::paper::shop
