#pragma once
// What the jobs on the sheet share: painting, the pointer, the keyboard and the menu each read and change this.
#include "editing/snap.h"
#include "session/where_it_holds.h"
#include "window/sheet/live_marks.h"
#include "window/sheet/view.h"

#include <functional>
#include <optional>
#include <utility>

namespace toehold::window {

/// What a press on the sheet does.
enum class Tool {
    select,  ///< picks and moves
    hole,    ///< sets a hole in the plan
    corner,  ///< sets a corner into the nearest side of the plate
    block,   ///< sets a block between the joists there
    pan,     ///< moves the drawing under the window
};
/// Whether a press in the plan adds something to the detail.
[[nodiscard]] constexpr bool adds_something(Tool tool) { return tool != Tool::select && tool != Tool::pan; }

/// Lengths of one press of an arrow key, in.
struct NudgeSteps {
    double fine = 1.0 / 32;  ///< with Ctrl
    double plain = 1.0 / 8;  ///< the key alone
    double coarse = 1.0;     ///< with Shift
    friend bool operator==(const NudgeSteps&, const NudgeSteps&) = default;
};
/// 1/32, 1/8 and 1 in, or 0.5, 2 and 25 mm.
[[nodiscard]] constexpr NudgeSteps customary_nudge(units::System system) {
    constexpr double mm = 1 / 25.4;
    return system == units::System::us ? NudgeSteps{} : NudgeSteps{0.5 * mm, 2 * mm, 25 * mm};
}

/// The pointer on the sheet, in the sheet's units, with the keys that change what it does.
struct Pointer {
    drawing::Point at;
    bool shift = false, alt = false;
};

struct SheetState {
    SheetState(session::Session& of, session::WhereItHolds::Search search, std::function<void()> told)
        : session(of), view(of), holds(of, std::move(search), std::move(told)) {}

    session::Session& session;
    SheetView view;
    session::WhereItHolds holds;
    Tool tool = Tool::select;
    std::optional<NudgeSteps> nudge;  ///< absent: those customary in the units shown
    CellKind active = CellKind::plan;
    LiveMarks marks;                     ///< of a drag, a tool or the pointer
    std::optional<CellKind> marks_cell;  ///< during a drag, over which the marks are painted
    std::optional<drawing::Point> tip;   ///< of a screw in hand, where it stood in the section
};

/// What a point of a drawing catches on, within reach of the pointer; `free`: nothing.
[[nodiscard]] editing::SnapRules snap_rules(SheetState& sheet, CellKind kind, bool free = false);

/// What lies under a point of a drawing. What can be taken in its middle comes before what is drawn across it.
struct Target {
    model::PartId part;  ///< of no kind: nothing
    std::optional<editing::Handle> handle;
};
[[nodiscard]] Target target_at(SheetState& sheet, CellKind kind, drawing::Point on_sheet);

}  // namespace toehold::window
