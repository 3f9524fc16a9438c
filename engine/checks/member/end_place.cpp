#include "checks/member/end_place.h"

#include "checks/basis/result_parts.h"

#include <limits>
#include <utility>

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

void nothing_resists(CheckResult& result, double demand, std::string unit, std::string why) {
    result.demand = demand;
    result.capacity = 0.0;
    result.unit = std::move(unit);
    result.ratio = std::numeric_limits<double>::infinity();
    result.status = Status::no_path;
    result.note = std::move(why);
}

}  // namespace toehold::checks
