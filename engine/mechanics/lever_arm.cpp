#include "mechanics/lever_arm.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::mechanics {
namespace {

/// An anchor this close to the furthest one, as a part of the lever arm, pulls with it.
constexpr double same_row = 0.01;
/// A lever arm below this part of the plan's size is round-off.
constexpr double round_off = 1e-9;

struct Extent {
    double back = std::numeric_limits<double>::infinity();
    double front = -std::numeric_limits<double>::infinity();
};

Extent extent(std::span<const Point> points, Point forward) {
    Extent result;
    for (const Point& point : points) {
        const double along = point.x * forward.x + point.y * forward.y;
        result.back = std::min(result.back, along);
        result.front = std::max(result.front, along);
    }
    return result;
}

}  // namespace

HandTension hand_tension(std::span<const Point> anchors, const Polygon& outline, double moment_lb_in,
                         double direction_rad, LeverArm arm) {
    HandTension hand;
    hand.tension_lb.assign(anchors.size(), 0.0);
    if (anchors.empty() || (arm == LeverArm::to_edge && outline.empty())) return hand;

    const Point forward{std::cos(direction_rad), std::sin(direction_rad)};
    const Extent of_anchors = extent(anchors, forward);
    const double toe = arm == LeverArm::to_edge ? extent(outline, forward).front : of_anchors.front;
    const double longest = toe - of_anchors.back;
    if (longest <= round_off * (std::abs(toe) + std::abs(of_anchors.back))) return hand;

    std::vector<std::size_t> row;
    double sum_of_arms = 0.0;
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        const double behind = toe - (anchors[index].x * forward.x + anchors[index].y * forward.y);
        if (behind < (1.0 - same_row) * longest) continue;
        row.push_back(index);
        sum_of_arms += behind;
    }
    hand.heel_anchors = static_cast<int>(row.size());
    hand.lever_arm_in = sum_of_arms / static_cast<double>(row.size());
    for (const std::size_t index : row) hand.tension_lb[index] = moment_lb_in / sum_of_arms;
    return hand;
}

}  // namespace toehold::mechanics
