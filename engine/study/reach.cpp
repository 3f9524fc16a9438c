// What can be dragged, and over what.
#include "study/fields/groups.h"
#include "study/region.h"

#include "model/base_detail.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::study {
namespace {

using format::phrase;
using model::BaseDetail;
using model::PlanAxis;
using model::Position;

constexpr double plane_finest_in = 0.125, line_finest_in = 0.0625;

template <class Plate>
auto* hole_named(Plate& plate, const std::string& id) {
    const auto found =
        std::find_if(plate.holes.begin(), plate.holes.end(), [&id](const model::Hole& hole) { return hole.id == id; });
    return found == plate.holes.end() ? nullptr : &*found;
}

/// nullptr: the mount has none, and nothing of it is dragged in plan.
const model::Plate* plate_of(const Subject& subject) {
    const auto* const mount = std::get_if<model::PlateOnDeck>(&subject.resolved.detail.mount);
    return mount == nullptr ? nullptr : &mount->plate;
}

Range extent_of(const model::Outline& outline, PlanAxis axis) {
    Range range{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    for (const Position corner : model::polygon(outline)) {
        range.least = std::min(range.least, model::coordinate_in(corner, axis));
        range.most = std::max(range.most, model::coordinate_in(corner, axis));
    }
    return range;
}

/// Packing that has places of its own goes with the anchor it stands about.
Made with_hole_at(BaseDetail detail, const std::string& id, Position at) {
    model::Hole* const hole = hole_named(own_plate(detail), id);
    if (hole == nullptr) return {std::nullopt, phrase("the plate has no hole {}", id)};
    if (on_deck(detail).layers.packing) {
        for (Position& place : on_deck(detail).layers.packing->places) {
            if (place == hole->center) place = at;
        }
    }
    hole->center = at;
    return {std::move(detail), {}};
}

bool is_x(EdgeSide side) { return side == EdgeSide::left || side == EdgeSide::right; }
bool is_upper(EdgeSide side) { return side == EdgeSide::right || side == EdgeSide::outward; }

const char* word(EdgeSide side) {
    switch (side) {
        case EdgeSide::outward:
            return "outward";
        case EdgeSide::inward:
            return "inward";
        case EdgeSide::right:
            return "right";
        case EdgeSide::left:
            break;
    }
    return "left";
}

double edge_place(const model::RectangleOutline& outline, EdgeSide side) {
    const double middle = is_x(side) ? outline.center.x_in : outline.center.y_in;
    const double half = 0.5 * (is_x(side) ? outline.width_in : outline.depth_in);
    return middle + (is_upper(side) ? half : -half);
}

Made with_edge_at(BaseDetail detail, EdgeSide side, double at_in) {
    auto& outline = std::get<model::RectangleOutline>(own_plate(detail).outline);
    const double opposite_in =
        2.0 * (is_x(side) ? outline.center.x_in : outline.center.y_in) - edge_place(outline, side);
    const double size_in = is_upper(side) ? at_in - opposite_in : opposite_in - at_in;
    if (!(size_in > 0.0)) return {std::nullopt, phrase("the plate would have no size")};
    (is_x(side) ? outline.width_in : outline.depth_in) = size_in;
    (is_x(side) ? outline.center.x_in : outline.center.y_in) = 0.5 * (at_in + opposite_in);
    return {std::move(detail), {}};
}

Reach line_reach(std::string id, format::Phrase name, std::optional<PlanAxis> along, double now_in, Range range) {
    Reach reach;
    reach.id = std::move(id);
    reach.name = std::move(name);
    reach.plane = false;
    reach.along = along;
    reach.now = {now_in, 0.0};
    reach.x = range;
    reach.finest_in = line_finest_in;
    return reach;
}

}  // namespace

std::optional<Reach> anchor_reach(const Subject& subject, const std::string& hole) {
    const model::Plate* const plate = plate_of(subject);
    if (plate == nullptr) return std::nullopt;
    const model::Hole* const found = hole_named(*plate, hole);
    if (found == nullptr || model::anchor_group(subject.resolved.detail, hole) == nullptr) return std::nullopt;
    Reach reach;
    reach.id = model::key(model::anchor_part(hole));
    reach.name = model::part_name(model::anchor_part(hole));
    reach.now = found->center;
    reach.x = extent_of(plate->outline, PlanAxis::x);
    reach.y = extent_of(plate->outline, PlanAxis::y);
    reach.finest_in = plane_finest_in;
    reach.set = [hole](const BaseDetail& detail, Position at) { return with_hole_at(detail, hole, at); };
    return reach;
}

std::optional<Reach> edge_reach(const Subject& subject, EdgeSide side) {
    const model::Plate* const plate = plate_of(subject);
    const auto* const outline = plate == nullptr ? nullptr : std::get_if<model::RectangleOutline>(&plate->outline);
    if (outline == nullptr) return std::nullopt;
    const double now_in = edge_place(*outline, side);
    const double size_in = is_x(side) ? outline->width_in : outline->depth_in;
    const Range range{now_in - 0.5 * size_in, now_in + 0.5 * size_in};
    Reach reach = line_reach(std::string("edge ") + word(side), phrase("plate edge"),
                             is_x(side) ? PlanAxis::x : PlanAxis::y, now_in, range);
    reach.set = [side](const BaseDetail& detail, Position at) { return with_edge_at(detail, side, at.x_in); };
    return reach;
}

std::optional<Reach> block_reach(const Subject& subject, const std::string& block) {
    const std::vector<model::Block>& blocks = subject.resolved.detail.framing.blocks;
    const auto found =
        std::find_if(blocks.begin(), blocks.end(), [&block](const model::Block& one) { return one.id == block; });
    if (found == blocks.end()) return std::nullopt;
    constexpr double either_way_in = 4.0;
    const model::PartId part{model::PartKind::block, block};
    Reach reach = line_reach(model::key(part), model::part_name(part), model::other(found->along), found->across_in,
                             {found->across_in - either_way_in, found->across_in + either_way_in});
    const auto index = static_cast<std::size_t>(found - blocks.begin());
    reach.set = [index](BaseDetail detail, Position at) -> Made {
        detail.framing.blocks.at(index).across_in = at.x_in;
        return {std::move(detail), {}};
    };
    return reach;
}

std::optional<Reach> length_reach(const Subject& subject, std::size_t group) {
    const std::vector<model::AnchorGroup>& groups = model::anchor_groups(subject.resolved.detail);
    if (group >= groups.size()) return std::nullopt;
    model::Fastener fastener = groups[group].fastener;
    const double* const now = screw_length_in(fastener);
    if (now == nullptr) return std::nullopt;
    constexpr double longest_in = 16.0;
    Reach reach = line_reach("length of anchors[" + std::to_string(group + 1) + "]", phrase("anchor length"),
                             std::nullopt, *now, {1.0, std::max(longest_in, *now)});
    reach.set = [group](BaseDetail detail, Position at) -> Made {
        if (!(at.x_in > 0.0)) return {std::nullopt, phrase("the anchor would have no length")};
        *screw_length_in(model::anchor_groups(detail).at(group).fastener) = at.x_in;
        return {std::move(detail), {}};
    };
    return reach;
}

}  // namespace toehold::study
