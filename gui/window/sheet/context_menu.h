#pragma once
// The context menu of the sheet, by the right button or the menu key: what can be done with a part, with a place of the
// plan, and with a drawing.
#include "window/sheet/state.h"

#include <optional>

class wxWindow;

namespace toehold::window {

class SheetCanvas;

/// What a menu is about.
struct MenuSubject {
    model::PartId part;                    ///< of no kind: none
    std::optional<model::Position> at_in;  ///< the place in plan, where there is one
};
[[nodiscard]] MenuSubject menu_of_selection(const SheetState& sheet);
[[nodiscard]] MenuSubject menu_at(SheetState& sheet, CellKind cell, drawing::Point on_sheet);

/// Selects the part, asks, and does what is chosen.
void show_context_menu(SheetCanvas& canvas, SheetState& sheet, const MenuSubject& subject);

/// The keyboard goes to the entry in which the selected part's place is typed, if the window has one.
void focus_place_entry(wxWindow& window);

}  // namespace toehold::window
