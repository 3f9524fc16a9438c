// Each place where a loaded member is held must pass its forces on: held down, held up, held across, held from being
// drawn away and from turning. A force along the member that presses it against its holder loads no fastener.
#include "checks/basis/result_parts.h"
#include "checks/connection/connection.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

bool carries_load(const CheckInput& input, const EndPlace& place) {
    return worst_at(input, place, [](const demand::HoldForces& forces) {
               return std::max({std::abs(forces.up_lb), std::abs(forces.across_lb), std::abs(forces.along_lb),
                                std::abs(forces.torque_lb_in) * no_force_lb / no_couple_lb_in,
                                std::abs(forces.turning_lb_in) * no_force_lb / no_couple_lb_in});
           }).value > no_force_lb;
}

void add_uses(std::vector<Step>& steps, const std::vector<EndUse>& uses) {
    for (const EndUse& use : uses) {
        if (!(use.allowable > 0.0) && ratio(use) == 0.0) continue;
        steps.push_back({use.symbol, use.meaning, use.formula, use.force, use.unit, "statics"});
        steps.push_back({use.symbol + "'", "allowable for it", "", use.allowable, use.unit, ""});
    }
}

const EndUse* unresisted(const std::vector<EndUse>& uses) {
    const auto found = std::find_if(uses.begin(), uses.end(), [](const EndUse& use) { return std::isinf(ratio(use)); });
    return found == uses.end() ? nullptr : &*found;
}

/// The one use that is loaded; null where there are several, or none.
const EndUse* only_one(const std::vector<EndUse>& uses) {
    const auto loaded = [](const EndUse& use) { return ratio(use) > 0.0; };
    return std::count_if(uses.begin(), uses.end(), loaded) == 1 ? &*std::find_if(uses.begin(), uses.end(), loaded)
                                                                : nullptr;
}

void conclude_uses(CheckResult& result, const std::vector<EndUse>& uses) {
    if (const EndUse* const use = unresisted(uses)) {
        nothing_resists(result, use->force, use->unit, use->why);
        return;
    }
    if (const EndUse* const use = only_one(uses)) {
        result.demand = use->force;
        result.capacity = use->allowable;
        result.unit = use->unit;
    } else {
        result.demand = together(uses);
        result.capacity = 1.0;
        result.steps.push_back({"R", "all together: the largest of each kind, added", "shear + sideways + withdrawal",
                                result.demand, "", "common practice"});
    }
    conclude(result);
}

CheckResult check(const CheckInput& input, const EndPlace& place, const EndStrength& strength) {
    const demand::Worst worst =
        worst_at(input, place, [&](const demand::HoldForces& forces) { return together(strength.uses(forces)); });
    const demand::HoldForces& forces = forces_at(input, place, worst.state);
    CheckResult result = end_result(input, place, worst.state, strength.by);
    result.clause = strength.clause;
    result.steps = force_steps(forces);
    append(result.steps, strength.steps);
    const std::vector<EndUse> uses = strength.uses(forces);
    add_uses(result.steps, uses);
    result.note = strength.note;
    conclude_uses(result, uses);
    return result;
}

CheckResult without_evidence(const CheckInput& input, const EndPlace& place, const EndStrength& strength) {
    const demand::Worst worst =
        worst_at(input, place, [](const demand::HoldForces& forces) { return std::abs(forces.up_lb); });
    CheckResult result = end_result(input, place, worst.state, strength.by);
    result.clause = strength.clause;
    result.steps = force_steps(forces_at(input, place, worst.state));
    lacks_evidence(result, strength.missing);
    return result;
}

bool only_bears(const CheckInput& input, const EndPlace& place, const EndStrength& strength) {
    return place.on_beam && worst_at(input, place, [&](const demand::HoldForces& forces) {
                                return together(strength.uses(forces));
                            }).value == 0.0;
}

std::vector<CheckResult> member_end_connection(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        if (!carries_load(input, place)) continue;
        const EndStrength strength = end_strength(input.resolved, place);
        if (!strength.missing.empty()) {
            results.push_back(without_evidence(input, place, strength));
        } else if (!only_bears(input, place, strength)) {
            results.push_back(check(input, place, strength));
        }
    }
    return results;
}

const RegisterCheck registered{{"member-end-connection", "Connection of a member's end to what holds it",
                                "IRC 2021 R507.10.1; NDS 2018 12.3, 12.5",
                                "Uplift, download, sideways force, withdrawal, torque and moment at each place where a "
                                "block or joist is held, against what joins it there.",
                                member_end_connection}};

}  // namespace
}  // namespace toehold::checks
