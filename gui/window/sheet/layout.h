#pragma once
// Where the drawings stand on the drafting sheet: on screen and on paper alike. Areas in units of the surface.
#include "drawing/scene/view.h"

#include <array>
#include <optional>

namespace toehold::window {

enum class CellKind { plan, section, elevation, rose };
inline constexpr std::array cell_kinds{CellKind::plan, CellKind::section, CellKind::elevation, CellKind::rose};
[[nodiscard]] constexpr std::size_t index_of(CellKind kind) { return static_cast<std::size_t>(kind); }

/// A part of the sheet with one drawing; without width where another cell has been given all the room.
struct CellAreas {
    drawing::Area frame;    ///< all of it; neighbours share their edges
    drawing::Area drawing;  ///< for the drawing
    drawing::Area title;    ///< below it, for what it is and its scale
};

struct SheetCells {
    drawing::Area border;            ///< the frame around the sheet
    std::array<CellAreas, 4> cells;  ///< by `index_of`
    drawing::Area title_block;       ///< bottom right
};

/// `alone`: the one cell that has the room of all. A sheet wider than high has the plan at its left; a high one has it
/// on top.
[[nodiscard]] SheetCells sheet_cells(const drawing::Area& sheet, double units_per_mm,
                                     std::optional<CellKind> alone = std::nullopt);

/// Units for a millimeter of a drawing's own lettering: on screen a small cell has it smaller than the sheet's.
[[nodiscard]] double lettering_units(const drawing::Area& area, double units_per_mm);

[[nodiscard]] bool contains(const drawing::Area& area, drawing::Point point);
[[nodiscard]] drawing::Area inset(const drawing::Area& area, double by);

}  // namespace toehold::window
