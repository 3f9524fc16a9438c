// What rolls a joist or a rim about its own length must end in a couple at its supports or at what it meets: the force
// of a block's end on a joist's face, half its width off its axis, and whatever stands eccentrically on it.
#include "checks/basis/result_parts.h"
#include "checks/connection/connection.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

/// A couple at a hold: about the joist's axis, or, where a joist's end keeps a rim square, about the rim's.
struct Roll {
    double demand::SupportReaction::*couple = nullptr;
    bool of_rim = false;
};

std::vector<Roll> rolls_at(const EndPlace& place) {
    if (place.support->kind == demand::MemberSupportKind::block_end) return {};
    std::vector<Roll> rolls{{&demand::SupportReaction::torque_lb_in, false}};
    if (place.support->kind == demand::MemberSupportKind::joist_to_rim) {
        rolls.push_back({&demand::SupportReaction::moment_lb_in, true});
    }
    return rolls;
}

void name_rim(CheckResult& result, const EndPlace& place) {
    const model::PartId joist = model::part_of(place.member);
    result.part = model::held_at(place.held_by, joist);
    result.link = link_between(place.held_by, joist, result.link.value().by);
}

CheckResult roll(const CheckInput& input, const EndPlace& place, const Roll& roll,
                 const demand::GoverningState& worst) {
    const EndStrength strength = end_strength(input.resolved, place);
    CheckResult result = end_result(input, place, worst.state, strength.by);
    if (roll.of_rim) name_rim(result, place);
    result.clause = strength.clause;
    if (!strength.missing.empty()) {
        lacks_evidence(result, strength.missing);
        return result;
    }
    demand::SupportReaction one;
    one.*roll.couple = 1.0;
    const double capacity = capacity_alone(strength, one);
    result.steps = strength.steps;
    result.steps.push_back(
        {"T", roll.of_rim ? phrase("couple about the rim's axis") : phrase("couple about the joist's axis"), "framing",
         worst.value, "lb in", "demand", Origin::demanded});
    if (!(capacity > 0.0)) {
        nothing_resists(
            result, worst.value, "lb in",
            phrase("Nothing resists rolling here. Use two or more fasteners spread over the depth, hardware "
                   "on both sides, or a block square to it beside the base."));
        return result;
    }
    result.steps.push_back(
        {"T'", phrase("allowable couple of the connection, no other force on it"), "", capacity, "lb in", ""});
    result.demand = worst.value;
    result.capacity = capacity;
    result.unit = "lb in";
    conclude(result);
    result.note = phrase("The couple alone. The check of the connection adds the other forces there.");
    return result;
}

CheckResult unstable(const CheckInput& input) {
    CheckResult result;
    result.part = {model::PartKind::framing};
    result.link = link_between({model::PartKind::joist}, {model::PartKind::joist, {}, model::PartPiece::supports},
                               phrase("no resistance"));
    double push_lb = 0.0;
    for (const demand::LoadCase& load_case : input.demand.cases) push_lb = std::max(push_lb, load_case.push_lb);
    nothing_resists(result, push_lb, "lb",
                    phrase("The framing cannot carry the load: {}.", input.demand.framing->unstable));
    return result;
}

std::vector<CheckResult> joist_roll(const CheckInput& input) {
    if (input.demand.framing && !input.demand.framing->unstable.empty()) return {unstable(input)};
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        for (const Roll& one : rolls_at(place)) {
            const demand::GoverningState worst = governing_at(
                input, place, [&](const demand::SupportReaction& forces) { return std::abs(forces.*one.couple); });
            if (worst.value > no_couple_lb_in) results.push_back(roll(input, place, one, worst));
        }
    }
    return results;
}

const RegisterCheck registered{
    {"joist-roll",
     phrase("Joist or rim roll"),
     "NDS 2018 12.3",
     phrase("The couple that rolls a joist or a rim about its length against the connections at "
            "its supports and at what it meets."),
     joist_roll,
     {"member-end-connection"},
     {},
     model::Provision::deck_guard}};

}  // namespace
}  // namespace toehold::checks
