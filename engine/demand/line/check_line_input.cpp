#include "demand/line/check_line_input.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

namespace toehold::demand {
namespace {

void require(bool holds, const std::string& otherwise) {
    if (!holds) throw std::invalid_argument(otherwise);
}

bool positive(double value) { return std::isfinite(value) && value > 0.0; }
bool not_negative(double value) { return std::isfinite(value) && value >= 0.0; }

bool positive(const BaseStiffness& base) {
    return positive(base.outward) && positive(base.inward) && positive(base.right) && positive(base.left);
}

bool in_order(const BaseStiffness& soft, const BaseStiffness& stiff) {
    return std::min(soft.outward, soft.inward) <= std::max(stiff.outward, stiff.inward) &&
           std::min(soft.right, soft.left) <= std::max(stiff.right, stiff.left);
}

bool in_order(const PostFlexibility& soft, const PostFlexibility& stiff) {
    return not_negative(stiff.along_x_in_per_lb) && not_negative(stiff.along_y_in_per_lb) &&
           std::isfinite(soft.along_x_in_per_lb) && std::isfinite(soft.along_y_in_per_lb) &&
           stiff.along_x_in_per_lb <= soft.along_x_in_per_lb && stiff.along_y_in_per_lb <= soft.along_y_in_per_lb;
}

void check(const LinePost& post) {
    const std::string who = "post " + post.id + ": ";
    require(std::isfinite(post.at.x_in) && std::isfinite(post.at.y_in) && std::isfinite(post.rise_in) &&
                std::isfinite(post.outward_rad),
            who + "its place is not finite");
    require(positive(post.height_in), who + "its height must be above 0");
    require(not_negative(post.play_rad), who + "its play must not be below 0");
    require(positive(post.base.soft) && positive(post.base.central) && positive(post.base.stiff),
            who + "its base's stiffness must be above 0");
    require(in_order(post.base.soft, post.base.stiff), who + "its base's soft end must be the softer");
    require(in_order(post.soft_post, post.stiff_post),
            who + "its flexibility must not be below 0, its soft end the softer");
}

void check(const std::optional<LineWall>& wall) {
    if (!wall) return;
    require(positive(wall->reach_in), "the rail's reach to a wall must be above 0");
    require(!wall->stiffness_lb_per_in || positive(*wall->stiffness_lb_per_in),
            "the stiffness of a wall's connection must be above 0");
}

/// Level, along the line.
double checked_length_in(const std::vector<LinePost>& posts) {
    double length = 0.0;
    for (std::size_t index = 1; index < posts.size(); ++index) {
        const model::Position from = posts[index - 1].at, to = posts[index].at;
        const double span = std::hypot(to.x_in - from.x_in, to.y_in - from.y_in);
        require(positive(span), "posts " + posts[index - 1].id + " and " + posts[index].id + " stand at one place");
        length += span;
    }
    return length;
}

void check(const RailStiffness& soft, const RailStiffness& stiff) {
    require(positive(soft.axial_lb) && positive(soft.in_plan_lb_in2) && positive(stiff.axial_lb) &&
                positive(stiff.in_plan_lb_in2),
            "the rail's stiffness must be above 0");
    require(soft.axial_lb <= stiff.axial_lb && soft.in_plan_lb_in2 <= stiff.in_plan_lb_in2,
            "the rail's soft end must be the softer");
}

}  // namespace

void check_line_input(const LineInput& input) {
    require(input.posts.size() >= 2, "a guard line needs two posts or more");
    for (const LinePost& post : input.posts) check(post);
    const double length_in = checked_length_in(input.posts);
    check(input.soft_rail, input.stiff_rail);
    check(input.first_wall);
    check(input.last_wall);
    require(!input.connection_lb_per_in || positive(*input.connection_lb_per_in),
            "the stiffness of the rail's connections must be above 0");
    double before = 0.0;
    for (const double splice : input.splices_in) {
        require(std::isfinite(splice) && splice >= before && splice <= length_in,
                "splices must rise along the line and stand within it");
        before = splice;
    }
}

}  // namespace toehold::demand
