#include "drawing/side/shape.h"

#include "catalog/fastened.h"
#include "catalog/resolve.h"
#include "model/side_geometry.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::drawing::side {
namespace {

const catalog::Anchor* anchor_at(const Subject& subject, const std::string& id) {
    if (subject.resolved == nullptr) return nullptr;
    for (const catalog::Anchor& anchor : subject.resolved->anchors) {
        if (anchor.id == id) return &anchor;
    }
    return nullptr;
}

void add_member(Shape& shape, const model::BaseDetail& detail) {
    shape.member = model::side_member(detail);
    if (!shape.member) return;
    // Heights are plumb, depths of a stringer are square to its slope.
    const double plumb = std::hypot(1.0, shape.slope);
    const double depth_in = std::max(0.0, shape.member->depth_in);
    const double holding_in = std::clamp(model::holding_depth_in(shape.mount, *shape.member), 0.0, depth_in);
    shape.cut_away_in = (depth_in - holding_in) * plumb;
    shape.depth_in = holding_in * plumb;
}

/// From the member's near face to the underside of the head: what is joined before that face, and what is under the
/// head. The rest of what lies above the anchor's seat is the member it crosses.
double head_in(const model::BaseDetail& detail, const catalog::Anchor& anchor) {
    const model::SideJoint joint = model::side_joint(detail);
    const double before_in = on_side(detail).bracket ? 0.0 : model::post_depth_in(detail);
    return joint.to_member_face_in - joint.to_post_face_in + before_in + under_head_upright(anchor).thickness_in;
}

Bearer under_head(const catalog::Anchor& anchor, double model::BackingPlate::*size) {
    if (anchor.head_plate) return {*anchor.head_plate.*size, anchor.head_plate->thickness_in};
    return anchor.washer ? Bearer{anchor.washer->outside_diameter_in, anchor.washer->thickness_in} : Bearer{};
}

Bearer under_nut(const catalog::Anchor& anchor, double model::BackingPlate::*size) {
    if (anchor.washer_below) return {anchor.washer_below->outside_diameter_in, anchor.washer_below->thickness_in};
    return anchor.backing ? Bearer{*anchor.backing.*size, anchor.backing->thickness_in} : Bearer{};
}

}  // namespace

Span span(double one_in, double other_in) { return {std::min(one_in, other_in), std::max(one_in, other_in)}; }

Shape shape(const model::BaseDetail& detail) {
    const model::SideFastened& mount = on_side(detail);
    const model::SideJoint joint = model::side_joint(detail);
    Shape result{mount, model::shaft(detail.post), joint.towards_y, 0, 0, 0, 0, 0, 0, 0, 0, std::nullopt};
    result.back_in = -joint.towards_y * 0.5 * result.post.depth_in;
    result.post_face_in = joint.towards_y * joint.to_post_face_in;
    result.member_face_in = joint.towards_y * joint.to_member_face_in;
    result.post_low_in = -std::max(0.0, mount.post_bottom_below_top_in);
    if (mount.stringer) result.slope = std::tan(mount.stringer->angle_deg * std::numbers::pi / 180.0);
    add_member(result, detail);
    const double seat_low =
        mount.bracket ? -(mount.bracket->from_top_in + mount.bracket->height_in) : result.post_low_in;
    result.bears_low_in = result.depth_in > 0.0 ? std::max(seat_low, -result.depth_in) : seat_low;
    return result;
}

double outward_face_in(const Shape& shape) {
    if (!shape.member) return 0.0;
    return std::max(shape.member_face_in, shape.member_face_in + shape.towards_y * shape.member->width_in);
}

double top_edge_in(const Shape& shape, double x_in) { return shape.slope * x_in; }

Span seat_heights_in(const Shape& shape) {
    if (!shape.mount.bracket) return span(shape.bears_low_in, 0.0);
    const double top = -shape.mount.bracket->from_top_in;
    return span(top - shape.mount.bracket->height_in, top);
}

double seat_half_width_in(const Shape& shape) {
    return 0.5 * std::abs(shape.mount.bracket ? shape.mount.bracket->width_in : shape.post.width_in);
}

Span layer_y_in(const Shape& shape, std::size_t layer) {
    double near_in = shape.member_face_in;
    for (std::size_t index = 0; index < layer; ++index)
        near_in -= shape.towards_y * shape.mount.layers.at(index).thickness_in;
    return span(near_in, near_in - shape.towards_y * shape.mount.layers.at(layer).thickness_in);
}

Span layer_heights_in(const Shape& shape, std::size_t layer) {
    const model::SideLayer& one = shape.mount.layers.at(layer);
    const Span seat = seat_heights_in(shape);
    const double top = one.from_below_top_in ? -*one.from_below_top_in : std::min(0.0, seat.high_in);
    const double low = one.to_below_top_in ? -*one.to_below_top_in : std::max(shape.bears_low_in, seat.low_in);
    return span(low, top);
}

std::vector<Fixing> fixings(const Subject& subject) {
    std::vector<Fixing> all;
    for (const model::SidePlace& place : on_side(subject.detail).places)
        all.push_back({place.id, place.x_in, -place.below_top_in, anchor_at(subject, place.id)});
    return all;
}

AnchorStations level_stations(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    constexpr double bolt_end_of_nut = 1.3;
    AnchorStations at;
    at.head_in = head_in(resolved.detail, anchor);
    at.head_top_in = at.head_in + head_height_in(anchor);
    if (anchor.kind != catalog::FastenerKind::through_bolt) {
        at.tip_in = at.head_in - anchor.length_in;
        at.thread_in = at.tip_in + anchor.thread_length_in;
        return at;
    }
    const double crossed_in = catalog::above_member_in(resolved, anchor) - at.head_in;
    at.seat_in = -crossed_in - (anchor.seat ? anchor.embedment_in : 0.0);
    at.below_in = catalog::below_in(anchor);
    at.tip_in = at.seat_in - at.below_in - bolt_end_of_nut * nut_height_in(anchor);
    at.thread_in = at.seat_in;
    return at;
}

double station_y_in(const Shape& shape, double station_in) {
    return shape.member_face_in - shape.towards_y * station_in;
}

Bearer under_head_upright(const catalog::Anchor& anchor) { return under_head(anchor, &model::BackingPlate::depth_in); }
Bearer under_nut_upright(const catalog::Anchor& anchor) { return under_nut(anchor, &model::BackingPlate::depth_in); }
Bearer under_head_across(const catalog::Anchor& anchor) { return under_head(anchor, &model::BackingPlate::width_in); }
Bearer under_nut_across(const catalog::Anchor& anchor) { return under_nut(anchor, &model::BackingPlate::width_in); }

std::optional<model::Member> holder(const model::BaseDetail& detail, const model::TensionTie& tie) {
    const auto number = model::find_member(detail.framing, tie.into);
    if (!number) return std::nullopt;
    return model::member(detail.framing, *number);
}

model::PartId tie_part(const model::TensionTie& tie) { return {model::PartKind::tie, tie.id}; }

model::PartId member_part(const Shape& shape) {
    return shape.member ? model::part_of(*shape.member) : model::PartId{model::PartKind::rim};
}

}  // namespace toehold::drawing::side
