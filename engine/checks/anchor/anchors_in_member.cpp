#include "checks/anchor/anchors_in_member.h"

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
            std::abs(coordinate_in(in_plan(second.at), other(axis)) - coordinate_in(in_plan(anchor.at), other(axis)));
        if (off_line_in <= anchor.diameter_in) places.push_back(coordinate_in(in_plan(second.at), axis));
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

double row_factor(const Resolved& resolved, std::size_t index, PlanAxis axis) {
    const Anchor& anchor = resolved.anchors[index];
    const catalog::SideMember side = catalog::fastened_by(resolved, anchor).side;
    const double side_width_in = axis == PlanAxis::x ? side.width_y_in : side.width_x_in;
    const std::vector<double> places = row_places_in(resolved, index, axis);
    resistance::FastenerRow row;
    row.count = static_cast<int>(places.size());
    row.spacing_in = widest_step_in(places);
    row.diameter_in = anchor.diameter_in;
    row.slip_modulus_lb_per_in = resistance::wood_to_metal_slip_modulus_lb_per_in(anchor.diameter_in);
    row.main_axial_stiffness_lb = wood_of(resolved, anchor).grade.modulus_psi * member_area_in2(resolved, index, axis);
    row.side_axial_stiffness_lb = side.metal.modulus_psi * side.thickness_in * side_width_in;
    return resistance::group_factor(row);
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
        const double along_in = coordinate_in(in_plan(first.at), member.along);
        placement.mates.push_back({mates[i], first.diameter_in, along_in - member.from_in, member.to_in - along_in});
        for (std::size_t j = i + 1; j < mates.size(); ++j) {
            const Anchor& second = resolved.anchors[mates[j]];
            const double apart_in = std::hypot(second.at.x_in - first.at.x_in, second.at.y_in - first.at.y_in);
            placement.spacing_factor =
                std::min(placement.spacing_factor,
                         resistance::spacing_factor(apart_in, std::max(first.diameter_in, second.diameter_in)));
        }
    }
    return placement;
}

double geometry_factor(const MatesPlacement& placement, const demand::State& state) {
    double least = placement.spacing_factor;
    for (const MatesPlacement::Mate& mate : placement.mates)
        least = std::min(least, end_factor(mate, placement.grain, state.anchors.at(mate.anchor)));
    return least;
}

bool stands_in(const Anchor& anchor, std::size_t member) { return lands(anchor) && anchor.seat->member == member; }

double reached_in(const Resolved& resolved, const Anchor& anchor) {
    if (anchor.kind == catalog::FastenerKind::through_bolt) return member_of(resolved, anchor).depth_in;
    return std::max(0.0, anchor.embedment_in - seating(resolved, anchor).tip_in_member_in);
}

double least_reached_in(const Resolved& resolved, std::size_t member) {
    double least = model::member(resolved.detail.framing, member).depth_in;
    for (const Anchor& anchor : resolved.anchors) {
        if (stands_in(anchor, member)) least = std::min(least, reached_in(resolved, anchor));
    }
    return least;
}

int pieces_with_anchors(const Resolved& resolved, std::size_t member) {
    const model::Member shape = model::member(resolved.detail.framing, member);
    std::set<int> pieces;
    for (const Anchor& anchor : resolved.anchors) {
        if (!stands_in(anchor, member)) continue;
        const double from_face_in =
            coordinate_in(in_plan(anchor.at), other(shape.along)) - shape.across_in + 0.5 * shape.width_in;
        pieces.insert(static_cast<int>(std::floor(from_face_in / model::ply_width_in(shape))));
    }
    return static_cast<int>(pieces.size());
}

}  // namespace toehold::checks
