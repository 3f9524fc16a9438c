#include "demand/hardware_demand.h"

#include "catalog/resolve.h"
#include "demand/demand.h"
#include "model/member.h"

#include <cmath>

namespace toehold::demand {
namespace {

model::PartId tied_into(const model::Framing& framing, const std::string& id) {
    const std::optional<std::size_t> index = model::find_member(framing, id);
    return index ? model::part_of(model::member(framing, *index)) : model::PartId{};
}

}  // namespace

std::vector<TieDemand> tie_demands(const catalog::Resolved& resolved, const Demand& demand) {
    std::vector<TieDemand> all;
    const auto* const side = std::get_if<model::SideFastened>(&resolved.detail.mount);
    if (side == nullptr) return all;
    for (std::size_t index = 0; index < side->ties.size(); ++index) {
        const model::TensionTie& tie = side->ties[index];
        TieDemand one{{model::PartKind::tie, tie.id},
                      tie.name,
                      tied_into(resolved.detail.framing, tie.into),
                      tie.x_in,
                      -tie.below_top_in,
                      0.0,
                      0.0,
                      tie.tension_lb,
                      tie.chosen};
        for (const State& state : demand.states) {
            if (index >= state.ties_lb.size() || state.ties_lb[index] <= one.tension_lb) continue;
            one.tension_lb = state.ties_lb[index];
            one.direction_rad = state.direction_rad;
        }
        all.push_back(std::move(one));
    }
    return all;
}

std::vector<HandCouple> hand_couples(const Demand& demand) {
    std::vector<HandCouple> all;
    if (!demand.side) return all;
    for (const HandCouple& couple : {demand.side->about_bottom, demand.side->about_top})
        if (couple.arm_in > 0.0 && couple.push_lb > 0.0 && std::isfinite(couple.tension_lb)) all.push_back(couple);
    return all;
}

}  // namespace toehold::demand
