#pragma once
// Posts that several tests share. All invented, with round stiffnesses.
#include "mechanics/side_post/side_post.h"

#include <vector>

namespace toehold::test {

/// A nominal 4x4 (3.5 in square) of 1,400,000 psi on a rim 9.25 in deep, z = 0 at its bottom, one bolt 2 in from each
/// of its edges. E I = 1.4e6 x 3.5^4/12 = 1.7507e7, about.
[[nodiscard]] inline mechanics::SidePost four_by_four() {
    mechanics::SidePost post;
    post.axis_y_in = 1.75;
    post.section = {1.75e7, 1.75e7, 2e6, 1.7e7, 0.0, 0.0};
    post.bearings = {{-1.75, 1.75, 0.0, 9.25, 2e4}};
    post.fasteners = {{0.0, 2.0, 3e4, 0.0, 3e4, 2e4}, {0.0, 7.25, 3e4, 0.0, 3e4, 2e4}};
    return post;
}

/// The same with two bolts at each height, 2 in apart.
[[nodiscard]] inline mechanics::SidePost two_columns() {
    mechanics::SidePost post = four_by_four();
    post.fasteners = {{-1.0, 2.0, 3e4, 0.0, 3e4, 2e4},
                      {1.0, 2.0, 3e4, 0.0, 3e4, 2e4},
                      {-1.0, 7.25, 3e4, 0.0, 3e4, 2e4},
                      {1.0, 7.25, 3e4, 0.0, 3e4, 2e4}};
    return post;
}

/// A thousand million times stiffer: a rigid body.
[[nodiscard]] inline mechanics::SidePost rigid(mechanics::SidePost post) {
    constexpr double stiffer = 1e9;
    post.section.bending_x_lb_in2 *= stiffer;
    post.section.bending_y_lb_in2 *= stiffer;
    post.section.torsion_lb_in2 *= stiffer;
    post.section.axial_lb *= stiffer;
    return post;
}

/// 36 in above decking 1 in thick on a rim 9.25 in deep.
inline constexpr double top_in = 46.25;

/// At the top, on the post's axis.
[[nodiscard]] inline std::vector<mechanics::PostLoad> push(const mechanics::SidePost& post, double along_lb,
                                                           double outward_lb, double up_lb = 0.0,
                                                           double height_in = top_in) {
    return {{{0.0, post.axis_y_in, height_in}, {along_lb, outward_lb, up_lb}, {}}};
}

/// One body at a place that couples no motion with another: lb/in along, lb in about.
[[nodiscard]] inline mechanics::BackingBodies one_body(const mechanics::SpaceVector& place,
                                                       const std::vector<double>& six) {
    mechanics::BackingBodies bodies{{place}, std::vector<double>(36, 0.0)};
    for (std::size_t i = 0; i < six.size(); ++i) bodies.stiffness[7 * i] = six[i];
    return bodies;
}

}  // namespace toehold::test
