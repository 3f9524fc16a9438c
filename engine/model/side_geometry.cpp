#include "model/side_geometry.h"

#include <cmath>
#include <numbers>

namespace toehold::model {

double post_depth_in(const BaseDetail& detail) {
    const auto& notch = on_side(detail).notch;
    return shaft(detail.post).depth_in - (notch ? notch->depth_in : 0.0);
}

SideJoint side_joint(const BaseDetail& detail) {
    const SideFastened& mount = on_side(detail);
    SideJoint joint;
    joint.towards_y = mount.face == MemberFace::outside ? -1.0 : 1.0;
    joint.to_post_face_in = 0.5 * shaft(detail.post).depth_in - (mount.notch ? mount.notch->depth_in : 0.0);
    joint.to_member_face_in = joint.to_post_face_in + (mount.bracket ? mount.bracket->thickness_in : 0.0);
    for (const SideLayer& layer : mount.layers) joint.to_member_face_in += layer.thickness_in;
    return joint;
}

double member_center_in(const SideJoint& joint, double member_width_in) {
    return joint.towards_y * (joint.to_member_face_in + 0.5 * member_width_in);
}

double to_near_face_in(const SideJoint& joint, const Member& member) {
    return joint.towards_y * member.across_in - 0.5 * member.width_in;
}

double to_far_face_in(const SideJoint& joint, const Member& member) {
    return to_near_face_in(joint, member) + member.width_in;
}

double from_top_edge_in(const SideFastened& mount, double x_in, double below_top_in) {
    if (!mount.stringer) return below_top_in;
    const double angle = mount.stringer->angle_deg * std::numbers::pi / 180.0;
    return below_top_in * std::cos(angle) + x_in * std::sin(angle);
}

double holding_depth_in(const SideFastened& mount, const Member& member) {
    return mount.stringer ? mount.stringer->effective_depth_in : member.depth_in;
}

double half_width_in(const BaseDetail& detail) {
    const auto& bracket = on_side(detail).bracket;
    return 0.5 * (bracket ? bracket->width_in : shaft(detail.post).width_in);
}

std::optional<Member> side_member(const BaseDetail& detail) {
    const std::optional<std::size_t> index = find_member(detail.framing, on_side(detail).member);
    if (!index) return std::nullopt;
    return member(detail.framing, *index);
}

}  // namespace toehold::model
