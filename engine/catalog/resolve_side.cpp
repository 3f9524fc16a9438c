#include "catalog/resolve_side.h"

#include "catalog/catalog.h"
#include "catalog/closest_ids.h"
#include "catalog/fastened.h"
#include "catalog/resolve_metal.h"
#include "resistance/wood/withdrawal.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toehold::catalog {
namespace {

DeckingMaterial material(const std::string& id, const Catalog& catalog, const std::string& element,
                         model::Problems& problems) {
    const DeckingMaterial* const row = require(catalog.decking, id, "decking or shim material", element, problems);
    return row == nullptr ? DeckingMaterial{} : *row;
}

/// The member the anchor holds in: the one it is said to go through to, else the post's.
std::optional<std::size_t> member_of(const model::BaseDetail& detail, const model::AnchorGroup& group) {
    return model::find_member(detail.framing, group.into.empty() ? on_side(detail).member : group.into);
}

/// A level anchor's seat: absent where its axis passes above, below or beside the member. On a stringer the near edge
/// is measured square to its slope.
std::optional<model::Seat> seat_in(const model::BaseDetail& detail, std::size_t index, const model::Place& at) {
    const model::Member member = model::member(detail.framing, index);
    const double top_in = model::from_top_edge_in(on_side(detail), at.x_in, -at.z_in);
    const double bottom_in = model::holding_depth_in(on_side(detail), member) - top_in;
    const double piece_in = model::piece_depth_in(member);
    const double in_piece = member.stack > 1 ? std::fmod(std::max(top_in, 0.0), piece_in) : top_in;
    const double edge_in = member.stack > 1 ? std::min(in_piece, piece_in - in_piece) : std::min(top_in, bottom_in);
    const double end_in = std::min(at.x_in - member.from_in, member.to_in - at.x_in);
    if (std::min(top_in, bottom_in) < 0.0 || end_in < 0.0) return std::nullopt;
    return model::Seat{index, edge_in, end_in};
}

void place_in_member(Anchor& anchor, const Resolved& resolved, std::size_t member) {
    anchor.seat = seat_in(resolved.detail, member, anchor.at);
    if (!anchor.seat) return;
    const double through_in = model::member(resolved.detail.framing, member).width_in;
    if (anchor.kind == FastenerKind::through_bolt) {
        anchor.embedment_in = through_in;
        return;
    }
    const double above_in = above_member_in(resolved, anchor);
    anchor.embedment_in = resistance::embedment_in(anchor.length_in, above_in, through_in);
    anchor.thread_in_block_in = resistance::effective_thread_in(anchor.length_in, anchor.thread_length_in,
                                                                anchor.tip_length_in, above_in, through_in);
}

/// The tie that the bolt at a place hangs on the post.
std::optional<std::size_t> tie_at(const model::SideFastened& mount, const std::string& place) {
    for (std::size_t index = 0; index < mount.ties.size(); ++index) {
        if (mount.ties[index].bolt == place) return index;
    }
    return std::nullopt;
}

double hole_in(const model::SideFastened& mount, const Anchor& anchor) {
    constexpr double over_in = 0.0625;  // in wood and tube walls: the usual bolt hole (NDS 2018 12.1.3.2)
    return anchor.diameter_in + (mount.bracket ? mount.bracket->hole_over_in : over_in);
}

}  // namespace

SideFastened resolve_side_mount(const model::SideFastened& mount, const Catalog& catalog, model::Problems& problems) {
    SideFastened materials;
    for (std::size_t index = 0; index < mount.layers.size(); ++index) {
        materials.layers.push_back(material(mount.layers[index].material, catalog,
                                            fmt::format("side-fastened/layer[{}]", index + 1), problems));
    }
    if (mount.decking)
        materials.decking = material(mount.decking->material, catalog, "side-fastened/decking", problems);
    if (!mount.bracket) return materials;
    materials.bracket_metal = resolve_metal(mount.bracket->metal, catalog, "side-fastened/bracket", problems);
    const Filler* const filler =
        require(catalog.fillers, mount.bracket->filler, "filler", "side-fastened/bracket", problems);
    if (filler != nullptr) materials.filler = *filler;
    return materials;
}

std::vector<Anchor> anchors_at_places(const Resolved& resolved, const std::vector<std::optional<Anchor>>& fasteners) {
    const model::BaseDetail& detail = resolved.detail;
    const model::SideFastened& mount = on_side(detail);
    const SideJoint joint = side_joint(detail);
    std::vector<Anchor> anchors;
    for (const model::SidePlace& place : mount.places) {
        const model::AnchorGroup* const group = model::anchor_group(detail, place.id);
        if (group == nullptr) continue;
        const auto index = static_cast<std::size_t>(group - mount.anchors.data());
        if (!fasteners[index]) continue;
        Anchor anchor = *fasteners[index];
        anchor.id = place.id;
        anchor.at = {place.x_in, joint.towards_y * joint.to_member_face_in, -place.below_top_in};
        anchor.axis = {0.0, joint.towards_y, 0.0};
        anchor.group = index;
        anchor.hole_diameter_in = hole_in(mount, anchor);
        if (const std::optional<std::size_t> member = member_of(detail, *group))
            place_in_member(anchor, resolved, *member);
        const std::optional<std::size_t> face = model::find_member(detail.framing, mount.member);
        if (!group->into.empty() && face) anchor.crossed = seat_in(detail, *face, anchor.at);
        anchor.tie = tie_at(mount, place.id);
        anchors.push_back(std::move(anchor));
    }
    return anchors;
}

Resolved as_sheared(Resolved resolved) {
    for (Anchor& anchor : resolved.anchors) {
        if (!anchor.crossed) continue;
        anchor.seat = anchor.crossed;
        // It crosses the whole of it.
        anchor.embedment_in = model::member(resolved.detail.framing, anchor.seat->member).width_in;
        anchor.thread_in_block_in = 0.0;
    }
    return resolved;
}

}  // namespace toehold::catalog
