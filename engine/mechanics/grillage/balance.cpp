#include "mechanics/grillage/balance.h"

#include <algorithm>
#include <cmath>

namespace toehold::mechanics {
namespace {

/// What one load is measured against: a force, and a moment or a force over the grid's size.
struct Scale {
    double force_lb = 0.0, moment_lb_in = 0.0;
};

template <class Load>
void take_largest(Scale& scale, std::span<const Load> loads) {
    for (const Load& load : loads) {
        scale.force_lb = std::max(scale.force_lb, std::abs(load.up_lb));
        scale.moment_lb_in = std::max({scale.moment_lb_in, std::abs(load.about_x_lb_in), std::abs(load.about_y_lb_in)});
    }
}

Scale scale_of(const BalanceInput& input) {
    Scale scale;
    take_largest(scale, input.loads);
    take_largest(scale, input.member_loads);
    scale.moment_lb_in = std::max(scale.moment_lb_in, scale.force_lb * input.reach_in);
    if (input.reach_in > 0.0) scale.force_lb = std::max(scale.force_lb, scale.moment_lb_in / input.reach_in);
    return scale;
}

/// Sums at every node what members, joints, supports and loads put on it.
class Nodes {
  public:
    explicit Nodes(std::size_t count) : left_(Eigen::VectorXd::Zero(static_cast<Eigen::Index>(3 * count))) {}

    void add(int node, double up_lb, double about_x_lb_in, double about_y_lb_in) {
        left_.segment<3>(3 * static_cast<Eigen::Index>(node)) += Eigen::Vector3d(up_lb, about_x_lb_in, about_y_lb_in);
    }

    void add(const GridLoad& load) { add(load.node, load.up_lb, load.about_x_lb_in, load.about_y_lb_in); }

    /// A force at a place away from the node turns it by its arm.
    void add(const GridLoad& load, double sense, int node, Point node_at, Point load_at) {
        add(node, sense * load.up_lb, sense * (load.about_x_lb_in + load.up_lb * (load_at.y - node_at.y)),
            sense * (load.about_y_lb_in - load.up_lb * (load_at.x - node_at.x)));
    }

    void add(const PreparedMember& member, const MemberForces& forces) {
        const MemberAxis& axis = member.axis;
        const auto on_node = [&](int node, const GridSection& section, double sense) {
            // Torque about the axis and bending moment about its left, as rotations about x and y.
            add(node, -sense * section.shear_lb,
                sense * (section.moment_lb_in * axis.sin - section.torque_lb_in * axis.cos),
                sense * (-section.moment_lb_in * axis.cos - section.torque_lb_in * axis.sin));
        };
        on_node(member.of.from, forces.at_from, 1.0);
        on_node(member.of.to, forces.at_to, -1.0);
    }

    [[nodiscard]] double worst(const Scale& scale) const {
        double worst = 0.0;
        for (Eigen::Index i = 0; i < left_.size(); ++i)
            worst = std::max(worst, std::abs(left_(i)) / (i % 3 == 0 ? scale.force_lb : scale.moment_lb_in));
        return worst;
    }

  private:
    Eigen::VectorXd left_;
};

/// From one end of a member through its loads, what passes must come to what is given at the other.
double worst_member(const BalanceInput& input, const GridSolution& solution, const Scale& scale) {
    double worst = 0.0;
    for (std::size_t i = 0; i < input.members.size(); ++i) {
        const PreparedMember& member = input.members[i];
        const MemberForces& forces = solution.members[i];
        const GridSection far = section_at(member, static_cast<int>(i), forces.at_from, member.axis.length,
                                           Side::after_load, input.member_loads);
        worst = std::max({worst, std::abs(far.shear_lb - forces.at_to.shear_lb) / scale.force_lb,
                          std::abs(far.moment_lb_in - forces.at_to.moment_lb_in) / scale.moment_lb_in,
                          std::abs(far.torque_lb_in - forces.at_to.torque_lb_in) / scale.moment_lb_in});
    }
    return worst;
}

}  // namespace

double lack_of_balance(const BalanceInput& input, const GridSolution& solution) {
    const Scale scale = scale_of(input);
    if (!(scale.force_lb > 0.0)) return 0.0;
    Nodes nodes(input.nodes.size());
    for (std::size_t i = 0; i < input.members.size(); ++i) nodes.add(input.members[i], solution.members[i]);
    for (std::size_t i = 0; i < input.joints.size(); ++i) {
        const GridJoint& joint = input.joints[i];
        const auto add = [&](int node, double sense) {
            nodes.add(solution.joints[i], sense, node, input.nodes[static_cast<std::size_t>(node)], *joint.at);
        };
        add(joint.second, 1.0);
        add(joint.first, -1.0);
    }
    for (const GridLoad& on_node : solution.supports) nodes.add(on_node);
    for (const GridLoad& load : input.loads) nodes.add(load);
    return std::max(nodes.worst(scale), worst_member(input, solution, scale));
}

}  // namespace toehold::mechanics
