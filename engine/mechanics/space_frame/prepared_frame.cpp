#include "mechanics/space_frame/prepared_frame.h"

#include "mechanics/space_frame/input_check.h"
#include "mechanics/space_frame/node_balance.h"

#include <stdexcept>

namespace toehold::mechanics::space_frame {

const PreparedBeam& PreparedFrame::beam(int member) const {
    return assembly.beams[checked_index(member, assembly.beams.size(), "a member that is not there is named")];
}

void PreparedFrame::check(const std::vector<SpaceNodeLoad>& loads) const {
    for (const SpaceNodeLoad& load : loads) {
        (void)checked_index(load.node, nodes.size(), "a load names a node that is not there");
        check_finite(load.force_lb);
        check_finite(load.couple_lb_in);
    }
}

std::vector<AlongLoad> PreparedFrame::along(const SpaceLoads& loads) const {
    std::vector<AlongLoad> result;
    result.reserve(loads.points.size() + loads.lines.size());
    for (const SpacePointLoad& load : loads.points) {
        const PreparedBeam& on = beam(load.member);
        check_finite(load.force_lb);
        check_finite(load.couple_lb_in);
        const double at = checked_station(load.at_in, on.length);
        result.push_back(
            {load.member, false, at, at, on.axes * eigen(load.force_lb), on.axes * eigen(load.couple_lb_in)});
    }
    for (const SpaceLineLoad& load : loads.lines) {
        const PreparedBeam& on = beam(load.member);
        check_finite(load.force_lb_per_in);
        const double from = checked_station(load.from_in, on.length), to = checked_station(load.to_in, on.length);
        if (from > to) throw std::invalid_argument("a line load ends before it begins");
        result.push_back({load.member, true, from, to, on.axes * eigen(load.force_lb_per_in), Vector3::Zero()});
    }
    return result;
}

Eigen::VectorXd PreparedFrame::on_unknowns(const std::vector<SpaceNodeLoad>& loads,
                                           const std::vector<AlongLoad>& along) const {
    Eigen::VectorXd result = Eigen::VectorXd::Zero(6 * static_cast<Eigen::Index>(nodes.size()));
    for (const SpaceNodeLoad& load : loads)
        assembly.add_load(load.node, six({load.force_lb, load.couple_lb_in}), result);
    for (const AlongLoad& load : along) {
        const PreparedBeam& on = assembly.beams[static_cast<std::size_t>(load.member)];
        const OnNodes nodes_feel = on_nodes(on, load);
        assembly.add_load(on.of.from, nodes_feel.from, result);
        assembly.add_load(on.of.to, nodes_feel.to, result);
    }
    return result;
}

SpaceSolution PreparedFrame::found(const Eigen::VectorXd& unknowns, const std::vector<SpaceNodeLoad>& loads,
                                   const std::vector<AlongLoad>& along) const {
    SpaceSolution solution;
    solution.stable = true;
    std::vector<Vector6> motions(nodes.size());
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        motions[i] = assembly.motion(static_cast<int>(i), unknowns);
        solution.motions.push_back({plain(motions[i].head<3>()), plain(motions[i].tail<3>())});
    }
    const auto of = [&](int node) -> const Vector6& { return motions[static_cast<std::size_t>(node)]; };
    for (std::size_t i = 0; i < assembly.beams.size(); ++i) {
        const PreparedBeam& beam = assembly.beams[i];
        solution.members.push_back(forces_at_ends(beam, static_cast<int>(i), of(beam.of.from), of(beam.of.to), along));
    }
    for (std::size_t i = 0; i < assembly.joints.size(); ++i) {
        const Vector6 force = -assembly.joints[i].stiffness.cwiseProduct(assembly.stretch(i, unknowns));
        solution.joints.push_back(as_force(force));
    }
    for (const PreparedSupport& support : assembly.supports)
        solution.supports.push_back(as_force(-support.stiffness * (support.to_axes * of(support.node))));
    solution.residual = lack_of_balance({nodes, assembly, reach_in, loads, along}, solution);
    return solution;
}

const PreparedBeam& PreparedFrame::checked(const SpaceSolution& solution, int member) const {
    const PreparedBeam& result = beam(member);
    if (!solution.stable || solution.members.size() != assembly.beams.size() || solution.motions.size() != nodes.size())
        throw std::invalid_argument("a solution that is not of this frame");
    return result;
}

}  // namespace toehold::mechanics::space_frame
