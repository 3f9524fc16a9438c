#include "mechanics/framing/grillage.h"

#include <Eigen/Cholesky>
#include <Eigen/Dense>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

using Vector6 = Eigen::Matrix<double, 6, 1>;
using Matrix6 = Eigen::Matrix<double, 6, 6>;

/// Direction of a member in plan, and its length.
struct Axis {
    double cos = 1.0, sin = 0.0, length = 0.0;
};

Axis axis_of(std::span<const Point> nodes, const GridMember& member) {
    const Point a = nodes[static_cast<std::size_t>(member.from)], b = nodes[static_cast<std::size_t>(member.to)];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    return {(b.x - a.x) / length, (b.y - a.y) / length, length};
}

/// From (w, rx, ry) to the member's own (w, twist about its axis, slope dw/ds) at both ends.
Matrix6 to_member(const Axis& axis) {
    Matrix6 turn = Matrix6::Zero();
    for (const Eigen::Index end : {0, 3}) {
        turn(end, end) = 1.0;
        turn(end + 1, end + 1) = axis.cos;
        turn(end + 1, end + 2) = axis.sin;
        // A small rotation (rx, ry) tilts the plane by w,x = -ry and w,y = rx.
        turn(end + 2, end + 1) = axis.sin;
        turn(end + 2, end + 2) = -axis.cos;
    }
    return turn;
}

/// Timoshenko beam and torsion bar over (w, twist, slope) at both ends (J. S. Przemieniecki, Theory of Matrix
/// Structural Analysis, 1968, 5.6).
Matrix6 member_stiffness(const GridMember& member, double length) {
    const double shear_part =
        member.shear_lb > 0.0 ? 12.0 * member.bending_lb_in2 / (member.shear_lb * length * length) : 0.0;
    const double k = member.bending_lb_in2 / (length * length * length * (1.0 + shear_part));
    const double l2 = length * length;
    Eigen::Matrix4d beam;
    beam << 12.0, 6.0 * length, -12.0, 6.0 * length,                                    //
        6.0 * length, (4.0 + shear_part) * l2, -6.0 * length, (2.0 - shear_part) * l2,  //
        -12.0, -6.0 * length, 12.0, -6.0 * length,                                      //
        6.0 * length, (2.0 - shear_part) * l2, -6.0 * length, (4.0 + shear_part) * l2;
    beam *= k;
    constexpr std::array<Eigen::Index, 4> bending = {0, 2, 3, 5};
    Matrix6 stiffness = Matrix6::Zero();
    for (Eigen::Index row = 0; row < 4; ++row) {
        for (Eigen::Index column = 0; column < 4; ++column) {
            stiffness(bending[static_cast<std::size_t>(row)], bending[static_cast<std::size_t>(column)]) =
                beam(row, column);
        }
    }
    const double torsion = member.torsion_lb_in2 / length;
    stiffness(1, 1) = stiffness(4, 4) = torsion;
    stiffness(1, 4) = stiffness(4, 1) = -torsion;
    return stiffness;
}

std::array<Eigen::Index, 6> freedoms(int from, int to) {
    const Eigen::Index a = 3 * static_cast<Eigen::Index>(from), b = 3 * static_cast<Eigen::Index>(to);
    return {a, a + 1, a + 2, b, b + 1, b + 2};
}

Vector6 picked(const Eigen::VectorXd& motion, const std::array<Eigen::Index, 6>& places) {
    Vector6 part;
    for (Eigen::Index i = 0; i < 6; ++i) part(i) = motion(places[static_cast<std::size_t>(i)]);
    return part;
}

void check(std::span<const Point> nodes, std::span<const GridMember> members, std::span<const GridJoint> joints,
           std::span<const GridSupport> supports, std::span<const GridLoad> loads) {
    const auto known = [&](int node) { return node >= 0 && static_cast<std::size_t>(node) < nodes.size(); };
    const auto require = [](bool sound, const char* what) {
        if (!sound) throw std::invalid_argument(what);
    };
    for (const GridMember& m : members) {
        require(known(m.from) && known(m.to), "a member names a node that is not there");
        require(m.from != m.to && axis_of(nodes, m).length > 0.0, "a member has no length");
        require(m.bending_lb_in2 > 0.0 && m.torsion_lb_in2 > 0.0 && m.shear_lb >= 0.0,
                "a member's stiffness is out of range");
    }
    for (const GridJoint& j : joints) {
        require(known(j.first) && known(j.second), "a joint names a node that is not there");
        require(j.vertical_lb_per_in >= 0.0 && j.about_x_lb_in >= 0.0 && j.about_y_lb_in >= 0.0,
                "a joint's stiffness is below 0");
    }
    for (const GridSupport& s : supports) {
        require(known(s.node), "a support names a node that is not there");
        require(s.vertical_lb_per_in >= 0.0 && s.about_x_lb_in >= 0.0 && s.about_y_lb_in >= 0.0,
                "a support's stiffness is below 0");
    }
    for (const GridLoad& load : loads) require(known(load.node), "a load names a node that is not there");
}

