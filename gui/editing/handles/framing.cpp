// Plan, what lies under the plate: where blocks and joists are taken hold of.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"
#include "editing/parts/outline_shape.h"

#include <algorithm>

namespace toehold::editing {
namespace {

using model::PlanAxis;

/// Clear of the plate where the joist runs under it.
constexpr double clear_of_plate_in = 1.0;

drawing::Point unit(PlanAxis axis) { return axis == PlanAxis::x ? drawing::Point{1.0, 0.0} : drawing::Point{0.0, 1.0}; }

PlanAxis across(PlanAxis axis) { return axis == PlanAxis::x ? PlanAxis::y : PlanAxis::x; }

/// Abreast of the post; a joist under the plate is taken beyond the plate's edge.
drawing::Point grip_of(const model::Joists& joists, const model::Joist& joist, const model::Outline& outline) {
    const Extent extent = extent_of(outline);
    const model::Position low = position(extent.low), high = position(extent.high);
    const bool under =
        joist.offset_in > across_part(joists.along, low) && joist.offset_in < across_part(joists.along, high);
    double along_in = under ? along_part(joists.along, low) - clear_of_plate_in : 0.0;
    if (joists.from_in && joists.to_in && *joists.from_in < *joists.to_in)
        along_in = std::clamp(along_in, *joists.from_in, *joists.to_in);
    return point(in_plan(joists.along, along_in, joist.offset_in));
}

}  // namespace

std::vector<Handle> framing_handles(const model::BaseDetail& detail) {
    std::vector<Handle> handles;
    for (const model::Block& block : detail.framing.blocks) {
        const model::PartId part{model::PartKind::block, block.id};
        handles.push_back({{HandleKind::block, part}, point(middle(block)), unit(across(block.along))});
        handles.push_back({{HandleKind::block_end, part, 0},
                           point(in_plan(block.along, block.from_in, block.across_in)),
                           unit(block.along)});
        handles.push_back({{HandleKind::block_end, part, 1},
                           point(in_plan(block.along, block.to_in, block.across_in)),
                           unit(block.along)});
    }
    if (!detail.framing.joists) return handles;
    const model::Joists& joists = *detail.framing.joists;
    for (const model::Joist& joist : joists.members) {
        handles.push_back({{HandleKind::joist, {model::PartKind::joist, joist.id}},
                           grip_of(joists, joist, on_deck(detail).plate.outline),
                           unit(across(joists.along))});
    }
    return handles;
}

}  // namespace toehold::editing
