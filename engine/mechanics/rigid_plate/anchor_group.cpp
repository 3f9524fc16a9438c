#include "mechanics/rigid_plate/anchor_group.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::mechanics {
namespace {

/// An anchor this close to the furthest one, as a part of the lever arm, pulls with it.
constexpr double same_row = 0.01;
/// A lever arm, an offset or a spread below this part of the plan's size is round-off.
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

Point centroid(std::span<const Point> anchors) {
    Point sum;
    for (const Point& anchor : anchors) {
        sum.x += anchor.x;
        sum.y += anchor.y;
    }
    const auto count = static_cast<double>(anchors.size());
    return {sum.x / count, sum.y / count};
}

double polar_moment(std::span<const Point> anchors, Point about) {
    double sum = 0.0;
    for (const Point& anchor : anchors) {
        sum += (anchor.x - about.x) * (anchor.x - about.x) + (anchor.y - about.y) * (anchor.y - about.y);
    }
    return sum;
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

ShearShares share_shear(std::span<const Point> anchors, Point force_lb) {
    ShearShares shares;
    const double force = std::hypot(force_lb.x, force_lb.y);
    if (anchors.empty()) {
        shares.balanced = force == 0.0;
        return shares;
    }
    const Point center = centroid(anchors);
    const double offset = std::hypot(center.x, center.y);
    const double polar_in2 = polar_moment(anchors, center);
    const auto count = static_cast<double>(anchors.size());
    shares.twist_lb_in = center.y * force_lb.x - center.x * force_lb.y;
    shares.force_lb.assign(anchors.size(), {force_lb.x / count, force_lb.y / count});
    if (std::sqrt(polar_in2) <= round_off * offset || polar_in2 == 0.0) {
        shares.balanced = std::abs(shares.twist_lb_in) <= round_off * force * offset;
        return shares;
    }
    const double twist_share = shares.twist_lb_in / polar_in2;
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        shares.force_lb[index].x -= twist_share * (anchors[index].y - center.y);
        shares.force_lb[index].y += twist_share * (anchors[index].x - center.x);
    }
    return shares;
}

}  // namespace toehold::mechanics
