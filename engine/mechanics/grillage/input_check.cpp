#include "mechanics/grillage/input_check.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

// Nodes of a joint without a place of its own may stand apart by rounding, no more.
constexpr double one_place_in = 1e-6;
constexpr double rounding_of_length = 1e-9;

void require(bool sound, const char* what) {
    if (!sound) throw std::invalid_argument(what);
}

bool known(int index, std::size_t count) { return index >= 0 && static_cast<std::size_t>(index) < count; }

bool finite(Point point) { return std::isfinite(point.x) && std::isfinite(point.y); }

double apart(std::span<const Point> nodes, int first, int second) {
    const Point a = nodes[static_cast<std::size_t>(first)], b = nodes[static_cast<std::size_t>(second)];
    return std::hypot(b.x - a.x, b.y - a.y);
}

bool at_least_0(double stiffness) { return stiffness >= 0.0 && std::isfinite(stiffness); }
bool above_0(double stiffness) { return stiffness > 0.0 && std::isfinite(stiffness); }

void check_member(std::span<const Point> nodes, const GridMember& member) {
    require(known(member.from, nodes.size()) && known(member.to, nodes.size()),
            "a member names a node that is not there");
    require(apart(nodes, member.from, member.to) > 0.0, "a member has no length");
    require(above_0(member.bending_lb_in2) && above_0(member.torsion_lb_in2) && at_least_0(member.shear_lb),
            "a member's stiffness is out of range");
}

void check_joint(std::span<const Point> nodes, const GridJoint& joint) {
    require(known(joint.first, nodes.size()) && known(joint.second, nodes.size()),
            "a joint names a node that is not there");
    require(at_least_0(joint.vertical_lb_per_in) && at_least_0(joint.about_x_lb_in) && at_least_0(joint.about_y_lb_in),
            "a joint's stiffness is out of range");
    require(joint.at ? finite(*joint.at) : apart(nodes, joint.first, joint.second) <= one_place_in,
            "a joint between nodes that stand apart needs a place of its own");
}

}  // namespace

void check_grid(std::span<const Point> nodes, std::span<const GridMember> members, std::span<const GridJoint> joints,
                std::span<const GridSupport> supports) {
    require(std::all_of(nodes.begin(), nodes.end(), finite), "a node's place is not finite");
    for (const GridMember& member : members) check_member(nodes, member);
    for (const GridJoint& joint : joints) check_joint(nodes, joint);
    for (const GridSupport& support : supports) {
        require(known(support.node, nodes.size()), "a support names a node that is not there");
        require(at_least_0(support.vertical_lb_per_in) && at_least_0(support.about_x_lb_in) &&
                    at_least_0(support.about_y_lb_in),
                "a support's stiffness is out of range");
    }
}

void check_load(const GridLoad& load, std::size_t nodes) {
    require(known(load.node, nodes), "a load names a node that is not there");
    require(std::isfinite(load.up_lb) && std::isfinite(load.about_x_lb_in) && std::isfinite(load.about_y_lb_in),
            "a load is not finite");
}

std::size_t checked_member(int member, std::size_t members) {
    require(known(member, members), "a member that is not there is named");
    return static_cast<std::size_t>(member);
}

double checked_station(double at_in, double length_in) {
    const double slack = rounding_of_length * length_in;
    require(at_in >= -slack && at_in <= length_in + slack, "a station lies beyond the member's ends");
    return std::clamp(at_in, 0.0, length_in);
}

}  // namespace toehold::mechanics
