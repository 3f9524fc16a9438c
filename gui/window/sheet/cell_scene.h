#pragma once
// What each cell of the sheet shows of the session, and the words under it.
#include "drawing/drawings.h"
#include "model/part.h"
#include "window/sheet/layout.h"

#include <string>
#include <vector>

namespace toehold::drawing {
struct Overlay;
}
namespace toehold::session {
class Session;
}

namespace toehold::window {

/// What the drawings are asked for beyond the session's own display.
struct Wishes {
    drawing::SectionPlane plane;          ///< of the section
    std::vector<model::PartId> measured;  ///< parts under the hand: dimensioned to the plate's edges
};

[[nodiscard]] drawing::Scene cell_scene(CellKind kind, const session::Session& session, const drawing::Overlay& overlay,
                                        const Wishes& wishes);

/// `PLAN`, `SECTION A-A at x = 2 in` ... in the reader's language.
[[nodiscard]] std::string cell_title(CellKind kind, const session::Session& session, const Wishes& wishes);
/// `SCALE 1 : 4`; for the rose, which has no scale, what its outer circle stands for.
[[nodiscard]] std::string cell_scale(CellKind kind, const session::Session& session, const drawing::View& view);
/// Title with the scale under it, in paper of a title area.
[[nodiscard]] drawing::Scene title_scene(const std::string& title, const std::string& scale, double width_mm,
                                         double height_mm);

}  // namespace toehold::window
