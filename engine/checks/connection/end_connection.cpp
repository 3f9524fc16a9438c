// Each place where a loaded member is held must pass its forces on: uplift, downward force, lateral force, withdrawal
// and couples. A force along the member that presses it against its holder loads no fastener.
#include "checks/basis/result_parts.h"
#include "checks/connection/connection.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

bool carries_load(const CheckInput& input, const EndPlace& place) {
    return governing_at(input, place, [](const demand::SupportReaction& forces) {
               return std::max({std::abs(forces.up_lb), std::abs(forces.across_lb), std::abs(forces.along_lb),
                                std::abs(forces.torque_lb_in) * no_force_lb / no_couple_lb_in,
                                std::abs(forces.moment_lb_in) * no_force_lb / no_couple_lb_in});
           }).value > no_force_lb;
}

void add_uses(std::vector<Step>& steps, const std::vector<EndUse>& uses) {
    for (const EndUse& use : uses) {
        if (!(use.allowable > 0.0) && ratio(use) == 0.0) continue;
        steps.push_back({use.symbol, use.meaning, use.formula, use.force, use.unit, "statics"});
        steps.push_back({use.symbol + "'", phrase("allowable"), "", use.allowable, use.unit, ""});
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

void conclude_uses(CheckResult& result, const std::vector<EndUse>& uses, double together) {
    if (const EndUse* const use = unresisted(uses)) {
        nothing_resists(result, use->force, use->unit, use->why);
        return;
    }
    if (const EndUse* const use = only_one(uses)) {
        result.demand = use->force;
        result.capacity = use->allowable;
        result.unit = use->unit;
    } else {
        result.demand = together;
        result.capacity = 1.0;
        result.steps.push_back({"R", phrase("all together: the largest of each kind, added"),
                                "shear + lateral + withdrawal", result.demand, "", "common practice"});
    }
    conclude(result);
}

format::Phrase title_of(const EndPlace& place) {
    switch (place.support->kind) {
        case demand::MemberSupportKind::block_end:
            return phrase("Block end connection");
        case demand::MemberSupportKind::joist_to_rim:
            return phrase("Joist connection to the rim");
        case demand::MemberSupportKind::joist_support:
            break;
    }
    return phrase("Joist connection to its support");
}

CheckResult check(const CheckInput& input, const EndPlace& place, const EndStrength& strength,
                  const demand::GoverningState& worst) {
    const demand::SupportReaction& forces = forces_at(input, place, worst.state);
    CheckResult result = end_result(input, place, worst.state, strength.by);
    result.title = title_of(place);
    result.clause = strength.clause;
    result.steps = force_steps(forces);
    append(result.steps, strength.steps);
    const std::vector<EndUse> uses = uses_in_words(strength, forces);
    add_uses(result.steps, uses);
    result.note = strength.note;
    conclude_uses(result, uses, worst.value);
    return result;
}

CheckResult without_evidence(const CheckInput& input, const EndPlace& place, const EndStrength& strength) {
    const demand::GoverningState worst =
        governing_at(input, place, [](const demand::SupportReaction& forces) { return std::abs(forces.up_lb); });
    CheckResult result = end_result(input, place, worst.state, strength.by);
    result.title = title_of(place);
    result.clause = strength.clause;
    result.steps = force_steps(forces_at(input, place, worst.state));
    lacks_evidence(result, strength.missing);
    return result;
}

std::vector<CheckResult> member_end_connection(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        if (!carries_load(input, place)) continue;
        const EndStrength strength = end_strength(input.resolved, place);
        if (!strength.missing.empty()) {
            results.push_back(without_evidence(input, place, strength));
            continue;
        }
        const demand::GoverningState worst = governing_at(
            input, place, [&](const demand::SupportReaction& forces) { return together(strength, forces); });
        // What a beam only presses from below needs no fastener.
        if (!place.on_beam || worst.value > 0.0) results.push_back(check(input, place, strength, worst));
    }
    return results;
}

const RegisterCheck registered{
    {"member-end-connection",
     phrase("Block end connection"),
     "NDS 2018 12.3, 12.5",
     phrase("Uplift, downward force, lateral force, withdrawal, torque and moment where a block or "
            "joist is supported, against its connection there."),
     member_end_connection,
     {},
     {},
     model::Provision::deck_guard}};

}  // namespace
}  // namespace toehold::checks
