#include "checks/connection/connection.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <variant>

namespace toehold::checks {
namespace {

using format::phrase;

HolderWood described(const catalog::Resolved& resolved, std::size_t holder) {
    const model::Member member = model::member(resolved.detail.framing, holder);
    const catalog::MemberMaterial& wood = catalog::wood(resolved, holder);
    return {member.width_in, member.depth_in, wood.species.specific_gravity, wood.grade.modulus_psi, {}};
}

/// A ledger or a beam: the file gives its place and nothing of its wood.
HolderWood like_the_joist(const model::PartId& holder, const model::Member& joist,
                          const catalog::MemberMaterial& wood) {
    return {model::ply_width_in(joist), joist.depth_in, wood.species.specific_gravity, wood.grade.modulus_psi,
            phrase("Assumed for {}, whose wood is not specified: one piece of the joists' size and species.",
                   model::part_name(holder))};
}

model::PartId support_part(const model::JoistSupport& support) {
    const bool beam = support.kind == model::JoistSupport::Kind::beam;
    return {beam ? model::PartKind::beam : model::PartKind::ledger, support.id};
}

model::PartId holder_part(const model::Framing& framing, const demand::Hold& hold) {
    if (hold.holder) return model::part_of(model::member(framing, *hold.holder));
    if (hold.support) return support_part(framing.supports.at(*hold.support));
    return {model::PartKind::joist, {}, model::PartPiece::not_described};
}

model::PartId held_part(const model::PartId& member, const demand::Hold& hold, const EndPlace& place) {
    if (!place.unsupported) return model::held_at(member, place.held_by);
    return {member.kind, member.id, hold.upper ? model::PartPiece::upper_end : model::PartPiece::lower_end};
}

EndPlace place_of(const catalog::Resolved& resolved, const demand::Hold& hold, std::size_t index) {
    EndPlace place;
    place.index = index;
    place.hold = &hold;
    place.member = model::member(resolved.detail.framing, hold.member);
    place.held_by = holder_part(resolved.detail.framing, hold);
    place.unsupported = !hold.holder && !hold.support;
    place.part = held_part(model::part_of(place.member), hold, place);
    place.wood = &catalog::wood(resolved, hold.member);
    if (hold.holder) place.holder = described(resolved, *hold.holder);
    if (hold.support) {
        place.holder = like_the_joist(place.held_by, place.member, *place.wood);
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

CheckResult end_result(const CheckInput& input, const EndPlace& place, std::size_t state, format::Phrase by) {
    CheckResult result;
    result.part = place.part;
    result.link = link_between(model::part_of(place.member), place.held_by, std::move(by));
    result.direction_deg = degrees(input.demand.states.at(state).direction_rad);
    return result;
}

std::vector<Step> force_steps(const demand::HoldForces& forces) {
    return {{"R_v", phrase("vertical force on the support, up positive"), "framing", forces.up_lb, "lb", "demand"},
            {"R_h", phrase("horizontal force across the member"), "framing", forces.across_lb, "lb", "demand"},
            {"P_a", phrase("force along the member, away from the support positive"), "framing", forces.along_lb, "lb",
             "demand"},
            {"T", phrase("torque about the member's axis"), "framing", forces.torque_lb_in, "lb in", "demand"},
            {"M", phrase("moment in the member's vertical plane"), "framing", forces.turning_lb_in, "lb in", "demand"}};
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
    strength.by = place.unsupported ? phrase("no joist specified") : phrase("no connection specified");
    const format::Phrase why =
        place.unsupported
            ? phrase("No joist is specified at this end. Name the joist, rim or block it meets.")
            : phrase("No connection of this end to {} is specified. Give its hardware, angles or fasteners.",
                     model::part_name(place.held_by));
    strength.uses = [on_beam = place.on_beam, why](const demand::HoldForces& forces) {
        const double upright = on_beam ? std::max(forces.up_lb, 0.0) : forces.up_lb;
        const double drawn = std::max(forces.along_lb, 0.0);
        return std::vector<EndUse>{{"P", phrase("force on the end"), "sqrt(R_v^2 + R_h^2 + P_a^2)",
                                    std::sqrt(upright * upright + forces.across_lb * forces.across_lb + drawn * drawn),
                                    0.0, "lb", UseGroup::shear, why},
                                   {"T", phrase("torque about the member's axis"), "", std::abs(forces.torque_lb_in),
                                    0.0, "lb in", UseGroup::lateral, why},
                                   {"M", phrase("moment in the member's vertical plane"), "",
                                    std::abs(forces.turning_lb_in), 0.0, "lb in", UseGroup::withdrawal, why}};
    };
    return strength;
}

}  // namespace toehold::checks
