#include "window/sheet/hover.h"

#include "model/placement.h"

#include <cmath>

namespace toehold::window {

namespace {

wxStockCursor cursor_along(const std::optional<drawing::Point>& along) {
    if (!along) return wxCURSOR_SIZING;
    if (std::abs(along->x) > 0.9) return wxCURSOR_SIZEWE;
    if (std::abs(along->y) > 0.9) return wxCURSOR_SIZENS;
    return along->x * along->y > 0 ? wxCURSOR_SIZENESW : wxCURSOR_SIZENWSE;
}

std::optional<editing::HandleId> id_of(const std::optional<editing::Handle>& handle) {
    return handle ? std::optional(handle->id) : std::nullopt;
}

}  // namespace

Hover::Change Hover::move(const Pointer& pointer) {
    auto& view = sheet_.view;
    const auto cell = view.cell_at(pointer.at);
    const bool on_drawing = cell && !contains(view.areas(*cell).title, pointer.at);
    Target target;
    if (on_drawing && sheet_.tool == Tool::select) target = target_at(sheet_, *cell, pointer.at);
    if (on_drawing && sheet_.tool != Tool::select) target.part = view.part_at(*cell, pointer.at);
    const bool tool_in_plan = cell == CellKind::plan && on_drawing && adds_something(sheet_.tool);
    const bool another_part = target.part != target_.part;
    const bool same = cell == cell_ && !another_part && id_of(target.handle) == id_of(target_.handle);
    if (same && !tool_in_plan && !sheet_.marks.ghost) return {};
    sheet_.marks = {};
    if (tool_in_plan) {
        const auto snapped = editing::snap(view.to_drawing(*cell, pointer.at), sheet_.session.detail(),
                                           snap_rules(sheet_, *cell, pointer.alt));
        sheet_.marks.ghost = snapped.at;
        sheet_.marks.caught = snapped.lines;
    }
    cell_ = cell;
    target_ = target;
    view.point_at(cell, target.part);
    return {true, another_part};
}

void Hover::leave() {
    cell_.reset();
    target_ = {};
    sheet_.marks = {};
    sheet_.view.point_at(std::nullopt, {});
}

wxStockCursor Hover::cursor() const {
    if (cell_ == CellKind::plan && adds_something(sheet_.tool)) return wxCURSOR_CROSS;
    if (sheet_.tool == Tool::pan || (target_.part.kind == model::PartKind::push && !target_.handle))
        return wxCURSOR_HAND;
    return target_.handle ? cursor_along(target_.handle->along) : wxCURSOR_DEFAULT;
}

LiveMarks Hover::marks() {
    auto marks = sheet_.marks;
    if (!cell_) return marks;
    marks.hot = id_of(target_.handle);
    if (sheet_.tool != Tool::select) return marks;
    marks.handles.clear();
    for (const auto& handle : sheet_.view.handles(*cell_))
        if (handle.id == marks.hot || model::contains(sheet_.session.selection(), handle.id.part))
            marks.handles.push_back(handle);
    return marks;
}

wxStockCursor cursor_of(Tool tool) {
    if (tool == Tool::pan) return wxCURSOR_HAND;
    return tool == Tool::select ? wxCURSOR_DEFAULT : wxCURSOR_CROSS;
}

}  // namespace toehold::window
