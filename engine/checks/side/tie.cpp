// A tension tie or hold-down that its report speaks for: its largest pull against the report's value, and what its line
// of force, beside the member it is fastened to, does to that member. Off the member's side face by e, the pull bends
// the member sideways with T e: all of it is asked of the section at the tie, flatwise, which is the most that any way
// of holding the member could leave there.
#include "catalog/resolve.h"
#include "checks/basis/wood_basis.h"
#include "checks/registry.h"
#include "demand/governing_state.h"
#include "model/member.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;

demand::GoverningState largest_pull(const CheckInput& input, std::size_t tie) {
    return demand::governing_state(input.demand, [tie](const demand::State& state) {
        return tie < state.ties_lb.size() ? state.ties_lb[tie] : 0.0;
    });
}

CheckResult tie_result(const CheckInput& input, const model::TensionTie& tie, const demand::GoverningState& worst) {
    CheckResult result;
    result.part = {model::PartKind::tie, tie.id};
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    return result;
}

CheckResult pull(const CheckInput& input, std::size_t index) {
    const model::TensionTie& tie = on_side(input.resolved.detail).ties[index];
    const demand::GoverningState worst = largest_pull(input, index);
    CheckResult result = tie_result(input, tie, worst);
    result.clause = tie.chosen ? "report: " + tie.report : "what the tie's report must give";
    result.unit = "lb";
    result.demand = worst.value;
    const auto holder = model::find_member(input.resolved.detail.framing, tie.into);
    const model::PartId into =
        holder ? model::part_of(model::member(input.resolved.detail.framing, *holder)) : model::PartId{};
    result.link = link_between({model::PartKind::post}, into, phrase("tie {}", tie.id));
    const Adjusted allowable = reported_value(tie.tension_lb, "lb", input.resolved.detail.basis);
    result.capacity = allowable.value;
    result.steps = allowable.steps;
    result.steps.push_back(demanded("T", phrase("largest pull"), result.demand, "lb"));
    result.note = phrase(
        "The report's value for this post, this member and these fasteners, with the factors it allows, as entered.");
    conclude(result);
    return result;
}

std::vector<CheckResult> tie_by_report(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    for (std::size_t tie = 0; tie < on_side(input.resolved.detail).ties.size(); ++tie)
        results.push_back(pull(input, tie));
    return results;
}

/// Of one piece of the member, which the tie is fastened to: the others are not counted.
CheckResult sideways(const CheckInput& input, std::size_t index, std::size_t holder) {
    const model::TensionTie& tie = on_side(input.resolved.detail).ties[index];
    const model::Member member = model::member(input.resolved.detail.framing, holder);
    const demand::GoverningState worst = largest_pull(input, index);
    const double thickness_in = model::ply_width_in(member), depth_in = model::piece_depth_in(member);
    const catalog::LumberGrade& grade = catalog::wood(input.resolved, holder).grade;
    const BentSection section{depth_in, thickness_in, 0.0};
    const Adjusted adjusted = adjust_bending(grade, section, input.resolved.detail.basis);
    CheckResult result = tie_result(input, tie, worst);
    result.link = link_between(result.part, model::part_of(member), phrase("pull beside the member"));
    result.unit = "psi";
    const double moment = worst.value * tie.eccentricity_in;
    result.demand = resistance::bending_stress_psi(moment, depth_in, thickness_in);
    result.capacity = adjusted.value;
    result.steps = {
        demanded("T", phrase("largest pull"), worst.value, "lb"),
        from_file("e", phrase("line of force to the side face of {}", model::part_name(model::part_of(member))),
                  tie.eccentricity_in, "in"),
        {"M", phrase("moment that bends it sideways"), "T e", moment, "lb in", "statics"},
        {"S", phrase("section modulus of one piece, flatwise"), "d b^2/6",
         resistance::section_modulus_in3(depth_in, thickness_in), "in3", ""},
        {"f_b", phrase("bending stress"), "M/S", result.demand, "psi", "NDS 2018 3.3.2"},
        given("F_b", phrase("reference bending design value"), reference_bending_psi(grade, section), "psi",
              grade.source.text)};
    append(result.steps, adjusted.steps);
    result.steps.push_back({"F_b2'", phrase("adjusted bending design value, load on the wide face"),
                            "F_b times every factor", adjusted.value, "psi", "NDS 2018 Table 4.3.1"});
    conclude(result);
    if (result.status != Status::holds)
        result.note = phrase("Use a tie on each side of the member, or a block that holds the member sideways there.");
    return result;
}

std::vector<CheckResult> tie_eccentricity(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    const std::vector<model::TensionTie>& ties = on_side(input.resolved.detail).ties;
    for (std::size_t tie = 0; tie < ties.size(); ++tie) {
        const auto holder = model::find_member(input.resolved.detail.framing, ties[tie].into);
        if (holder && ties[tie].eccentricity_in > 0.0) results.push_back(sideways(input, tie, *holder));
    }
    return results;
}

const RegisterCheck pull_check{
    {"tie-by-report", phrase("Tension tie"), "report",
     phrase("The largest pull on each tension tie or hold-down against its report's value."), tie_by_report},
    {model::MountKind::side_fastened}};
const RegisterCheck eccentricity_check{
    {"tie-eccentricity", phrase("Tension tie, sideways bending of its member"), "NDS 2018 3.3",
     phrase("The pull of each tie, off the side of the joist or block it is fastened to, against that member's bending "
            "about its weak axis."),
     tie_eccentricity},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
