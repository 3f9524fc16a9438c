#include "checks/member/end_strength.h"

#include "checks/basis/ratio.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <variant>

namespace toehold::checks {

double ratio(const EndUse& use) {
    const double nothing = use.unit == "lb" ? no_force_lb : no_couple_lb_in;
    if (!(use.allowable > 0.0) && use.force <= nothing) return 0.0;
    return ratio(use.force, use.allowable);
}

double together(const std::vector<EndUse>& uses) {
    std::array<double, 3> largest{};
    for (const EndUse& use : uses) {
        double& group = largest.at(static_cast<std::size_t>(use.group));
        group = std::max(group, ratio(use));
    }
    return largest[0] + largest[1] + largest[2];
}

EndStrength end_strength(const catalog::Resolved& resolved, const EndPlace& place) {
    return std::visit([&](const auto& connection) { return strength_of(resolved, place, connection); },
                      place.hold->connection);
}

double capacity_alone(const EndStrength& strength, const demand::HoldForces& force) {
    // Large, so that no use of it is taken for noise.
    constexpr double scale = 1e6;
    const demand::HoldForces scaled{scale * force.up_lb, scale * force.across_lb, scale * force.along_lb,
                                    scale * force.torque_lb_in, scale * force.turning_lb_in};
    const double used = together(strength.uses(scaled));
    return used > 0.0 && std::isfinite(used) ? scale / used : 0.0;
}

EndStrength strength_of(const catalog::Resolved&, const EndPlace& place, std::monostate) {
    EndStrength strength;
    const bool nameless = !place.hold->holder && !place.hold->support;
    strength.by = nameless ? "no joist" : "nothing described";
    const std::string why = nameless ? "No joist is described at this end: name the joist, rim or block it meets."
                                     : "Nothing that joins this end to " + place.hold->to +
                                           " is described: give its hardware, angles or fasteners.";
    strength.uses = [on_beam = place.on_beam, why](const demand::HoldForces& forces) {
        const double upright = on_beam ? std::max(forces.up_lb, 0.0) : forces.up_lb;
        const double drawn = std::max(forces.along_lb, 0.0);
        return std::vector<EndUse>{{"P", "force on the end", "sqrt(R_v^2 + R_h^2 + P_a^2)",
                                    std::sqrt(upright * upright + forces.across_lb * forces.across_lb + drawn * drawn),
                                    0.0, "lb", UseGroup::sheared, why},
                                   {"T", "torque about the member's axis", "", std::abs(forces.torque_lb_in), 0.0,
                                    "lb in", UseGroup::sideways, why},
                                   {"M", "moment in the member's upright plane", "", std::abs(forces.turning_lb_in),
                                    0.0, "lb in", UseGroup::drawn, why}};
    };
    return strength;
}

}  // namespace toehold::checks
