#include "mechanics/space_frame/one_way_frame.h"

#include "mechanics/space_frame/beam.h"
#include "mechanics/space_frame/nonnegative_minimum.h"
#include "mechanics/space_frame/superposition.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace toehold::mechanics {
namespace {

double dot(const SpaceVector& a, const SpaceVector& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

double stiffer(const OneWaySpring& spring) { return std::max(spring.where_positive, spring.where_negative); }

double given_away(const OneWaySpring& spring) { return std::abs(spring.where_positive - spring.where_negative); }

/// Of the motion on whose side the spring is softer.
double softer_sense(const OneWaySpring& spring) { return spring.where_positive < spring.where_negative ? 1.0 : -1.0; }

void check_spring(const OneWaySpring& spring, std::size_t nodes) {
    const auto sound = [](double stiffness) { return stiffness >= 0.0 && std::isfinite(stiffness); };
    const double size = dot(spring.along, spring.along) + dot(spring.about, spring.about);
    if (spring.node < 0 || static_cast<std::size_t>(spring.node) >= nodes)
        throw std::invalid_argument("a one-way spring names a node that is not there");
    if (!(size > 0.0) || !std::isfinite(size)) throw std::invalid_argument("a one-way spring has no direction");
    if (!sound(spring.where_positive) || !sound(spring.where_negative))
        throw std::invalid_argument("a one-way spring's stiffness is out of range");
}

SpaceSupport as_support(const OneWaySpring& spring) {
    const space_frame::Vector6 way = space_frame::six({spring.along, spring.about});
    SpaceSupport support{spring.node, {}, {}};
    for (std::size_t i = 0; i < 6; ++i) {
        for (std::size_t k = 0; k < 6; ++k)
            support.stiffness[i][k] =
                stiffer(spring) * way(static_cast<Eigen::Index>(i)) * way(static_cast<Eigen::Index>(k));
    }
    return support;
}

std::vector<SpaceSupport> with_springs(std::vector<SpaceSupport> supports, std::span<const OneWaySpring> springs,
                                       std::size_t nodes) {
    for (const OneWaySpring& spring : springs) {
        check_spring(spring, nodes);
        supports.push_back(as_support(spring));
    }
    return supports;
}

double motion_of(const OneWaySpring& spring, const SpaceSolution& solution) {
    const SpaceMotion& of = solution.motions[static_cast<std::size_t>(spring.node)];
    return dot(spring.along, of.move_in) + dot(spring.about, of.turn_rad);
}

SpaceNodeLoad along_spring(const OneWaySpring& spring, double force) {
    return {spring.node, force * spring.along, force * spring.about};
}

}  // namespace

/// The forces along the springs' motions that take away what their softer sides do not bear.
struct OneWayFrame::Released {
    std::vector<double> forces;
    int steps = 0;
};

OneWayFrame::OneWayFrame(const std::vector<SpaceVector>& nodes, const std::vector<SpaceMember>& members,
                         const std::vector<SpaceJoint>& joints, const std::vector<SpaceSupport>& supports,
                         std::vector<OneWaySpring> springs)
    : springs_(std::move(springs)),
      supports_(supports.size()),
      frame_(nodes, members, joints, with_springs(supports, springs_, nodes.size())) {
    std::vector<SpaceLoads> loads(springs_.size());
    for (std::size_t i = 0; i < springs_.size(); ++i) loads[i].nodes.push_back(along_spring(springs_[i], 1.0));
    std::vector<SpaceSolution> under_unit(springs_.size());
    frame_.solve_each(loads, [&](std::size_t i, SpaceSolution&& s) { under_unit[i] = std::move(s); });
    std::vector<double> compliance;
    for (std::size_t i = 0; frame_.stable() && i < springs_.size(); ++i) {
        // Symmetric by Betti's theorem; the mean drops the rounding.
        for (std::size_t k = 0; k < springs_.size(); ++k)
            compliance.push_back(0.5 * (motion_of(springs_[i], under_unit[k]) + motion_of(springs_[k], under_unit[i])));
    }
    under_unit_ = std::make_shared<const std::vector<SpaceSolution>>(std::move(under_unit));
    compliance_ = std::make_shared<const std::vector<double>>(std::move(compliance));
}

/// With y the motions toward the softer sides, y0 those of the stiff frame, A its compliance and C what the softer
/// sides give away: forces r >= 0 with r = C max(y, 0), y = y0 + A r. That is the least of r' (1/C - A) r / 2 - y0' r,
/// whose matrix has no direction below 0, since the frame with every spring soft has none. Scaled by the root of C.
std::optional<OneWayFrame::Released> OneWayFrame::released(const SpaceSolution& stiff) const {
    std::vector<std::size_t> unlike;
    for (std::size_t i = 0; i < springs_.size(); ++i)
        if (given_away(springs_[i]) > 0.0) unlike.push_back(i);
    const auto count = static_cast<Eigen::Index>(unlike.size());
    Eigen::MatrixXd matrix = Eigen::MatrixXd::Identity(count, count);
    Eigen::VectorXd toward(count), scale(count);
    for (Eigen::Index i = 0; i < count; ++i) {
        const OneWaySpring& spring = springs_[unlike[static_cast<std::size_t>(i)]];
        scale(i) = softer_sense(spring) * std::sqrt(given_away(spring));
        toward(i) = scale(i) * motion_of(spring, stiff);
    }
    for (Eigen::Index i = 0; i < count; ++i) {
        for (Eigen::Index k = 0; k < count; ++k)
            matrix(i, k) -= scale(i) * scale(k) *
                            (*compliance_)[unlike[static_cast<std::size_t>(i)] * springs_.size() +
                                           unlike[static_cast<std::size_t>(k)]];
    }
    const std::optional<space_frame::NonnegativeMinimum> minimum = space_frame::nonnegative_minimum(matrix, toward);
    if (!minimum) return std::nullopt;
    Released result{std::vector<double>(springs_.size(), 0.0), minimum->steps};
    for (Eigen::Index i = 0; i < count; ++i)
        result.forces[unlike[static_cast<std::size_t>(i)]] = scale(i) * minimum->at(i);
    return result;
}

OneWaySolution OneWayFrame::told(SpaceSolution settled, const Released& released) const {
    OneWaySolution result;
    result.steps = released.steps;
    double largest = 0.0, apart = 0.0;
    for (std::size_t i = 0; i < springs_.size(); ++i) {
        const OneWaySpring& spring = springs_[i];
        const double motion = motion_of(spring, settled);
        const double called_for = -motion * (motion > 0.0 ? spring.where_positive : spring.where_negative);
        largest = std::max(largest, std::abs(called_for));
        apart = std::max(apart, std::abs(released.forces[i] - stiffer(spring) * motion - called_for));
        result.motions.push_back(motion);
        result.forces.push_back(called_for);
    }
    result.complementarity = largest > 0.0 ? apart / largest : 0.0;
    settled.supports.resize(supports_);
    result.frame = std::move(settled);
    return result;
}

OneWaySolution OneWayFrame::solve(const SpaceLoads& loads) const {
    const SpaceSolution stiff = frame_.solve(loads);
    if (!stiff.stable) return {};
    const std::optional<Released> away = released(stiff);
    if (!away) return {};
    SpaceLoads all = loads;
    for (std::size_t i = 0; i < springs_.size(); ++i)
        if (away->forces[i] != 0.0) all.nodes.push_back(along_spring(springs_[i], away->forces[i]));
    return told(frame_.solve(all), *away);
}

OneWaySolution OneWayFrame::settle(const SpaceSolution& stiff) const {
    if (!stiff.stable || stiff.motions.size() != frame_.nodes().size() ||
        stiff.supports.size() != supports_ + springs_.size())
        throw std::invalid_argument("a solution that is not of this frame");
    const std::optional<Released> away = released(stiff);
    if (!away) return {};
    SpaceSolution sum = stiff;
    for (std::size_t i = 0; i < springs_.size(); ++i)
        if (away->forces[i] != 0.0) add_scaled(sum, away->forces[i], (*under_unit_)[i]);
    return told(std::move(sum), *away);
}

}  // namespace toehold::mechanics
