#pragma once
// What each cell of the sheet shows of the desk, and the words under it.
#include "desk/desk.h"
#include "drawing/drawings.h"
#include "window/sheet/sheet_layout.h"

#include <string>
#include <vector>

namespace toehold::window {

/// What the drawings are asked for beyond the desk's own display.
struct Wishes {
    drawing::SectionPlane plane;        ///< of the section
    std::vector<std::string> measured;  ///< parts under the hand: dimensioned to the plate's edges
};

[[nodiscard]] drawing::Scene cell_scene(CellKind kind, const desk::Desk& desk, const drawing::Overlay& overlay,
                                        const Wishes& wishes);

/// `PLAN`, `SECTION A-A at x = 2 in` ... in the reader's language.
[[nodiscard]] std::string cell_title(CellKind kind, const desk::Desk& desk, const Wishes& wishes);
/// `SCALE 1 : 4`; for the rose, which has no scale, what its outer circle stands for.
[[nodiscard]] std::string cell_scale(CellKind kind, const desk::Desk& desk, const drawing::View& view);
/// Title with the scale under it, in paper of a title area.
[[nodiscard]] drawing::Scene title_scene(const std::string& title, const std::string& scale, double width_mm,
                                         double height_mm);

}  // namespace toehold::window
