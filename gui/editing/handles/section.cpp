// Section: where what the plane cuts is taken hold of. Across is the plane's own horizontal.
#include "editing/handles/sheet_handles.h"
#include "editing/parts/fastener_length.h"
#include "editing/parts/holes.h"
#include "editing/parts/measures.h"
#include "editing/parts/members.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::editing {
namespace {

using drawing::SectionPlane;

constexpr double same_row_in = 0.25;  ///< anchors this near the plane stand in its row
const drawing::Point upright{0.0, 1.0};
const drawing::Point level{1.0, 0.0};

struct Span {
    double low_in = 0.0, high_in = 0.0;
};

/// Where the plane cuts the plate; without a cut, around the post.
Span plate_cut(const model::Plate& plate, const SectionPlane& plane) {
    Span span;
    const std::vector<model::Position> corners = model::polygon(plate.outline);
    for (std::size_t index = 0; index < corners.size(); ++index) {
        const model::Position a = corners[index], b = corners[(index + 1) % corners.size()];
        const double off_a = across_part(plane.along, a) - plane.at_in,
                     off_b = across_part(plane.along, b) - plane.at_in;
        if ((off_a > 0.0) == (off_b > 0.0)) continue;
        const double part = off_a / (off_a - off_b);
        const double at = along_part(plane.along, a) + part * (along_part(plane.along, b) - along_part(plane.along, a));
        span = {std::min(span.low_in, at), std::max(span.high_in, at)};
    }
    return span;
}

/// Absent where the plane passes the block by.
std::optional<Span> block_cut(const model::Block& block, const SectionPlane& plane) {
    const double half = 0.5 * total_width_in(block);
    const Span across{block.across_in - half, block.across_in + half}, along{block.from_in, block.to_in};
    const bool runs_along = block.along == plane.along;
    const Span& through = runs_along ? across : along;
    if (plane.at_in < through.low_in || plane.at_in > through.high_in) return std::nullopt;
    return runs_along ? along : across;
}

void add_block(std::vector<Handle>& handles, const model::Block& block, const SectionPlane& plane, double top_in) {
    const std::optional<Span> cut = block_cut(block, plane);
    if (!cut) return;
    const model::PartId part{model::PartKind::block, block.id};
    const double depth_in = block.depth_in * block.stack;
    handles.push_back(
        {{HandleKind::block_depth, part}, {0.5 * (cut->low_in + cut->high_in), top_in - depth_in}, upright});
    if (block.along == plane.along) return;
    const double middle_in = top_in - 0.5 * depth_in;
    handles.push_back({{HandleKind::block_width, part, 0}, {cut->low_in, middle_in}, level});
    handles.push_back({{HandleKind::block_width, part, 1}, {cut->high_in, middle_in}, level});
}

void add_tip(std::vector<Handle>& handles, const model::BaseDetail& detail, const model::Hole& hole,
             const SectionPlane& plane) {
    if (std::abs(across_part(plane.along, hole.center) - plane.at_in) > same_row_in) return;
    const model::AnchorGroup* const group = model::anchor_group(detail, hole.id);
    const std::optional<double> length = group == nullptr ? std::nullopt : length_in(group->fastener);
    if (!length) return;
    handles.push_back({{HandleKind::anchor_tip, model::anchor_part(hole.id)},
                       {along_part(plane.along, hole.center), on_deck(detail).plate.thickness_in - *length},
                       upright});
}

}  // namespace

std::vector<Handle> cut_block_handles(const model::Framing& framing, const SectionPlane& plane, double top_in) {
    std::vector<Handle> handles;
    for (const model::Block& block : framing.blocks) add_block(handles, block, plane, top_in);
    return handles;
}

std::vector<Handle> section_handles(const model::BaseDetail& detail, const SectionPlane& plane) {
    std::vector<Handle> handles;
    const Span plate = plate_cut(on_deck(detail).plate, plane);
    handles.push_back({{HandleKind::plate_thickness, {model::PartKind::plate}},
                       {plate.high_in, on_deck(detail).plate.thickness_in},
                       upright});
    if (on_deck(detail).layers.decking) {
        handles.push_back({{HandleKind::decking_thickness, {model::PartKind::decking}},
                           {plate.low_in, -on_deck(detail).layers.decking->thickness_in},
                           upright});
    }
    const double top_in = -model::thickness_in(on_deck(detail).layers);
    for (Handle& handle : cut_block_handles(detail.framing, plane, top_in)) handles.push_back(std::move(handle));
    for (const model::Hole& hole : on_deck(detail).plate.holes) add_tip(handles, detail, hole, plane);
    return handles;
}

}  // namespace toehold::editing