class Assembly {
  public:
    explicit Assembly(std::size_t nodes)
        : stiffness_(
              Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(3 * nodes), static_cast<Eigen::Index>(3 * nodes))) {}

    void add(std::span<const Point> nodes, const GridMember& member) {
        const Axis axis = axis_of(nodes, member);
        const Matrix6 turn = to_member(axis);
        const Matrix6 global = turn.transpose() * member_stiffness(member, axis.length) * turn;
        const auto places = freedoms(member.from, member.to);
        for (Eigen::Index row = 0; row < 6; ++row) {
            for (Eigen::Index column = 0; column < 6; ++column) {
                stiffness_(places[static_cast<std::size_t>(row)], places[static_cast<std::size_t>(column)]) +=
                    global(row, column);
            }
        }
    }

    void add(const GridJoint& joint) {
        const auto places = freedoms(joint.first, joint.second);
        const std::array<double, 3> springs = {joint.vertical_lb_per_in, joint.about_x_lb_in, joint.about_y_lb_in};
        for (std::size_t i = 0; i < 3; ++i) {
            stiffness_(places[i], places[i]) += springs[i];
            stiffness_(places[i + 3], places[i + 3]) += springs[i];
            stiffness_(places[i], places[i + 3]) -= springs[i];
            stiffness_(places[i + 3], places[i]) -= springs[i];
        }
    }

    void add(const GridSupport& support) {
        const Eigen::Index first = 3 * static_cast<Eigen::Index>(support.node);
        stiffness_(first, first) += support.vertical_lb_per_in;
        stiffness_(first + 1, first + 1) += support.about_x_lb_in;
        stiffness_(first + 2, first + 2) += support.about_y_lb_in;
    }

    /// Symmetric scaling by the diagonal makes inches and radians comparable, so that a free motion shows as a pivot
    /// near 0.
    [[nodiscard]] std::optional<Eigen::VectorXd> solve(const Eigen::VectorXd& load) const {
        constexpr double free_motion = 1e-11;
        if ((stiffness_.diagonal().array() <= 0.0).any()) return std::nullopt;
        const Eigen::VectorXd scale = stiffness_.diagonal().cwiseSqrt().cwiseInverse();
        const Eigen::MatrixXd scaled = scale.asDiagonal() * stiffness_ * scale.asDiagonal();
        const Eigen::LDLT<Eigen::MatrixXd> factor(scaled);
        if (factor.info() != Eigen::Success || factor.vectorD().minCoeff() < free_motion) return std::nullopt;
        return Eigen::VectorXd(scale.cwiseProduct(factor.solve(scale.cwiseProduct(load))));
    }

  private:
    Eigen::MatrixXd stiffness_;
};

MemberForces forces_in(std::span<const Point> nodes, const GridMember& member, const Eigen::VectorXd& motion) {
    const Axis axis = axis_of(nodes, member);
    const Vector6 own = to_member(axis) * picked(motion, freedoms(member.from, member.to));
    const Vector6 end = member_stiffness(member, axis.length) * own;
    // `end` is what the nodes put on the member: (up, torque about its axis, moment that turns its slope up).
    return {{end(0), -end(2), end(1)}, {-end(3), end(5), -end(4)}};
}

GridLoad of_springs(int node, double vertical, double about_x, double about_y, double w, double rx, double ry) {
    return {node, -vertical * w, -about_x * rx, -about_y * ry};
}

/// Sums at every node what members, joints, supports and loads put on it, from the forces given back alone.
class Balance {
  public:
    Balance(std::span<const Point> nodes)
        : nodes_(nodes), left_(Eigen::VectorXd::Zero(static_cast<Eigen::Index>(3 * nodes.size()))) {}

