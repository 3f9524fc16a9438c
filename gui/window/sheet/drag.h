#pragma once
// What the hand does on the sheet, as values: which handle is under it, and what a drag makes of the detail.
#include "drawing/scene/view.h"
#include "editing/handles.h"
#include "window/sheet/layout.h"

#include <optional>
#include <vector>

namespace toehold::window {

inline constexpr double reach_px = 6.0;  ///< how near the pointer must come to a thing to mean it

[[nodiscard]] constexpr std::optional<editing::Sheet> sheet_of(CellKind kind) {
    switch (kind) {
        case CellKind::plan:
            return editing::Sheet::plan;
        case CellKind::section:
            return editing::Sheet::section;
        case CellKind::elevation:
            return editing::Sheet::elevation;
        case CellKind::rose:
            return std::nullopt;
    }
    return std::nullopt;
}

/// The handle within reach of a point of the surface; of several, one of a selected part first, then the nearest.
[[nodiscard]] std::optional<editing::Handle> handle_at(const std::vector<editing::Handle>& handles,
                                                       const drawing::View& view, drawing::Point on_surface,
                                                       const std::vector<model::PartId>& selection);
/// The handle that moves a part as a whole (a hole, a block, a joist); absent for other parts.
[[nodiscard]] std::optional<editing::Handle> body_handle(const std::vector<editing::Handle>& handles,
                                                         const model::PartId& part);
[[nodiscard]] bool moves_whole_part(editing::HandleKind kind);

/// A handle held since the button went down.
struct Hold {
    model::BaseDetail start;  ///< the detail before
    editing::SheetPlace place;
    editing::Handle handle;
    drawing::Point grip;                  ///< from the pointer to the handle, in
    std::vector<model::PartId> together;  ///< selected parts that move with it
};

struct Habits {
    bool snap = true;
    bool one_axis = false;
};

/// The hold taken to where the pointer is.
[[nodiscard]] editing::Moved take(const Hold& hold, drawing::Point pointer, editing::SnapRules rules, Habits habits);

/// Direction of a push taken by hand about the post: to whole steps of 5 degrees unless free. `offset_rad`: what the
/// push had more than the pointer when it was taken.
[[nodiscard]] double turned(drawing::Point pointer, double offset_rad, bool free);
[[nodiscard]] double angle_rad(drawing::Point from_origin);
/// From 0 up to a full turn.
[[nodiscard]] double whole_turn(double angle_rad);
[[nodiscard]] double by_degrees(double direction_rad, double degrees);

}  // namespace toehold::window
