#include "catalog/resolve_anchors.h"

#include "catalog/catalog.h"
#include "catalog/fastened.h"
#include "catalog/resolve_fastener.h"
#include "catalog/resolve_side.h"
#include "resistance/wood/withdrawal.h"
#include "units/quantity.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::catalog {
namespace {

double width_in(const model::Hole& hole) {
    if (const auto* const slot = std::get_if<model::Slot>(&hole.shape)) return slot->width_in;
    return std::get<model::RoundHole>(hole.shape).diameter_in;
}

/// A plate from another file has no elements of its own in the detail.
std::string path(const model::BaseDetail& detail, const model::Hole& hole) {
    if (on_deck(detail).plate_reference) return "plate-from";
    return fmt::format("plate/{}[{}]", std::holds_alternative<model::Slot>(hole.shape) ? "slot" : "hole", hole.id);
}

/// What keeps the anchor from passing through the hole: its washer, else its head; 0 when the width is not known.
double held_by_in(const Anchor& anchor) {
    return anchor.washer ? anchor.washer->outside_diameter_in : anchor.head_width_in;
}

void check_hole(const model::BaseDetail& detail, const model::Hole& hole, const Anchor& anchor,
                model::Problems& problems) {
    const double hole_in = width_in(hole);
    const auto add = [&](const format::Phrase& message, const format::Phrase& accepted) {
        problems.push_back(
            {{}, 0, path(detail, hole), format::phrase("{}", format::Dimension{hole_in}), accepted, message});
    };
    if (hole_in < anchor.diameter_in) {
        add(format::phrase("hole {} is smaller than its anchor", hole.id),
            format::phrase("{} or more", format::Dimension{anchor.diameter_in}));
    }
    if (held_by_in(anchor) > 0.0 && hole_in >= held_by_in(anchor)) {
        add(anchor.washer ? format::phrase("the washer of the anchor slips through hole {}", hole.id)
                          : format::phrase("the head of the anchor slips through hole {}", hole.id),
            format::phrase("less than {}", format::Dimension{held_by_in(anchor)}));
    }
}

/// Seat and embedment of an anchor that goes straight down and knows its place.
void place_in_member(Anchor& anchor, const Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    anchor.seat = model::seat(framing, in_plan(anchor.at));
    if (!anchor.seat) return;
    const double block_depth_in = model::member(framing, anchor.seat->member).depth_in;
    if (anchor.kind == FastenerKind::through_bolt) {
        anchor.embedment_in = block_depth_in;
        return;
    }
    const double above_in = above_member_in(resolved, anchor);
    anchor.embedment_in = resistance::embedment_in(anchor.length_in, above_in, block_depth_in);
    anchor.thread_in_block_in = resistance::effective_thread_in(anchor.length_in, anchor.thread_length_in,
                                                                anchor.tip_length_in, above_in, block_depth_in);
}

std::size_t index_of(const model::BaseDetail& detail, const model::AnchorGroup* group) {
    return static_cast<std::size_t>(group - on_deck(detail).anchors.data());
}

using Fasteners = std::vector<std::optional<Anchor>>;

/// One fastener for every group, without a place yet; absent where it has a problem.
Fasteners fasteners_of(const model::BaseDetail& detail, const Catalog& catalog, model::Problems& problems) {
    Fasteners fasteners;
    for (const model::AnchorGroup& group : model::anchor_groups(detail)) {
        const std::string element = fmt::format("anchors[{}]", fasteners.size() + 1);
        fasteners.push_back(resolve_fastener(group, catalog, element, problems));
    }
    return fasteners;
}

std::vector<Anchor> anchors_in_holes(const Resolved& resolved, const Fasteners& fasteners, model::Problems& problems) {
    const model::BaseDetail& detail = resolved.detail;
    std::vector<Anchor> anchors;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        const model::AnchorGroup* const group = model::anchor_group(detail, hole.id);
        if (group == nullptr) continue;
        const std::size_t index = index_of(detail, group);
        if (!fasteners[index]) continue;
        Anchor anchor = *fasteners[index];
        anchor.id = hole.id;
        anchor.at = {hole.center.x_in, hole.center.y_in, 0.0};
        anchor.group = index;
        anchor.hole_diameter_in = width_in(hole);
        check_hole(detail, hole, anchor, problems);
        place_in_member(anchor, resolved);
        anchors.push_back(std::move(anchor));
    }
    return anchors;
}

}  // namespace

std::vector<Anchor> resolve_anchors(const Resolved& resolved, const Catalog& catalog, model::Problems& problems) {
    const Fasteners fasteners = fasteners_of(resolved.detail, catalog, problems);
    switch (kind(resolved.detail.mount)) {
        case model::MountKind::plate_on_deck:
            return anchors_in_holes(resolved, fasteners, problems);
        case model::MountKind::side_fastened:
            return anchors_at_places(resolved, fasteners);
    }
    return {};
}

}  // namespace toehold::catalog
