#include "checks/connection/connection.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <variant>

namespace toehold::checks {
namespace {

HolderWood described(const catalog::Resolved& resolved, std::size_t holder) {
    const model::Member member = model::member(resolved.detail.framing, holder);
    const catalog::MemberMaterial& wood = catalog::wood(resolved, holder);
    return {member.width_in, member.depth_in, wood.species.specific_gravity, wood.grade.modulus_psi, {}};
}

/// A ledger or a beam: the file gives its place and nothing of its wood.
HolderWood like_the_joist(const demand::Hold& hold, const model::Member& joist, const catalog::MemberMaterial& wood) {
    return {model::ply_width_in(joist), joist.depth_in, wood.species.specific_gravity, wood.grade.modulus_psi,
            "The wood of " + hold.to + " is not described: taken as one piece of the joists' own size and species."};
}

EndPlace place_of(const catalog::Resolved& resolved, const demand::Hold& hold, std::size_t index) {
    EndPlace place;
    place.index = index;
    place.hold = &hold;
    place.member = model::member(resolved.detail.framing, hold.member);
    place.wood = &catalog::wood(resolved, hold.member);
    if (hold.holder) place.holder = described(resolved, *hold.holder);
    if (hold.support) {
        place.holder = like_the_joist(hold, place.member, *place.wood);
        place.on_beam = resolved.detail.framing.supports.at(*hold.support).kind == model::JoistSupport::Kind::beam;
    }
    return place;
}

}  // namespace

std::vector<EndPlace> end_places(const CheckInput& input) {
    std::vector<EndPlace> places;
    if (!input.demand.framing || input.demand.framing->states.empty()) return places;
    const std::vector<demand::Hold>& holds = input.demand.framing->holds;
    for (std::size_t index = 0; index < holds.size(); ++index)
        places.push_back(place_of(input.resolved, holds[index], index));
    return places;
}

const demand::HoldForces& forces_at(const CheckInput& input, const EndPlace& place, std::size_t state) {
    return input.demand.framing.value().states.at(state).holds.at(place.index);
}

CheckResult end_result(const CheckInput& input, const EndPlace& place, std::size_t state, std::string by) {
    const demand::Hold& hold = *place.hold;
    const std::string member = model::subject(place.member);
    const bool nameless = !hold.holder && !hold.support;
    CheckResult result;
    result.subject = member + (nameless ? std::string(hold.upper ? ", upper end" : ", lower end") : " at " + hold.to);
    result.link = Link{member, hold.to, std::move(by)};
    result.direction_deg = degrees(input.demand.states.at(state).direction_rad);
    return result;
}

std::vector<Step> force_steps(const demand::HoldForces& forces) {
    return {{"R_v", "vertical force on the holder, up positive", "framing", forces.up_lb, "lb", "demand"},
            {"R_h", "horizontal force across the member", "framing", forces.across_lb, "lb", "demand"},
            {"P_a", "along the member: drawn away positive, pressed against the holder negative", "framing",
             forces.along_lb, "lb", "demand"},
            {"T", "torque about the member's axis", "framing", forces.torque_lb_in, "lb in", "demand"},
            {"M", "moment in the member's upright plane", "framing", forces.turning_lb_in, "lb in", "demand"}};
}

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
