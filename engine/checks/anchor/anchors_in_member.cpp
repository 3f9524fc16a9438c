#include "checks/anchor/anchors_in_member.h"

#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "checks/anchor/seating.h"
#include "resistance/wood/connection_factors.h"
#include "resistance/wood/fastener_placement.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::Resolved;
using catalog::seen;
using model::coordinate_in;
using model::other;
using model::PlanAxis;

/// Places, along the axis, of the member's anchors that stand on one line with this one; in order.
std::vector<double> row_places_in(const Resolved& resolved, std::size_t index, PlanAxis axis) {
    const Anchor& anchor = resolved.anchors[index];
    std::vector<double> places;
    for (const std::size_t mate : member_mates(resolved, index)) {
        const Anchor& second = resolved.anchors[mate];
        const double off_line_in =
            std::abs(coordinate_in(seen(second), other(axis)) - coordinate_in(seen(anchor), other(axis)));
        if (off_line_in <= anchor.diameter_in) places.push_back(coordinate_in(seen(second), axis));
    }
    std::sort(places.begin(), places.end());
    return places;
}

double widest_step_in(const std::vector<double>& places) {
    double widest = 0.0;
    for (std::size_t i = 1; i < places.size(); ++i) widest = std::max(widest, places[i] - places[i - 1]);
    return widest;
}

/// The member's area that takes a row's force: its section along the grain; across it, its depth times the width of
/// the group along the grain, at least the least spacing (NDS 2018 11.3.6.2 and 11.3.6.3, from memory).
double member_area_in2(const Resolved& resolved, std::size_t index, PlanAxis axis) {
    const Anchor& anchor = resolved.anchors[index];
    const model::Member member = member_of(resolved, anchor);
    if (axis == member.along) return model::ply_width_in(member) * member.depth_in;
    constexpr double least_spacing_diameters = 3.0;
    const std::vector<double> places = row_places_in(resolved, index, member.along);
    return member.depth_in * std::max(places.back() - places.front(), least_spacing_diameters * anchor.diameter_in);
}

/// The same of the side member, whose grain stands upright where it is a wood post: E A.
double side_stiffness_lb(const Resolved& resolved, std::size_t index, PlanAxis axis, const catalog::SideMember& side) {
    if (!side.wood) {
        const double width_in = axis == PlanAxis::x ? side.width_y_in : side.width_x_in;
        return side.metal.modulus_psi * side.bears_in * width_in;
    }
    constexpr double least_spacing_diameters = 3.0;
    const std::vector<double> places = row_places_in(resolved, index, PlanAxis::y);
    const double width_in =
        axis == PlanAxis::y
            ? side.width_x_in
            : std::max(places.back() - places.front(), least_spacing_diameters * resolved.anchors[index].diameter_in);
    return side.wood->grade.modulus_psi * side.bears_in * width_in;
}

double row_factor(const Resolved& resolved, std::size_t index, PlanAxis axis) {
    const Anchor& anchor = resolved.anchors[index];
    const catalog::SideMember side = catalog::fastened_by(resolved, anchor).side;
    const std::vector<double> places = row_places_in(resolved, index, axis);
    resistance::FastenerRow row;
    row.count = static_cast<int>(places.size());
    row.spacing_in = widest_step_in(places);
    // Side by side across it within a diameter, they are no row along it; their spacing is another check's.
    if (!(row.spacing_in > 0.0)) return 1.0;
    row.diameter_in = anchor.diameter_in;
    row.slip_modulus_lb_per_in = side.wood ? resistance::wood_to_wood_slip_modulus_lb_per_in(anchor.diameter_in)
                                           : resistance::wood_to_metal_slip_modulus_lb_per_in(anchor.diameter_in);
    row.main_axial_stiffness_lb = wood_of(resolved, anchor).grade.modulus_psi * member_area_in2(resolved, index, axis);
    row.side_axial_stiffness_lb = side_stiffness_lb(resolved, index, axis, side);
    return resistance::group_factor(row);
}

/// How far a place is from the ends of the wood along its grain.
MatesPlacement::Mate mate_at(std::size_t index, const Anchor& anchor, PlanAxis grain, double from_in, double to_in) {
    const double along_in = coordinate_in(seen(anchor), grain);
    return {index, anchor.diameter_in, along_in - from_in, to_in - along_in};
}

void keep_least_spacing(MatesPlacement& placement, const Anchor& first, const Anchor& second) {
    const model::Position one = seen(first), two = seen(second);
    const double apart_in = std::hypot(two.x_in - one.x_in, two.y_in - one.y_in);
    placement.spacing_factor =
        std::min(placement.spacing_factor,
                 resistance::spacing_factor(apart_in, std::max(first.diameter_in, second.diameter_in)));
}