    void add(const GridLoad& load, double sense) {
        const Eigen::Index first = 3 * static_cast<Eigen::Index>(load.node);
        left_(first) += sense * load.up_lb;
        left_(first + 1) += sense * load.about_x_lb_in;
        left_(first + 2) += sense * load.about_y_lb_in;
    }

    void add(const GridMember& member, const MemberForces& forces) {
        const Axis axis = axis_of(nodes_, member);
        const auto on_node = [&](int node, const GridSection& section, double sense) {
            // Torque about the axis and bending moment about its left, as rotations about x and y.
            add({node, -sense * section.shear_lb,
                 sense * (section.moment_lb_in * axis.sin - section.torque_lb_in * axis.cos),
                 sense * (-section.moment_lb_in * axis.cos - section.torque_lb_in * axis.sin)},
                1.0);
        };
        on_node(member.from, forces.at_from, 1.0);
        on_node(member.to, forces.at_to, -1.0);
    }

    [[nodiscard]] double relative(std::span<const GridLoad> loads) const {
        double largest_force = 0.0, largest_moment = 0.0, reach = 0.0;
        for (const GridLoad& load : loads) {
            largest_force = std::max(largest_force, std::abs(load.up_lb));
            largest_moment = std::max({largest_moment, std::abs(load.about_x_lb_in), std::abs(load.about_y_lb_in)});
        }
        for (const Point node : nodes_) reach = std::max(reach, std::hypot(node.x - nodes_[0].x, node.y - nodes_[0].y));
        const double moment = std::max(largest_moment, largest_force * reach);
        const double force = std::max(largest_force, reach > 0.0 ? moment / reach : 0.0);
        if (!(force > 0.0)) return 0.0;
        double worst = 0.0;
        for (Eigen::Index i = 0; i < left_.size(); ++i)
            worst = std::max(worst, std::abs(left_(i)) / (i % 3 == 0 ? force : moment));
        return worst;
    }

  private:
    std::span<const Point> nodes_;
    Eigen::VectorXd left_;
};

}  // namespace

GridSolution solve_grillage(std::span<const Point> nodes, std::span<const GridMember> members,
                            std::span<const GridJoint> joints, std::span<const GridSupport> supports,
                            std::span<const GridLoad> loads) {
    check(nodes, members, joints, supports, loads);
    Assembly assembly(nodes.size());
    for (const GridMember& member : members) assembly.add(nodes, member);
    for (const GridJoint& joint : joints) assembly.add(joint);
    for (const GridSupport& support : supports) assembly.add(support);
    Eigen::VectorXd applied = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(3 * nodes.size()));
    for (const GridLoad& load : loads) {
        applied.segment<3>(3 * static_cast<Eigen::Index>(load.node)) +=
            Eigen::Vector3d(load.up_lb, load.about_x_lb_in, load.about_y_lb_in);
    }
    GridSolution solution;
    const std::optional<Eigen::VectorXd> motion = assembly.solve(applied);
    if (!motion) return solution;
    solution.stable = true;
    const auto at = [&](int node) { return Eigen::Vector3d(motion->segment<3>(3 * static_cast<Eigen::Index>(node))); };
    Balance balance(nodes);
    for (std::size_t node = 0; node < nodes.size(); ++node) {
        const Eigen::Vector3d m = at(static_cast<int>(node));
        solution.motions.push_back({m(0), m(1), m(2)});
    }
    for (const GridMember& member : members) {
        solution.members.push_back(forces_in(nodes, member, *motion));
        balance.add(member, solution.members.back());
    }
    for (const GridJoint& j : joints) {
        const Eigen::Vector3d apart = at(j.second) - at(j.first);
        solution.joints.push_back(
            of_springs(j.second, j.vertical_lb_per_in, j.about_x_lb_in, j.about_y_lb_in, apart(0), apart(1), apart(2)));
        balance.add(solution.joints.back(), 1.0);
        GridLoad on_first = solution.joints.back();
        on_first.node = j.first;
        balance.add(on_first, -1.0);
    }
    for (const GridSupport& s : supports) {
        const Eigen::Vector3d m = at(s.node);
        solution.supports.push_back(
            of_springs(s.node, s.vertical_lb_per_in, s.about_x_lb_in, s.about_y_lb_in, m(0), m(1), m(2)));
        balance.add(solution.supports.back(), 1.0);
    }
    for (const GridLoad& load : loads) balance.add(load, 1.0);
    solution.residual = balance.relative(loads);
    return solution;
}

}  // namespace toehold::mechanics
