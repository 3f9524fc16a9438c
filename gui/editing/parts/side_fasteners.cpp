#include "editing/parts/side_fasteners.h"

#include "model/side_geometry.h"

#include <algorithm>
#include <cmath>

namespace toehold::editing {

LevelFastener level_fastener(const model::BaseDetail& detail) {
    const model::SideJoint joint = model::side_joint(detail);
    const bool through_bracket = on_side(detail).bracket.has_value();
    const double behind_in = through_bracket ? joint.to_post_face_in : -0.5 * model::shaft(detail.post).depth_in;
    return {joint.towards_y * behind_in, joint.towards_y};
}

std::optional<double> member_depth_in(const model::BaseDetail& detail) {
    const std::optional<model::Member> member = model::side_member(detail);
    if (!member) return std::nullopt;
    return model::holding_depth_in(on_side(detail), *member);
}

std::optional<double> edge_distance_on_face(const model::BaseDetail& detail, model::Position at) {
    const std::optional<double> depth_in = member_depth_in(detail);
    if (!depth_in) return std::nullopt;
    const double from_top_in = model::from_top_edge_in(on_side(detail), at.x_in, -at.y_in);
    return std::min({from_top_in, *depth_in - from_top_in, model::half_width_in(detail) - std::abs(at.x_in)});
}

}  // namespace toehold::editing
