#pragma once
// Small frames in space, as plain values that tests change before they are made.
#include "mechanics/space_frame/space_frame.h"

#include <vector>

namespace toehold::test {

struct FrameInSpace {
    std::vector<mechanics::SpaceVector> nodes;
    std::vector<mechanics::SpaceMember> members;
    std::vector<mechanics::SpaceJoint> joints;
    std::vector<mechanics::SpaceSupport> supports;

    [[nodiscard]] mechanics::SpaceFrame made() const { return {nodes, members, joints, supports}; }
    int node(const mechanics::SpaceVector& at) {
        nodes.push_back(at);
        return static_cast<int>(nodes.size()) - 1;
    }
};

constexpr double rigid = 1e16;  // for supports, whose force is stiffness times their node's own motion
constexpr double stiff = 1e10;

inline mechanics::SpaceSupport clamped(int node) {
    return {node, mechanics::uncoupled({rigid, rigid, rigid, rigid, rigid, rigid}), {}};
}

/// Posts along x at equal spacing, clamped at their feet; a rail on top in one piece, held to each post by its force
/// alone, and by a couple about its own axis at the first post so that it cannot spin.
struct LineOfPosts {
    int posts = 3;
    double spacing_in = 60.0, height_in = 42.0;
    double post_lb_in2 = 8e6, rail_lb_in2 = 8e6, torsion_lb_in2 = 5e6;

    /// Member i is post i; the rail's follow. Support i is post i's.
    [[nodiscard]] FrameInSpace frame() const {
        FrameInSpace result;
        std::vector<int> tops, rail;
        for (int i = 0; i < posts; ++i) {
            const double x = spacing_in * i;
            const int foot = result.node({x, 0, 0});
            tops.push_back(result.node({x, 0, height_in}));
            rail.push_back(result.node({x, 0, height_in}));
            result.members.push_back({foot, tops.back(), {1, 0, 0}, 1e7, torsion_lb_in2, post_lb_in2, post_lb_in2});
            result.supports.push_back(clamped(foot));
            const double turn =
                posts == 1 ? stiff : 0.0;  // a lone post has no rail that would keep the node from turning
            result.joints.push_back(
                {tops.back(), rail.back(), {stiff, stiff, stiff, i == 0 ? stiff : 0.0, turn, turn}});
        }
        for (std::size_t i = 0; i + 1 < rail.size(); ++i)
            result.members.push_back({rail[i], rail[i + 1], {0, 0, 1}, 1e7, torsion_lb_in2, rail_lb_in2, rail_lb_in2});
        return result;
    }
};

}  // namespace toehold::test
