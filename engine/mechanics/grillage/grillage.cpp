#include "mechanics/grillage/grillage.h"

#include "mechanics/grillage/balance.h"
#include "mechanics/grillage/input_check.h"
#include "mechanics/grillage/member.h"
#include "mechanics/stiffness/scaled_factor.h"

#include <Eigen/Dense>
#include <Eigen/SparseCore>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace toehold::mechanics {
namespace {

Eigen::Index first_freedom(int node) { return 3 * static_cast<Eigen::Index>(node); }

/// From a node's (w, rx, ry) to those of a place that it carries rigidly: w + rx dy - ry dx.
Eigen::Matrix3d carried(Point node, Point place) {
    Eigen::Matrix3d result = Eigen::Matrix3d::Identity();
    result(0, 1) = place.y - node.y;
    result(0, 2) = node.x - place.x;
    return result;
}

struct PreparedJoint {
    int first = 0, second = 0;
    Eigen::Vector3d springs;
    Eigen::Matrix3d from_first, from_second;  ///< see `carried`
};

PreparedJoint prepare_joint(std::span<const Point> nodes, const GridJoint& joint) {
    return {joint.first,
            joint.second,
            {joint.vertical_lb_per_in, joint.about_x_lb_in, joint.about_y_lb_in},
            carried(nodes[static_cast<std::size_t>(joint.first)], *joint.at),
            carried(nodes[static_cast<std::size_t>(joint.second)], *joint.at)};
}

/// Its lower half, by parts of three rows and columns.
class Assembly {
  public:
    void add(int row, int column, const Eigen::Matrix3d& part) {
        for (int i = 0; i < 3; ++i) {
            for (int k = 0; k < 3; ++k) {
                if (3 * row + i >= 3 * column + k) entries_.emplace_back(3 * row + i, 3 * column + k, part(i, k));
            }
        }
    }
    [[nodiscard]] Eigen::SparseMatrix<double> stiffness(std::size_t nodes) const {
        const auto size = static_cast<Eigen::Index>(3 * nodes);
        Eigen::SparseMatrix<double> all(size, size);
        all.setFromTriplets(entries_.begin(), entries_.end());
        return all;
    }

  private:
    std::vector<Eigen::Triplet<double>> entries_;
};

Eigen::SparseMatrix<double> assembled(std::size_t nodes, std::span<const PreparedMember> members,
                                      std::span<const PreparedJoint> joints, std::span<const GridSupport> supports) {
    Assembly assembly;
    for (const PreparedMember& member : members) {
        const int from = member.of.from, to = member.of.to;
        assembly.add(from, from, member.stiffness.topLeftCorner<3, 3>());
        assembly.add(from, to, member.stiffness.topRightCorner<3, 3>());
        assembly.add(to, from, member.stiffness.bottomLeftCorner<3, 3>());
        assembly.add(to, to, member.stiffness.bottomRightCorner<3, 3>());
    }
    for (const PreparedJoint& joint : joints) {
        const Eigen::Matrix3d by_first = joint.springs.asDiagonal() * joint.from_first;
        const Eigen::Matrix3d by_second = joint.springs.asDiagonal() * joint.from_second;
        assembly.add(joint.first, joint.first, joint.from_first.transpose() * by_first);
        assembly.add(joint.first, joint.second, -joint.from_first.transpose() * by_second);
        assembly.add(joint.second, joint.first, -joint.from_second.transpose() * by_first);
        assembly.add(joint.second, joint.second, joint.from_second.transpose() * by_second);
    }
    for (const GridSupport& support : supports) {
        assembly.add(support.node, support.node,
                     Eigen::Vector3d(support.vertical_lb_per_in, support.about_x_lb_in, support.about_y_lb_in)
                         .asDiagonal()
                         .toDenseMatrix());
    }
    return assembly.stiffness(nodes);
}

double largest_distance(std::span<const Point> nodes) {
    double reach = 0.0;
    for (const Point node : nodes) reach = std::max(reach, std::hypot(node.x - nodes[0].x, node.y - nodes[0].y));
    return reach;
}

/// What springs put on the node or place that has moved so.
GridLoad of_springs(int node, const Eigen::Vector3d& springs, const Eigen::Vector3d& moved) {
    return {node, -springs(0) * moved(0), -springs(1) * moved(1), -springs(2) * moved(2)};
}

}  // namespace

struct Grillage::Prepared {
    std::vector<Point> nodes;
    std::vector<GridJoint> joints;  ///< each with its place
    std::vector<GridSupport> supports;
    std::vector<PreparedMember> members;
    std::vector<PreparedJoint> springs_between;
    double reach_in = 0.0;
    std::optional<ScaledFactor> factor;

    /// Checks the loads; stations are moved to the ends only where one lies beyond by rounding, in a copy in `moved`.
    [[nodiscard]] std::span<const MemberLoad> checked(std::span<const MemberLoad> loads,
                                                      std::vector<MemberLoad>& moved) const {
        bool beyond = false;
        for (const MemberLoad& load : loads) {
            const PreparedMember& member = members[checked_member(load.member, members.size())];
            check_load({0, load.up_lb, load.about_x_lb_in, load.about_y_lb_in}, nodes.size());
            beyond = beyond || checked_station(load.at_in, member.axis.length) != load.at_in;
        }
        if (!beyond) return loads;
        moved.assign(loads.begin(), loads.end());
        for (MemberLoad& load : moved)
            load.at_in = checked_station(load.at_in, members[static_cast<std::size_t>(load.member)].axis.length);
        return moved;
    }