double end_factor(const MatesPlacement::Mate& mate, PlanAxis grain, const demand::AnchorForce& force) {
    constexpr double nothing_lb = 1e-3;
    if (force.shear_lb() < nothing_lb) return 1.0;
    const double along_lb = grain == PlanAxis::x ? force.shear_x_lb : force.shear_y_lb;
    using resistance::EndLoading;
    const auto loading = [&](double towards_lb) {
        if (std::abs(towards_lb) < nothing_lb) return EndLoading::perpendicular;
        return towards_lb > 0.0 ? EndLoading::toward : EndLoading::away;
    };
    return std::min(resistance::end_distance_factor(mate.to_lower_in, mate.diameter_in, loading(-along_lb)),
                    resistance::end_distance_factor(mate.to_upper_in, mate.diameter_in, loading(along_lb)));
}

}  // namespace

std::vector<std::size_t> member_mates(const Resolved& resolved, std::size_t index) {
    const std::size_t member = resolved.anchors.at(index).seat.value().member;
    std::vector<std::size_t> mates;
    for (std::size_t other_index = 0; other_index < resolved.anchors.size(); ++other_index) {
        const Anchor& second = resolved.anchors[other_index];
        if (stands_in(second, member)) mates.push_back(other_index);
    }
    return mates;
}

bool single_row_along_grain(const Resolved& resolved, std::size_t index) {
    const PlanAxis grain = member_of(resolved, resolved.anchors.at(index)).along;
    return row_places_in(resolved, index, grain).size() == member_mates(resolved, index).size();
}

double row_factor(const Resolved& resolved, std::size_t index) {
    return std::min(row_factor(resolved, index, PlanAxis::x), row_factor(resolved, index, PlanAxis::y));
}

MatesPlacement mates_placement(const Resolved& resolved, std::size_t index) {
    const model::Member member = member_of(resolved, resolved.anchors.at(index));
    const std::vector<std::size_t> mates = member_mates(resolved, index);
    MatesPlacement placement;
    placement.grain = member.along;
    for (std::size_t i = 0; i < mates.size(); ++i) {
        const Anchor& first = resolved.anchors[mates[i]];
        placement.mates.push_back(mate_at(mates[i], first, member.along, member.from_in, member.to_in));
        for (std::size_t j = i + 1; j < mates.size(); ++j)
            keep_least_spacing(placement, first, resolved.anchors[mates[j]]);
    }
    return placement;
}

std::optional<MatesPlacement> post_placement(const Resolved& resolved, std::size_t index) {
    const catalog::SideMember side = catalog::fastened_by(resolved, resolved.anchors.at(index)).side;
    if (!side.wood) return std::nullopt;
    constexpr double on_and_on_in = model::beyond_any_plate_in;
    MatesPlacement placement;
    placement.grain = PlanAxis::y;
    placement.pushed_back = true;
    for (std::size_t i = 0; i < resolved.anchors.size(); ++i) {
        const Anchor& first = resolved.anchors[i];
        placement.mates.push_back(mate_at(i, first, PlanAxis::y, -side.width_y_in, on_and_on_in));
        for (std::size_t j = i + 1; j < resolved.anchors.size(); ++j)
            keep_least_spacing(placement, first, resolved.anchors[j]);
    }
    return placement;
}

double geometry_factor(const MatesPlacement& placement, const demand::State& state) {
    double least = placement.spacing_factor;
    for (const MatesPlacement::Mate& mate : placement.mates) {
        demand::AnchorForce force = state.anchors.at(mate.anchor);
        if (placement.pushed_back) force = {force.tension_lb, -force.shear_x_lb, -force.shear_y_lb};
        least = std::min(least, end_factor(mate, placement.grain, force));
    }
    return least;
}

bool stands_in(const Anchor& anchor, std::size_t member) { return lands(anchor) && anchor.seat->member == member; }

double reached_in(const Resolved& resolved, const Anchor& anchor) {
    if (anchor.kind == catalog::FastenerKind::through_bolt) return member_of(resolved, anchor).depth_in;
    return std::max(0.0, anchor.embedment_in - seating(resolved, anchor).tip_in_member_in);
}

double least_reached_in(const Resolved& resolved, std::size_t member) {
    std::optional<double> least;
    for (const Anchor& anchor : resolved.anchors) {
        if (!stands_in(anchor, member)) continue;
        const double reached = reached_in(resolved, anchor);
        least = least ? std::min(*least, reached) : reached;
    }
    return least ? *least : model::member(resolved.detail.framing, member).depth_in;
}

int pieces_with_anchors(const Resolved& resolved, std::size_t member) {
    std::set<int> pieces;
    for (const Anchor& anchor : resolved.anchors) {
        if (!stands_in(anchor, member)) continue;
        const model::Member shape = member_of(resolved, anchor);
        const double from_face_in =
            coordinate_in(seen(anchor), other(shape.along)) - shape.across_in + 0.5 * shape.width_in;
        pieces.insert(static_cast<int>(std::floor(from_face_in / model::ply_width_in(shape))));
    }
    return static_cast<int>(pieces.size());
}

}  // namespace toehold::checks
