#pragma once
// What the pointer is over while no button is down: the part that answers, the handle that could be taken, the place
// where a tool would set its thing.
#include "window/sheet/state.h"

#include <wx/cursor.h>

#include <optional>
#include <vector>

namespace toehold::window {

class Hover {
  public:
    /// The state outlives this.
    explicit Hover(SheetState& sheet) : sheet_(sheet) {}

    struct Change {
        bool to_paint = false, another_part = false;
    };
    Change move(const Pointer& pointer);
    void leave();

    [[nodiscard]] std::optional<CellKind> cell() const { return cell_; }
    [[nodiscard]] const model::PartId& part() const { return target_.part; }
    [[nodiscard]] wxStockCursor cursor() const;
    /// The marks over its cell, with the handles that can be taken there.
    [[nodiscard]] LiveMarks marks();

  private:
    SheetState& sheet_;
    std::optional<CellKind> cell_;
    Target target_;
};

/// The cursor of a tool away from every part.
[[nodiscard]] wxStockCursor cursor_of(Tool tool);

}  // namespace toehold::window
