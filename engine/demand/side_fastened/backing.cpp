#include "demand/side_fastened/backing.h"

#include "catalog/resolve_side.h"
#include "demand/framing/frame.h"
#include "demand/framing/member_compliance.h"

#include <Eigen/Dense>

#include <algorithm>

namespace toehold::demand {
namespace {

constexpr double still_lb_per_in = 1e9;
constexpr double still_lb_in = 1e10;

void add_member(std::vector<std::size_t>& members, const catalog::Resolved& resolved, const std::string& id) {
    const std::optional<std::size_t> found = model::find_member(resolved.detail.framing, id);
    if (found && std::find(members.begin(), members.end(), *found) == members.end()) members.push_back(*found);
}

/// In the mechanics' axes of a mount on a face: y from the face towards the post, x so that z stays up.
mechanics::SpaceVector seen_from_face(const model::Member& member, const catalog::SideJoint& joint, double along_in) {
    const bool along_x = member.along == model::PlanAxis::x;
    const double x = along_x ? along_in : member.across_in, y = along_x ? member.across_in : along_in;
    const double sign = -joint.towards_y;
    return {sign * x, sign * y + joint.to_member_face_in, -0.5 * member.depth_in};
}

/// Stiffness of (w, rx, ry) in the plan's axes put among (ux, uy, uz, rx, ry, rz) of each body.
Eigen::MatrixXd among_six(const Eigen::MatrixXd& three, std::size_t bodies, double turned) {
    const auto size = static_cast<Eigen::Index>(6 * bodies);
    Eigen::MatrixXd six = Eigen::MatrixXd::Zero(size, size);
    constexpr std::array<Eigen::Index, 3> where = {2, 3, 4};
    const std::array<double, 3> sign = {1.0, turned, turned};
    for (std::size_t body = 0; body < bodies; ++body) {
        const auto first = static_cast<Eigen::Index>(6 * body);
        six(first, first) = six(first + 1, first + 1) = still_lb_per_in;
        six(first + 5, first + 5) = still_lb_in;
    }
    for (std::size_t one = 0; one < bodies; ++one) {
        for (std::size_t other = 0; other < bodies; ++other) {
            for (std::size_t row = 0; row < 3; ++row) {
                for (std::size_t column = 0; column < 3; ++column) {
                    six(static_cast<Eigen::Index>(6 * one) + where.at(row),
                        static_cast<Eigen::Index>(6 * other) + where.at(column)) =
                        sign.at(row) * sign.at(column) *
                        three(static_cast<Eigen::Index>(3 * one + row), static_cast<Eigen::Index>(3 * other + column));
                }
            }
        }
    }
    return six;
}

}  // namespace

std::vector<std::size_t> backing_members(const catalog::Resolved& resolved) {
    const model::SideFastened& mount = on_side(resolved.detail);
    std::vector<std::size_t> members;
    add_member(members, resolved, mount.member);
    for (const model::AnchorGroup& group : mount.anchors) add_member(members, resolved, group.into);
    for (const model::TensionTie& tie : mount.ties) add_member(members, resolved, tie.into);
    return members;
}

mechanics::BackingBodies backing_bodies(const catalog::Resolved& resolved, const std::vector<std::size_t>& members) {
    if (members.size() < 2) return {};
    const Frame frame = make_frame(resolved);
    const bool held =
        std::all_of(members.begin(), members.end(), [&](std::size_t member) { return frame.holds_member(member); });
    if (!held || !frame.grillage->stable()) return {};
    const catalog::SideJoint joint = catalog::side_joint(resolved.detail);
    std::vector<MemberPlace> places;
    mechanics::BackingBodies bodies;
    for (const std::size_t index : members) {
        const model::Member& member = frame.members[index];
        // Where the joint is along a member that runs along the rail; the face along one that runs to it.
        const double wanted_in = member.along == model::PlanAxis::x ? 0.0 : joint.towards_y * joint.to_member_face_in;
        const double at_in = clear_of_ends_in(member, wanted_in);
        places.push_back({index, at_in});
        bodies.places.push_back(seen_from_face(member, joint, at_in));
    }
    const Eigen::MatrixXd stiffness =
        among_six(member_stiffness(frame, places), members.size(), joint.towards_y < 0.0 ? 1.0 : -1.0);
    bodies.stiffness.assign(stiffness.data(), stiffness.data() + stiffness.size());
    return bodies;
}

}  // namespace toehold::demand
