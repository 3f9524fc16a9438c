#include "search/score/metal_pieces.h"

#include "catalog/density.h"
#include "catalog/fastened.h"
#include "model/capsule.h"
#include "model/placement.h"
#include "resistance/steel/bolt.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace toehold::search {
namespace {

using catalog::Anchor;
using catalog::Resolved;
using model::Position;
using resistance::steel::circle_area_in2;

struct Measured {
    double area_in2 = 0.0, around_in = 0.0;
};

Measured measure(const std::vector<Position>& corners) {
    Measured sum;
    for (std::size_t at = 0; at < corners.size(); ++at) {
        const Position &from = corners[at], &to = corners[(at + 1) % corners.size()];
        sum.area_in2 += 0.5 * (from.x_in * to.y_in - to.x_in * from.y_in);
        sum.around_in += std::hypot(to.x_in - from.x_in, to.y_in - from.y_in);
    }
    return {std::abs(sum.area_in2), sum.around_in};
}

double area_in2(const model::Hole& hole) {
    const model::Capsule shape = model::capsule(hole);
    const double length_in =
        std::hypot(shape.axis.to.x_in - shape.axis.from.x_in, shape.axis.to.y_in - shape.axis.from.y_in);
    return circle_area_in2(2.0 * shape.radius_in) + 2.0 * shape.radius_in * length_in;
}

CutPiece base_plate(const Resolved& resolved) {
    const model::Plate& plate = on_deck(resolved.detail).plate;
    const Measured outline = measure(model::polygon(plate.outline));
    double area = outline.area_in2;
    for (const model::Hole& hole : plate.holes) area -= area_in2(hole);
    const double density = catalog::density_lb_per_in3(on_deck(resolved).plate_metal.kind);
    return {plate.metal, area * plate.thickness_in * density, outline.around_in, static_cast<int>(plate.holes.size())};
}

/// Of a post on a member's side, with the holes of its places.
CutPiece bracket_plate(const Resolved& resolved, const model::BracketPlate& bracket) {
    double area = bracket.width_in * bracket.height_in;
    for (const Anchor& anchor : resolved.anchors) area -= circle_area_in2(anchor.hole_diameter_in);
    const auto& metal = on_side(resolved).bracket_metal;
    const double density = catalog::density_lb_per_in3(metal ? metal->kind : catalog::MetalKind::carbon_steel);
    return {bracket.metal, area * bracket.thickness_in * density, 2.0 * (bracket.width_in + bracket.height_in),
            static_cast<int>(resolved.anchors.size())};
}

/// What the post stands on or is welded to; absent where it is fastened itself.
std::optional<CutPiece> main_plate(const Resolved& resolved) {
    const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
    if (side == nullptr) return base_plate(resolved);
    if (!side->bracket) return std::nullopt;
    return bracket_plate(resolved, *side->bracket);
}

CutPiece head_plate(const model::BackingPlate& plate, const Anchor& anchor) {
    const double area = plate.width_in * plate.depth_in - circle_area_in2(anchor.hole_diameter_in);
    return {plate.metal, area * plate.thickness_in * catalog::density_lb_per_in3(anchor.head_plate_metal->kind),
            2.0 * (plate.width_in + plate.depth_in), 1};
}

CutPiece backing_plate(const model::BackingPlate& plate, const Anchor& anchor) {
    const double area = plate.width_in * plate.depth_in - circle_area_in2(anchor.hole_diameter_in);
    return {plate.metal, area * plate.thickness_in * catalog::density_lb_per_in3(anchor.backing_metal->kind),
            2.0 * (plate.width_in + plate.depth_in), 1};
}

/// An angle or a channel is cut to length from a rolled bar, a plate all round.
CutPiece lower_plate(const model::LowerPlate& plate, const Anchor& anchor, int holes) {
    const bool along_x = model::runs_along(plate) == model::PlanAxis::x;
    const double length_in = along_x ? plate.width_in : plate.depth_in;
    const double across_in = along_x ? plate.depth_in : plate.width_in;
    const int legs = plate.shape == model::LowerShape::plate ? 0 : plate.shape == model::LowerShape::angle ? 1 : 2;
    const double section_in2 = plate.thickness_in * (across_in + legs * (plate.leg_in - plate.thickness_in));
    const double holes_in3 = holes * circle_area_in2(anchor.hole_diameter_in) * plate.thickness_in;
    const double cut_in = legs == 0 ? 2.0 * (length_in + across_in) : 2.0 * (across_in + legs * plate.leg_in);
    return {plate.metal,
            (section_in2 * length_in - holes_in3) * catalog::density_lb_per_in3(anchor.backing_metal->kind), cut_in,
            holes};
}

catalog::MetalKind kind_of(const Anchor& anchor) {
    return anchor.bolt_grade ? anchor.bolt_grade->kind : anchor.metal.kind;
}

}  // namespace

std::vector<CutPiece> cut_pieces(const Resolved& resolved) {
    std::vector<CutPiece> pieces;
    if (auto main = main_plate(resolved)) pieces.push_back(std::move(*main));
    std::set<std::size_t> groups;
    for (const Anchor& anchor : resolved.anchors) {
        if (anchor.head_plate && anchor.head_plate_metal) pieces.push_back(head_plate(*anchor.head_plate, anchor));
        if (anchor.backing && anchor.backing_metal) pieces.push_back(backing_plate(*anchor.backing, anchor));
        if (!anchor.lower || !anchor.backing_metal || !groups.insert(anchor.group).second) continue;
        const auto bolts = std::count_if(resolved.anchors.begin(), resolved.anchors.end(),
                                         [&](const Anchor& other) { return other.group == anchor.group; });
        pieces.push_back(lower_plate(*anchor.lower, anchor, static_cast<int>(bolts)));
    }
    return pieces;
}

double anchor_length_in(const Resolved& resolved, const Anchor& anchor) {
    if (anchor.kind != catalog::FastenerKind::through_bolt) return anchor.length_in;
    if (anchor.bolt && anchor.bolt->length_in) return *anchor.bolt->length_in;
    return catalog::above_member_in(resolved, anchor) + anchor.embedment_in + catalog::below_in(anchor) +
           anchor.diameter_in;
}

double shank_weight_lb(const Resolved& resolved, const Anchor& anchor) {
    return circle_area_in2(anchor.diameter_in) * anchor_length_in(resolved, anchor) *
           catalog::density_lb_per_in3(kind_of(anchor));
}

std::vector<catalog::WasherSize> washers_of(const Anchor& anchor) {
    std::vector<catalog::WasherSize> washers;
    if (anchor.washer) washers.push_back(*anchor.washer);
    if (anchor.washer_below) washers.push_back(*anchor.washer_below);
    return washers;
}

double washer_weight_lb(const catalog::WasherSize& washer, const Anchor& anchor) {
    return (circle_area_in2(washer.outside_diameter_in) - circle_area_in2(washer.hole_diameter_in)) *
           washer.thickness_in * catalog::density_lb_per_in3(kind_of(anchor));
}

}  // namespace toehold::search
