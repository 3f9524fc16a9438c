#include "mechanics/side_post/hand_values.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::mechanics {

HandCouple hand_couple(double push_lb, double above_member_in, double turns_about_in, double fastener_below_in) {
    HandCouple couple;
    couple.arm_in = turns_about_in - fastener_below_in;
    if (!(couple.arm_in > 0.0)) throw std::invalid_argument("hand couple: the arm must be above 0");
    couple.tension_lb = push_lb * (above_member_in + turns_about_in) / couple.arm_in;
    couple.bearing_lb = couple.tension_lb - push_lb;
    return couple;
}

SlipGroup slip_group(std::span<const SlipFastener> fasteners, Point at, Point force_lb) {
    double total = 0.0;
    SlipGroup group;
    for (const SlipFastener& fastener : fasteners) {
        if (!(fastener.slip_lb_per_in > 0.0)) throw std::invalid_argument("slip group: the stiffness must be above 0");
        total += fastener.slip_lb_per_in;
        group.center.x += fastener.slip_lb_per_in * fastener.at.x;
        group.center.y += fastener.slip_lb_per_in * fastener.at.y;
    }
    if (!(total > 0.0)) throw std::invalid_argument("slip group: there is no fastener");
    group.center = {group.center.x / total, group.center.y / total};
    double polar = 0.0, size = 0.0;
    for (const SlipFastener& fastener : fasteners) {
        const double distance = std::hypot(fastener.at.x - group.center.x, fastener.at.y - group.center.y);
        polar += fastener.slip_lb_per_in * distance * distance;
        size = std::max(size, std::hypot(fastener.at.x, fastener.at.y));
    }
    const double arm_x = at.x - group.center.x, arm_y = at.y - group.center.y;
    group.moment_lb_in = arm_x * force_lb.y - arm_y * force_lb.x;
    constexpr double round_off = 1e-9;
    const double reach = round_off * (size + std::hypot(at.x, at.y));
    const bool holds_moment = std::sqrt(polar / total) > reach;
    if (!holds_moment && std::abs(group.moment_lb_in) > reach * std::hypot(force_lb.x, force_lb.y)) return group;
    group.balanced = true;
    const double turn = holds_moment ? group.moment_lb_in / polar : 0.0;
    for (const SlipFastener& fastener : fasteners) {
        const double k = fastener.slip_lb_per_in;
        group.force_lb.push_back({k * (force_lb.x / total - turn * (fastener.at.y - group.center.y)),
                                  k * (force_lb.y / total + turn * (fastener.at.x - group.center.x))});
    }
    return group;
}

}  // namespace toehold::mechanics