    [[nodiscard]] Eigen::VectorXd motion_under(std::span<const GridLoad> loads,
                                               std::span<const MemberLoad> member_loads) const {
        Eigen::VectorXd result = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(3 * nodes.size()));
        const auto at = [&](int node) { return result.segment<3>(first_freedom(node)); };
        for (const GridLoad& load : loads)
            at(load.node) += Eigen::Vector3d(load.up_lb, load.about_x_lb_in, load.about_y_lb_in);
        for (const MemberLoad& load : member_loads) {
            const PreparedMember& member = members[static_cast<std::size_t>(load.member)];
            const Vector6 on_ends = on_nodes(member, load);
            at(member.of.from) += on_ends.head<3>();
            at(member.of.to) += on_ends.tail<3>();
        }
        return factor->solve(result);
    }

    /// Of members, joints and supports.
    void find_forces(const Eigen::VectorXd& motion, std::span<const MemberLoad> member_loads,
                     GridSolution& solution) const {
        const auto at = [&](int node) { return motion.segment<3>(first_freedom(node)); };
        solution.members.reserve(members.size());
        for (std::size_t i = 0; i < members.size(); ++i) {
            Vector6 ends;
            ends << at(members[i].of.from), at(members[i].of.to);
            solution.members.push_back(forces_at_ends(members[i], static_cast<int>(i), ends, member_loads));
        }
        solution.joints.reserve(joints.size());
        for (const PreparedJoint& joint : springs_between) {
            const Eigen::Vector3d apart = joint.from_second * at(joint.second) - joint.from_first * at(joint.first);
            solution.joints.push_back(of_springs(joint.second, joint.springs, apart));
        }
        solution.supports.reserve(supports.size());
        for (const GridSupport& s : supports)
            solution.supports.push_back(
                of_springs(s.node, {s.vertical_lb_per_in, s.about_x_lb_in, s.about_y_lb_in}, at(s.node)));
    }

    [[nodiscard]] std::size_t checked(const GridSolution& solution, int member) const {
        const std::size_t index = checked_member(member, members.size());
        if (!solution.stable || solution.members.size() != members.size() || solution.motions.size() != nodes.size())
            throw std::invalid_argument("a solution that is not of this grid");
        return index;
    }
};

Grillage::Grillage(std::vector<Point> nodes, std::vector<GridMember> members, std::vector<GridJoint> joints,
                   std::vector<GridSupport> supports) {
    check_grid(nodes, members, joints, supports);
    auto prepared = std::make_shared<Prepared>();
    prepared->reach_in = largest_distance(nodes);
    for (const GridMember& member : members) prepared->members.push_back(prepare_member(nodes, member));
    for (GridJoint& joint : joints) {
        if (!joint.at) joint.at = nodes[static_cast<std::size_t>(joint.first)];
        prepared->springs_between.push_back(prepare_joint(nodes, joint));
    }
    prepared->factor = factored(assembled(nodes.size(), prepared->members, prepared->springs_between, supports));
    prepared->nodes = std::move(nodes);
    prepared->joints = std::move(joints);
    prepared->supports = std::move(supports);
    prepared_ = std::move(prepared);
}

bool Grillage::stable() const { return prepared_->factor.has_value(); }

GridSolution Grillage::solve(std::span<const GridLoad> loads, std::span<const MemberLoad> member_loads) const {
    const Prepared& grid = *prepared_;
    std::vector<MemberLoad> moved;
    const std::span<const MemberLoad> along = grid.checked(member_loads, moved);
    for (const GridLoad& load : loads) check_load(load, grid.nodes.size());
    GridSolution solution;
    if (!grid.factor) return solution;
    solution.stable = true;

    const Eigen::VectorXd motion = grid.motion_under(loads, along);
    solution.motions.reserve(grid.nodes.size());
    for (Eigen::Index i = 0; i < motion.size(); i += 3)
        solution.motions.push_back({motion(i), motion(i + 1), motion(i + 2)});
    grid.find_forces(motion, along, solution);
    solution.residual = lack_of_balance({grid.nodes, grid.members, grid.joints, grid.reach_in, loads, along}, solution);
    return solution;
}

GridMotion Grillage::motion_at(const GridSolution& solution, int member, double at_in,
                               std::span<const MemberLoad> member_loads) const {
    const std::size_t index = prepared_->checked(solution, member);
    const PreparedMember& of = prepared_->members[index];
    std::vector<MemberLoad> moved;
    return motion_inside(of, member, solution.motions[static_cast<std::size_t>(of.of.from)],
                         solution.members[index].at_from, checked_station(at_in, of.axis.length),
                         prepared_->checked(member_loads, moved));
}

GridExtremes Grillage::extremes(const GridSolution& solution, int member,
                                std::span<const MemberLoad> member_loads) const {
    return extremes(solution.members[prepared_->checked(solution, member)].at_from, member, member_loads);
}

GridExtremes Grillage::extremes(const GridSection& at_from, int member,
                                std::span<const MemberLoad> member_loads) const {
    const std::size_t index = checked_member(member, prepared_->members.size());
    std::vector<MemberLoad> moved;
    return extremes_of(prepared_->members[index], member, at_from, prepared_->checked(member_loads, moved));
}

GridSolution solve_grillage(std::span<const Point> nodes, std::span<const GridMember> members,
                            std::span<const GridJoint> joints, std::span<const GridSupport> supports,
                            std::span<const GridLoad> loads) {
    return Grillage({nodes.begin(), nodes.end()}, {members.begin(), members.end()}, {joints.begin(), joints.end()},
                    {supports.begin(), supports.end()})
        .solve(loads, {});
}

}  // namespace toehold::mechanics
