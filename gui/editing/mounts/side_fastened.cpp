#include "editing/mounts/side_fastened.h"

#include "editing/fields/groups.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/side_follow.h"
#include "editing/snap/face_lines.h"

namespace toehold::editing::side_fastened {

void fields(Form& form, model::BaseDetail& detail) {
    side_fields(form, detail);
    place_fields(form, detail);
    anchor_fields(form, detail);
    tie_fields(form, detail);
    side_piece_fields(form, detail);
}

void follow(model::BaseDetail& detail, const model::BaseDetail& before) {
    fit_other_post(detail, before);
    follow_members(detail, before);
    keep_touching(detail, before);
    hang_ties(on_side(detail));
}

// Nothing of such a mount stands in another file.

void drop_stale(model::BaseDetail& /*detail*/, const std::filesystem::path& /*file*/) {}

void drop_changed(model::BaseDetail& /*detail*/, const model::BaseDetail& /*before*/) {}

References take(model::BaseDetail& /*detail*/) { return {}; }

void give(model::BaseDetail& /*detail*/, const References& /*references*/) {}

std::vector<Handle> handles(const model::BaseDetail& detail, const SheetPlace& place) {
    switch (place.sheet) {
        case Sheet::section:
            return side_section_handles(detail, place.plane);
        case Sheet::elevation:
            return elevation_handles(detail);
        case Sheet::plan:
            break;
    }
    return face_handles(detail);
}

Moved drag(const Grip& grip, const SheetPlace& place) {
    switch (place.sheet) {
        case Sheet::section:
            return drag_in_side_section(grip, place.plane);
        case Sheet::elevation:
            return drag_in_elevation(grip);
        case Sheet::plan:
            break;
    }
    return drag_on_face(grip);
}

Snapped snap(drawing::Point to, const model::BaseDetail& detail, const SnapRules& rules) {
    return snap_on_face(to, detail, {}, rules);
}

model::Place step(const SheetPlace& place, drawing::Point step) {
    const bool across =
        place.sheet == Sheet::elevation || (place.sheet == Sheet::section && place.plane.along == model::PlanAxis::y);
    return across ? model::Place{0.0, step.x, step.y} : model::Place{step.x, 0.0, step.y};
}

}  // namespace toehold::editing::side_fastened
