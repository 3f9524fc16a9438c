#pragma once
// What lies over a drawing while the hand is on the sheet: handles, what an edit has caught on, the rubber band.
#include "editing/handles.h"

#include <optional>
#include <vector>

namespace toehold::window {

struct LiveMarks {
    std::vector<editing::Handle> handles;  ///< to be shown as such
    std::optional<editing::HandleId> hot;  ///< the handle under the pointer
    std::vector<editing::SnapLine> caught;
    std::optional<drawing::Box> band;     ///< in of the drawing
    std::optional<drawing::Point> ghost;  ///< where a tool would set its thing
};

[[nodiscard]] drawing::Scene live_scene(const LiveMarks& marks, const format::Locale& locale);

}  // namespace toehold::window
