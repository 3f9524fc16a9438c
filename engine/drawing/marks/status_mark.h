#pragma once
// A status as the frame around a thing, and what the frame holds.
#include "checks/result.h"
#include "drawing/scene.h"

#include <string>

namespace toehold::drawing {

/// Plain where it holds, heavy and doubled where it fails, broken where there is no path, dotted where evidence is
/// missing.
[[nodiscard]] Pen frame_pen(checks::Status status);
/// How wide the frame around a letter or a short id is, mm.
[[nodiscard]] double frame_width_mm(const std::string& words);
inline constexpr double frame_height_mm = 4.6;
/// Words in a frame whose lower left corner stands at the place.
void add_framed(Scene& scene, const Place& low, const std::string& words, Pen frame, const std::string& part);

}  // namespace toehold::drawing
