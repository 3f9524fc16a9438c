#include "mechanics/space_frame/space_frame.h"

#include "mechanics/space_frame/input_check.h"
#include "mechanics/space_frame/prepared_frame.h"

#include <algorithm>
#include <utility>

namespace toehold::mechanics {
namespace {

using space_frame::AlongLoad;
using space_frame::PreparedBeam;
using space_frame::PreparedFrame;

// Columns solved together stay near the processor.
constexpr std::size_t solved_together = 32;

}  // namespace

BaseStiffness uncoupled(const SixStiffnesses& springs) {
    BaseStiffness result = {};
    for (std::size_t i = 0; i < springs.size(); ++i) result[i][i] = springs[i];
    return result;
}

SpaceFrame::SpaceFrame(std::vector<SpaceVector> nodes, std::vector<SpaceMember> members, std::vector<SpaceJoint> joints,
                       std::vector<SpaceSupport> supports) {
    space_frame::check_frame(nodes, members, joints, supports);
    auto prepared = std::make_shared<PreparedFrame>();
    prepared->assembly = space_frame::assemble(nodes, members, joints, supports);
    for (const SpaceVector& node : nodes)
        prepared->reach_in = std::max(prepared->reach_in, space_frame::eigen(node - nodes.front()).norm());
    prepared->nodes = std::move(nodes);
    prepared_ = std::move(prepared);
}

bool SpaceFrame::stable() const { return prepared_->assembly.factor.has_value(); }
std::span<const SpaceVector> SpaceFrame::nodes() const { return prepared_->nodes; }
double SpaceFrame::length_of(int member) const { return prepared_->beam(member).length; }

SpaceSolution SpaceFrame::solve(const SpaceLoads& loads) const {
    SpaceSolution result;
    solve_each({&loads, 1}, [&](std::size_t, SpaceSolution&& solution) { result = std::move(solution); });
    return result;
}

void SpaceFrame::solve_each(std::span<const SpaceLoads> loads,
                            const std::function<void(std::size_t, SpaceSolution&&)>& take) const {
    const PreparedFrame& frame = *prepared_;
    const auto unknowns = 6 * static_cast<Eigen::Index>(frame.nodes.size());
    for (std::size_t begin = 0; begin < loads.size(); begin += solved_together) {
        const std::size_t count = std::min(solved_together, loads.size() - begin);
        std::vector<std::vector<AlongLoad>> along;
        for (const SpaceLoads& load : loads.subspan(begin, count)) {
            frame.check(load.nodes);
            along.push_back(frame.along(load));
        }
        if (!stable()) {
            for (std::size_t i = 0; i < count; ++i) take(begin + i, SpaceSolution{});
            continue;
        }
        Eigen::MatrixXd columns(unknowns, static_cast<Eigen::Index>(count));
        for (std::size_t i = 0; i < count; ++i)
            columns.col(static_cast<Eigen::Index>(i)) = frame.on_unknowns(loads[begin + i].nodes, along[i]);
        columns = frame.assembly.factor->solve(columns);
        for (std::size_t i = 0; i < count; ++i)
            take(begin + i, frame.found(columns.col(static_cast<Eigen::Index>(i)), loads[begin + i].nodes, along[i]));
    }
}

SpaceMotion SpaceFrame::motion_at(const SpaceSolution& solution, int member, double at_in,
                                  const SpaceLoads& loads) const {
    const PreparedBeam& beam = prepared_->checked(solution, member);
    const SpaceMotion& from = solution.motions[static_cast<std::size_t>(beam.of.from)];
    const space_frame::Vector6 motion =
        space_frame::motion_inside(beam, member, space_frame::six({from.move_in, from.turn_rad}),
                                   space_frame::six(solution.members[static_cast<std::size_t>(member)].at_from),
                                   space_frame::checked_station(at_in, beam.length), prepared_->along(loads));
    return {space_frame::plain(motion.head<3>()), space_frame::plain(motion.tail<3>())};
}

SpaceSection SpaceFrame::section_at(const SpaceSolution& solution, int member, double at_in, const SpaceLoads& loads,
                                    BesideLoad side) const {
    const PreparedBeam& beam = prepared_->checked(solution, member);
    return space_frame::as_force(space_frame::section_inside(
        member, space_frame::six(solution.members[static_cast<std::size_t>(member)].at_from),
        space_frame::checked_station(at_in, beam.length), side, prepared_->along(loads)));
}

SpaceExtremes SpaceFrame::extremes(const SpaceSolution& solution, int member, const SpaceLoads& loads) const {
    const PreparedBeam& beam = prepared_->checked(solution, member);
    return space_frame::extremes_inside(beam, member,
                                        space_frame::six(solution.members[static_cast<std::size_t>(member)].at_from),
                                        prepared_->along(loads));
}

}  // namespace toehold::mechanics
