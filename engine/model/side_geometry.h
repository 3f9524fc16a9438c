#pragma once
// Where a post on a member's side stands against that member: pure geometry on the model. Distances are in inches.
#include "model/base_detail.h"
#include "model/member.h"

#include <optional>

namespace toehold::model {

/// Distances of the joint along y, from the post's axis towards the member, all at least 0.
struct SideJoint {
    double to_post_face_in = 0.0;    ///< of the post's contact face (the notch's, where there is one)
    double to_member_face_in = 0.0;  ///< of the member's near face: bracket plate and layers further
    double towards_y = -1.0;         ///< -1: the member lies at smaller y than the post; 1: at larger
};
/// Throws std::logic_error when the detail has another mount; so do the others here.
[[nodiscard]] SideJoint side_joint(const BaseDetail& detail);
/// The post's depth that a fastener through it crosses: less its notch.
[[nodiscard]] double post_depth_in(const BaseDetail& detail);

/// Where a member of this width is centered along y when its near face is where the joint ends.
[[nodiscard]] double member_center_in(const SideJoint& joint, double member_width_in);
/// From the post's axis towards the member, along y: to its near face, and to its far one.
[[nodiscard]] double to_near_face_in(const SideJoint& joint, const Member& member);
[[nodiscard]] double to_far_face_in(const SideJoint& joint, const Member& member);

/// A place's distance from the top edge of the member the post lies against, square to that edge: on a stringer square
/// to its slope.
[[nodiscard]] double from_top_edge_in(const SideFastened& mount, double x_in, double below_top_in);
/// The member's depth that holds there: a stringer's below its cuts.
[[nodiscard]] double holding_depth_in(const SideFastened& mount, const Member& member);

/// How far from the post's axis along the rail a fastener has something to hold: half the bracket's width, or the
/// post's.
[[nodiscard]] double half_width_in(const BaseDetail& detail);

/// The member the post is fastened to; absent when the framing has none of that id.
[[nodiscard]] std::optional<Member> side_member(const BaseDetail& detail);

}  // namespace toehold::model
