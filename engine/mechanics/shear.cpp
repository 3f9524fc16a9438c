#include "mechanics/shear.h"

#include <cmath>

namespace toehold::mechanics {
namespace {

/// Below this part of the lengths at hand, a length is round-off.
constexpr double round_off = 1e-9;

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

ShearShares share_shear(std::span<const Point> anchors, Point force_lb) {
    ShearShares shares;
    const double force = std::hypot(force_lb.x, force_lb.y);
    if (anchors.empty()) {
        shares.balanced = force == 0.0;
        return shares;
    }
    const Point centre = centroid(anchors);
    const double offset = std::hypot(centre.x, centre.y);
    const double polar_in2 = polar_moment(anchors, centre);
    const auto count = static_cast<double>(anchors.size());
    shares.twist_lb_in = centre.y * force_lb.x - centre.x * force_lb.y;
    shares.force_lb.assign(anchors.size(), {force_lb.x / count, force_lb.y / count});
    if (std::sqrt(polar_in2) <= round_off * offset || polar_in2 == 0.0) {
        shares.balanced = std::abs(shares.twist_lb_in) <= round_off * force * offset;
        return shares;
    }
    const double twist_share = shares.twist_lb_in / polar_in2;
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        shares.force_lb[index].x -= twist_share * (anchors[index].y - centre.y);
        shares.force_lb[index].y += twist_share * (anchors[index].x - centre.x);
    }
    return shares;
}

}  // namespace toehold::mechanics
