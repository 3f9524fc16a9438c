#include "mechanics/space_frame/node_balance.h"

#include <algorithm>

namespace toehold::mechanics::space_frame {
namespace {

/// What one load is measured against: a force, and a moment or a force over the frame's size.
struct Scale {
    double force_lb = 0.0, moment_lb_in = 0.0;

    void take(const Vector3& force, const Vector3& couple) {
        force_lb = std::max(force_lb, force.norm());
        moment_lb_in = std::max(moment_lb_in, couple.norm());
    }
};

Scale scale_of(const BalanceInput& input) {
    Scale scale;
    for (const SpaceNodeLoad& load : input.loads) scale.take(eigen(load.force_lb), eigen(load.couple_lb_in));
    for (const AlongLoad& load : input.along)
        scale.take((load.line ? load.to_in - load.from_in : 1.0) * load.force, load.couple);
    scale.moment_lb_in = std::max(scale.moment_lb_in, scale.force_lb * input.reach_in);
    if (input.reach_in > 0.0) scale.force_lb = std::max(scale.force_lb, scale.moment_lb_in / input.reach_in);
    return scale;
}

}  // namespace

double lack_of_balance(const BalanceInput& input, const SpaceSolution& solution) {
    const Scale scale = scale_of(input);
    if (!(scale.force_lb > 0.0)) return 0.0;
    Eigen::Matrix<double, 6, Eigen::Dynamic> left =
        Eigen::Matrix<double, 6, Eigen::Dynamic>::Zero(6, static_cast<Eigen::Index>(input.nodes.size()));
    for (std::size_t i = 0; i < solution.members.size(); ++i) {
        const PreparedBeam& beam = input.assembly.beams[i];
        const Matrix6 to_frame = twice(beam.axes).transpose();
        left.col(beam.of.from) += to_frame * six(solution.members[i].at_from);
        left.col(beam.of.to) -= to_frame * six(solution.members[i].at_to);
    }
    for (std::size_t i = 0; i < solution.joints.size(); ++i) {
        const PreparedJoint& joint = input.assembly.joints[i];
        const Vector6 force = six(solution.joints[i]);
        left.col(joint.second) += joint.from_second.transpose() * force;
        left.col(joint.first) -= joint.from_first.transpose() * force;
    }
    for (std::size_t i = 0; i < solution.supports.size(); ++i) {
        const PreparedSupport& support = input.assembly.supports[i];
        left.col(support.node) += support.to_axes.transpose() * six(solution.supports[i]);
    }
    for (const SpaceNodeLoad& load : input.loads) left.col(load.node) += six({load.force_lb, load.couple_lb_in});
    return std::max(left.topRows<3>().cwiseAbs().maxCoeff() / scale.force_lb,
                    left.bottomRows<3>().cwiseAbs().maxCoeff() / scale.moment_lb_in);
}

}  // namespace toehold::mechanics::space_frame
