#include "checks/connection/connection.h"

#include "demand/framing/member_supports.h"

#include <algorithm>
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

EndPlace place_of(const catalog::Resolved& resolved, const demand::MemberSupport& support, std::size_t index) {
    EndPlace place;
    place.index = index;
    place.support = &support;
    place.member = model::member(resolved.detail.framing, support.member);
    place.held_by = support.holder_part;
    place.unsupported = !support.holder && !support.joist_support;
    place.part = demand::supported_part(support, model::part_of(place.member));
    place.wood = &catalog::wood(resolved, support.member);
    if (support.holder) place.holder = described(resolved, *support.holder);
    if (support.joist_support) {
        place.holder = like_the_joist(place.held_by, place.member, *place.wood);
        place.on_beam =
            resolved.detail.framing.supports.at(*support.joist_support).kind == model::JoistSupport::Kind::beam;
    }
    return place;
}

std::vector<Step> force_steps_of_guard(const demand::SupportReaction& forces) {
    return {{"R_v", phrase("vertical force on the support, up positive"), "framing", forces.up_lb, "lb", "demand",
             Origin::demanded},
            {"R_h", phrase("horizontal force across the member"), "framing", forces.across_lb, "lb", "demand",
             Origin::demanded},
            {"P_a", phrase("force along the member, away from the support positive"), "framing", forces.along_lb, "lb",
             "demand", Origin::demanded},
            {"T", phrase("torque about the member's axis"), "framing", forces.torque_lb_in, "lb in", "demand",
             Origin::demanded},
            {"M", phrase("moment in the member's vertical plane"), "framing", forces.moment_lb_in, "lb in", "demand",
             Origin::demanded}};
}

}  // namespace

std::vector<EndPlace> end_places(const CheckInput& input) {
    std::vector<EndPlace> places;
    if (!input.demand.framing || input.demand.framing->states.empty()) return places;
    const std::vector<demand::MemberSupport>& supports = input.demand.framing->supports;
    for (std::size_t index = 0; index < supports.size(); ++index)
        places.push_back(place_of(input.resolved, supports[index], index));
    return places;
}

PlaceForces::PlaceForces(const CheckInput& input, const EndPlace& place)
    : framing_(input.demand.framing.value()), place_(place.index) {
    if (!framing_.deck) return;
    holds_down_lb_ = framing_.deck->holds_down_lb.at(place_);
    most_down_lb_ = framing_.deck->most_down_lb.at(place_);
}

demand::SupportReaction PlaceForces::in(std::size_t state) const {
    demand::SupportReaction forces = framing_.states[state].reactions[place_];
    forces.down_lb = std::max(0.0, most_down_lb_ - forces.up_lb);
    if (forces.up_lb > 0.0) forces.up_lb = std::max(0.0, forces.up_lb - holds_down_lb_);
    return forces;
}

demand::SupportReaction forces_at(const CheckInput& input, const EndPlace& place, std::size_t state) {
    return PlaceForces(input, place).in(state);
}

CheckResult end_result(const CheckInput& input, const EndPlace& place, std::size_t state, format::Phrase by) {
    CheckResult result;
    result.part = place.part;
    result.link = link_between(model::part_of(place.member), place.held_by, std::move(by));
    if (acting_load(input.demand, input.demand.states.at(state)).push_lb > 0.0)  // not straight down or up
        result.direction_deg = degrees(input.demand.states.at(state).direction_rad);
    return result;
}

double upright_lb(const demand::SupportReaction& forces) { return std::max(std::abs(forces.up_lb), forces.down_lb); }

std::vector<Step> force_steps(const demand::SupportReaction& forces) {
    std::vector<Step> steps = force_steps_of_guard(forces);
    if (forces.down_lb > std::max(0.0, -forces.up_lb) + no_force_lb)
        steps.push_back({"R_g", phrase("downward force with the deck's load"), "framing", forces.down_lb, "lb",
                         "demand", Origin::demanded});
    return steps;
}

double together(const EndStrength& strength, const demand::SupportReaction& forces) {
    Uses uses;
    strength.uses(forces, uses);
    return uses.together();
}

std::vector<EndUse> uses_in_words(const EndStrength& strength, const demand::SupportReaction& forces) {
    std::vector<EndUse> in_words;
    Uses uses(&in_words);
    strength.uses(forces, uses);
    return in_words;
}

EndStrength end_strength(const catalog::Resolved& resolved, const EndPlace& place) {
    return std::visit([&](const auto& connection) { return strength_of(resolved, place, connection); },
                      place.support->connection);
}

double capacity_alone(const EndStrength& strength, const demand::SupportReaction& force) {
    // Large, so that no use of it is taken for noise.
    constexpr double scale = 1e6;
    const demand::SupportReaction scaled{scale * force.up_lb, scale * force.across_lb, scale * force.along_lb,
                                         scale * force.torque_lb_in, scale * force.moment_lb_in};
    const double used = together(strength, scaled);
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
    strength.uses = [on_beam = place.on_beam, why](const demand::SupportReaction& forces, Uses& uses) {
        const double upright = on_beam ? std::max(forces.up_lb, 0.0) : forces.up_lb;
        const double drawn = std::max(forces.along_lb, 0.0);
        uses.add(UseGroup::shear, std::sqrt(upright * upright + forces.across_lb * forces.across_lb + drawn * drawn),
                 0.0, [&why] {
                     return UseWords{"P", phrase("force on the end"), "sqrt(R_v^2 + R_h^2 + P_a^2)", why};
                 });
        uses.add_unresisted_couple(UseGroup::lateral, std::abs(forces.torque_lb_in), [&why] {
            return UseWords{"T", phrase("torque about the member's axis"), "", why};
        });
        uses.add_unresisted_couple(UseGroup::withdrawal, std::abs(forces.moment_lb_in), [&why] {
            return UseWords{"M", phrase("moment in the member's vertical plane"), "", why};
        });
    };
    return strength;
}

}  // namespace toehold::checks
