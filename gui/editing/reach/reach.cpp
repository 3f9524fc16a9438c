#include "editing/reach/reach.h"

#include "editing/parts/anchor_places.h"
#include "model/base_detail.h"

#include <variant>

namespace toehold::editing {
namespace {

std::optional<study::EdgeSide> side_facing(const drawing::Point& outward) {
    constexpr double square = 0.999;
    if (outward.x > square) return study::EdgeSide::right;
    if (outward.x < -square) return study::EdgeSide::left;
    if (outward.y > square) return study::EdgeSide::outward;
    if (outward.y < -square) return study::EdgeSide::inward;
    return std::nullopt;
}

const model::RectangleOutline* rectangle_of(const model::BaseDetail& detail) {
    const model::Plate* const plate = shaped_plate(detail);
    return plate == nullptr ? nullptr : std::get_if<model::RectangleOutline>(&plate->outline);
}

std::optional<Dragged> side(const model::BaseDetail& detail, const Handle& handle) {
    if (rectangle_of(detail) == nullptr || !handle.along) return std::nullopt;
    const std::optional<study::EdgeSide> facing = side_facing(*handle.along);
    if (!facing) return std::nullopt;
    return Dragged{Dragged::Kind::edge, {}, *facing};
}

std::optional<Dragged> length(const model::BaseDetail& detail, const std::string& hole) {
    const model::AnchorGroup* const group = model::anchor_group(detail, hole);
    if (group == nullptr) return std::nullopt;
    const auto number = static_cast<std::size_t>(group - model::anchor_groups(detail).data());
    return Dragged{Dragged::Kind::length, hole, study::EdgeSide::right, number};
}

}  // namespace

std::optional<Dragged> dragged_by(const model::BaseDetail& detail, const Handle& handle) {
    // Regions are drawn and searched on plates and in plan alone.
    if (shaped_plate(detail) == nullptr) return std::nullopt;
    switch (handle.id.kind) {
        case HandleKind::hole:
        case HandleKind::block:
            return dragged_whole(detail, handle.id.part);
        case HandleKind::side:
            return side(detail, handle);
        case HandleKind::anchor_tip:
            return length(detail, handle.id.part.id);
        default:
            return std::nullopt;
    }
}

std::optional<Dragged> dragged_whole(const model::BaseDetail& detail, const model::PartId& part) {
    if (shaped_plate(detail) == nullptr) return std::nullopt;
    if (part.kind == model::PartKind::anchor) return Dragged{Dragged::Kind::anchor, part.id};
    if (part.kind == model::PartKind::block) return Dragged{Dragged::Kind::block, part.id};
    return std::nullopt;
}

std::optional<study::Reach> reach_of(const study::Subject& subject, const Dragged& dragged) {
    switch (dragged.kind) {
        case Dragged::Kind::anchor:
            return study::anchor_reach(subject, dragged.id);
        case Dragged::Kind::edge:
            return study::edge_reach(subject, dragged.side);
        case Dragged::Kind::block:
            return study::block_reach(subject, dragged.id);
        case Dragged::Kind::length:
            return study::length_reach(subject, dragged.group);
    }
    return std::nullopt;
}

AcrossExtent extent_across(const model::BaseDetail& detail, const Dragged& dragged, model::PlanAxis along) {
    if (dragged.kind == Dragged::Kind::block) {
        for (const model::Block& block : detail.framing.blocks) {
            if (block.id == dragged.id) return {block.from_in, block.to_in};
        }
    }
    const auto* outline = rectangle_of(detail);
    if (outline == nullptr) return {};
    const bool moves_along_x = along == model::PlanAxis::x;
    const double middle = moves_along_x ? outline->center.y_in : outline->center.x_in;
    const double half = 0.5 * (moves_along_x ? outline->depth_in : outline->width_in);
    return {middle - half, middle + half};
}

}  // namespace toehold::editing
