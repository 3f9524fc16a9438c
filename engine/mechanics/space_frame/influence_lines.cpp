#include "mechanics/space_frame/influence_lines.h"

#include "mechanics/space_frame/superposition.h"

#include <utility>

namespace toehold::mechanics {
namespace {

constexpr std::array<SpaceVector, 3> unit_forces = {{{1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}, {0.0, 0.0, 1.0}}};

}  // namespace

InfluenceLines::InfluenceLines(const SpaceFrame& frame, std::vector<FrameStation> stations)
    : stations_(std::move(stations)), along_axes_(stations_.size()) {
    std::vector<SpaceLoads> loads;
    loads.reserve(3 * stations_.size());
    for (std::size_t i = 0; i < stations_.size(); ++i) {
        for (const SpaceVector& unit : unit_forces) loads.push_back(load(i, unit));
    }
    frame.solve_each(loads, [&](std::size_t i, SpaceSolution&& s) { along_axes_[i / 3][i % 3] = std::move(s); });
}

SpaceSolution InfluenceLines::under(std::size_t station, const SpaceVector& force_lb) const {
    const std::array<SpaceSolution, 3>& units = along_axes_.at(station);
    SpaceSolution sum;
    if (!units[0].stable) return sum;
    add_scaled(sum, force_lb.x, units[0]);
    add_scaled(sum, force_lb.y, units[1]);
    add_scaled(sum, force_lb.z, units[2]);
    return sum;
}

SpaceLoads InfluenceLines::load(std::size_t station, const SpaceVector& force_lb) const {
    const FrameStation& at = stations_.at(station);
    SpaceLoads loads;
    loads.points.push_back({at.member, at.at_in, force_lb, {}});
    return loads;
}

SpaceForce InfluenceLines::support(std::size_t station, const SpaceVector& force_lb, std::size_t support) const {
    const std::array<SpaceSolution, 3>& units = along_axes_.at(station);
    const SpaceForce &x = units[0].supports.at(support), &y = units[1].supports.at(support),
                     &z = units[2].supports.at(support);
    return {force_lb.x * x.force_lb + force_lb.y * y.force_lb + force_lb.z * z.force_lb,
            force_lb.x * x.couple_lb_in + force_lb.y * y.couple_lb_in + force_lb.z * z.couple_lb_in};
}

}  // namespace toehold::mechanics
