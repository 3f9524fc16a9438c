#include "mechanics/space_frame/input_check.h"

#include "mechanics/space_frame/beam.h"

#include <Eigen/Eigenvalues>
#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::mechanics::space_frame {
namespace {

// Nodes of a joint without a place of its own may stand apart by rounding, no more.
constexpr double one_place_in = 1e-6;
constexpr double rounding_of_length = 1e-9;
constexpr double square_enough = 1e-6;
// Of a base's stiffness, with rotations and motions made comparable by its own diagonal.
constexpr double rounding_of_stiffness = 1e-9;

void require(bool sound, const char* what) {
    if (!sound) throw std::invalid_argument(what);
}

bool known(int index, std::size_t count) { return index >= 0 && static_cast<std::size_t>(index) < count; }

bool finite(const SpaceVector& v) { return std::isfinite(v.x) && std::isfinite(v.y) && std::isfinite(v.z); }

bool at_least_0(double stiffness) { return stiffness >= 0.0 && std::isfinite(stiffness); }
bool above_0(double stiffness) { return stiffness > 0.0 && std::isfinite(stiffness); }

Vector3 between(std::span<const SpaceVector> nodes, int from, int to) {
    return eigen(nodes[static_cast<std::size_t>(to)] - nodes[static_cast<std::size_t>(from)]);
}

bool are_axes(const SpaceAxes& axes) {
    const Vector3 x = eigen(axes.x), y = eigen(axes.y);
    return std::abs(x.norm() - 1.0) <= square_enough && std::abs(y.norm() - 1.0) <= square_enough &&
           std::abs(x.dot(y)) <= square_enough;
}

/// Symmetric, and no motion gives energy away.
bool is_passive(const BaseStiffness& stiffness) {
    Vector6 scale;
    Matrix6 all;
    for (Eigen::Index i = 0; i < 6; ++i) {
        for (Eigen::Index k = 0; k < 6; ++k)
            all(i, k) = stiffness[static_cast<std::size_t>(i)][static_cast<std::size_t>(k)];
        if (!at_least_0(all(i, i))) return false;
        scale(i) = all(i, i) > 0.0 ? 1.0 / std::sqrt(all(i, i)) : 1.0;
    }
    if (!all.allFinite()) return false;
    const Matrix6 comparable = scale.asDiagonal() * all * scale.asDiagonal();
    if (!comparable.isApprox(comparable.transpose(), rounding_of_stiffness) && !comparable.isZero(0.0)) return false;
    return Eigen::SelfAdjointEigenSolver<Matrix6>(comparable, Eigen::EigenvaluesOnly).eigenvalues().minCoeff() >=
           -rounding_of_stiffness;
}

void check_member(std::span<const SpaceVector> nodes, const SpaceMember& member) {
    require(known(member.from, nodes.size()) && known(member.to, nodes.size()),
            "a member names a node that is not there");
    const Vector3 along = between(nodes, member.from, member.to), z = eigen(member.toward_z);
    require(along.norm() > 0.0, "a member has no length");
    require(finite(member.toward_z) && along.cross(z).norm() > square_enough * along.norm() * z.norm(),
            "a member's z axis points along it");
    require(above_0(member.axial_lb) && above_0(member.torsion_lb_in2) && above_0(member.bending_y_lb_in2) &&
                above_0(member.bending_z_lb_in2) && at_least_0(member.shear_y_lb) && at_least_0(member.shear_z_lb),
            "a member's stiffness is out of range");
}

void check_joint(std::span<const SpaceVector> nodes, const SpaceJoint& joint) {
    require(known(joint.first, nodes.size()) && known(joint.second, nodes.size()) && joint.first != joint.second,
            "a joint names a node that is not there, or one node twice");
    require(std::all_of(joint.stiffness.begin(), joint.stiffness.end(), at_least_0),
            "a joint's stiffness is out of range");
    require(are_axes(joint.axes), "a joint's axes are not square to each other or not of length 1");
    require(joint.at ? finite(*joint.at) : between(nodes, joint.first, joint.second).norm() <= one_place_in,
            "a joint between nodes that stand apart needs a place of its own");
}

}  // namespace

void check_frame(std::span<const SpaceVector> nodes, std::span<const SpaceMember> members,
                 std::span<const SpaceJoint> joints, std::span<const SpaceSupport> supports) {
    require(std::all_of(nodes.begin(), nodes.end(), finite), "a node's place is not finite");
    for (const SpaceMember& member : members) check_member(nodes, member);
    for (const SpaceJoint& joint : joints) check_joint(nodes, joint);
    for (const SpaceSupport& support : supports) {
        require(known(support.node, nodes.size()), "a support names a node that is not there");
        require(are_axes(support.axes), "a support's axes are not square to each other or not of length 1");
        require(is_passive(support.stiffness), "a support's stiffness is not symmetric or gives energy away");
    }
}

void check_finite(const SpaceVector& vector) { require(finite(vector), "a load is not finite"); }

std::size_t checked_index(int index, std::size_t count, const char* what) {
    require(known(index, count), what);
    return static_cast<std::size_t>(index);
}

double checked_station(double at_in, double length_in) {
    const double slack = rounding_of_length * length_in;
    require(at_in >= -slack && at_in <= length_in + slack, "a station lies beyond the member's ends");
    return std::clamp(at_in, 0.0, length_in);
}

}  // namespace toehold::mechanics::space_frame
