#include "window/sheet/state.h"

#include "window/sheet/drag.h"

namespace toehold::window {

editing::SnapRules snap_rules(SheetState& sheet, CellKind kind, bool free) {
    editing::SnapRules rules;
    rules.on = !free;
    rules.reach_in = reach_px / sheet.view.view(kind).units_per_in;
    return rules;
}

Target target_at(SheetState& sheet, CellKind kind, drawing::Point on_sheet) {
    auto& view = sheet.view;
    Target target;
    target.part = view.part_at(kind, on_sheet);
    target.handle = handle_at(view.handles(kind), view.view(kind), on_sheet, sheet.session.selection());
    if (target.handle) target.part = target.handle->id.part;
    return target;
}

}  // namespace toehold::window
