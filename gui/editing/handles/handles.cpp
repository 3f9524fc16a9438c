#include "editing/handles.h"

#include "editing/handles/sheet_handles.h"
#include "editing/mounts/mount.h"
#include "editing/parts/measures.h"

namespace toehold::editing {

std::vector<Handle> handles(const model::BaseDetail& detail, const SheetPlace& place) {
    return mount_handles(detail, place);
}

Moved drag(const model::BaseDetail& detail, const SheetPlace& place, const Handle& handle, drawing::Point to,
           const SnapRules& rules) {
    const Grip grip{detail, handle, {bounded(to.x), bounded(to.y)}, rules};
    if (!is_finite(to)) return unmoved(grip);
    Moved moved = mount_drag(grip, place);
    follow_change(moved.detail, detail);
    return moved;
}

Moved drag_in_elevation(const Grip& grip) {
    switch (grip.handle.id.kind) {
        case HandleKind::post_width:
            return drag_post_width(grip, Sheet::elevation);
        case HandleKind::guard_height:
            return drag_guard_height(grip);
        default:
            return unmoved(grip);
    }
}

Moved unmoved(const Grip& grip) { return {grip.detail, {}, grip.handle.at, {}}; }

}  // namespace toehold::editing
