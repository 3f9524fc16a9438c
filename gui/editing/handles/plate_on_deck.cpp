// The sheets of a plate on the deck: who answers for each handle.
#include "editing/mounts/plate_on_deck.h"

#include <utility>

namespace toehold::editing::plate_on_deck {
namespace {

Moved drag_in_plan(const Grip& grip) {
    switch (grip.handle.id.kind) {
        case HandleKind::hole:
            return drag_hole(grip);
        case HandleKind::slot_end:
            return drag_slot_end(grip);
        case HandleKind::corner:
            return drag_corner(grip);
        case HandleKind::side:
            return drag_side(grip);
        case HandleKind::radius:
            return drag_radius(grip);
        case HandleKind::block:
            return drag_block(grip);
        case HandleKind::block_end:
            return drag_block_end(grip);
        case HandleKind::joist:
            return drag_joist(grip);
        case HandleKind::post_width:
            return drag_post_width(grip, Sheet::plan);
        default:
            return unmoved(grip);
    }
}

Moved drag_in_section(const Grip& grip, const drawing::SectionPlane& plane) {
    switch (grip.handle.id.kind) {
        case HandleKind::block_width:
            return drag_block_width(grip, plane);
        case HandleKind::block_depth:
            return drag_block_depth(grip, -model::thickness_in(on_deck(grip.detail).layers));
        case HandleKind::plate_thickness:
            return drag_plate_thickness(grip);
        case HandleKind::decking_thickness:
            return drag_decking_thickness(grip);
        case HandleKind::anchor_tip:
            return drag_anchor_tip(grip);
        default:
            return unmoved(grip);
    }
}

}  // namespace

std::vector<Handle> handles(const model::BaseDetail& detail, const SheetPlace& place) {
    switch (place.sheet) {
        case Sheet::section:
            return section_handles(detail, place.plane);
        case Sheet::elevation:
            return elevation_handles(detail);
        case Sheet::plan:
            break;
    }
    std::vector<Handle> all = plate_handles(detail);
    for (Handle& handle : framing_handles(detail)) all.push_back(std::move(handle));
    return all;
}

Moved drag(const Grip& grip, const SheetPlace& place) {
    switch (place.sheet) {
        case Sheet::section:
            return drag_in_section(grip, place.plane);
        case Sheet::elevation:
            return drag_in_elevation(grip);
        case Sheet::plan:
            break;
    }
    return drag_in_plan(grip);
}

model::Place step(const SheetPlace& place, drawing::Point step) {
    switch (place.sheet) {
        case Sheet::section:
            return place.plane.along == model::PlanAxis::y ? model::Place{0.0, step.x, 0.0}
                                                           : model::Place{step.x, 0.0, 0.0};
        case Sheet::elevation:
            return {0.0, step.x, 0.0};
        case Sheet::plan:
            break;
    }
    return {step.x, step.y, 0.0};
}

}  // namespace toehold::editing::plate_on_deck
