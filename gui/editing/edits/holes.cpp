// A new anchor with its hole, and the shapes of a plate's holes.
#include "editing/parts/holes.h"
#include "editing/edits.h"
#include "editing/edits/result.h"
#include "editing/parts/anchor_places.h"
#include "editing/parts/measures.h"

#include <cmath>

namespace toehold::editing {

using model::BaseDetail;

Edit add_hole(const BaseDetail& detail, model::Position at) {
    if (!std::isfinite(at.x_in) || !std::isfinite(at.y_in)) return refused(detail, not_a_place());
    if (places_of_anchors(detail).size() >= most_anchors) {
        return refused(detail, shaped_plate(detail) != nullptr
                                   ? phrase("The plate has as many holes as it may have.")
                                   : phrase("The post has as many fasteners as it may have."));
    }
    BaseDetail after = detail;
    const std::string id = copy_anchor(after, nearest_anchor(detail, at), at);
    return done(std::move(after), phrase("Add {}", things(detail, {id}, {})), {model::anchor_part(id)});
}

Edit to_slot(const BaseDetail& detail, const std::vector<model::PartId>& parts, double length_in, double angle_deg) {
    const std::vector<std::string> holes = holes_among(detail, parts);
    if (holes.empty()) return refused(detail, phrase("Select a hole first."));
    if (!std::isfinite(length_in) || !std::isfinite(angle_deg))
        return refused(detail, phrase("A slot needs a length and an angle."));
    BaseDetail after = detail;
    for (const std::string& id : holes) {
        model::Hole& hole = *find_hole(*shaped_plate(after), id);
        const double width = width_in(hole);
        if (!(length_in > width)) return refused(detail, phrase("A slot is longer than it is wide."));
        hole.shape = model::Slot{bounded(length_in), width, slot_angle(angle_deg)};
    }
    own_plate(after);
    return done(std::move(after), phrase("Slot {}", things(detail, holes, {})), parts);
}

Edit to_round(const BaseDetail& detail, const std::vector<model::PartId>& parts) {
    BaseDetail after = detail;
    std::vector<std::string> slots;
    for (const std::string& id : holes_among(detail, parts)) {
        model::Hole& hole = *find_hole(*shaped_plate(after), id);
        if (!std::holds_alternative<model::Slot>(hole.shape)) continue;
        hole.shape = model::RoundHole{width_in(hole)};
        slots.push_back(id);
    }
    if (slots.empty()) return refused(detail, phrase("Select a slot first."));
    own_plate(after);
    return done(std::move(after), phrase("Round {}", things(detail, slots, {})), parts);
}

}  // namespace toehold::editing
