// An anchor's own steel, wood left aside: in tension and in shear (AISC 360-16 J3.6; check values: Table J3.2 of AISC
// 360-10), and in both at once (J3.7, written as one ratio of the two forces of one push). A reported fastener:
// T/Ta + V/Va <= 1, on the safe side where its report says nothing (common practice).
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/anchor/threads.h"
#include "checks/basis/metal_basis.h"
#include "checks/basis/shears.h"
#include "checks/basis/wood_basis.h"
#include "demand/governing_state.h"
#include "resistance/steel/bolt.h"

#include <utility>

namespace toehold::checks {
namespace {

namespace steel = resistance::steel;
using catalog::FastenerKind;
using format::phrase;

struct NominalStress {
    double psi = 0.0;
    Step step;
    format::Phrase missing;
};

NominalStress bolt_stress(const catalog::Anchor& anchor, bool tension, bool threads_clear) {
    if (!anchor.bolt_grade) return {0.0, {}, phrase("The grade of the bolt is not specified. Give it.")};
    const catalog::BoltGrade& grade = *anchor.bolt_grade;
    const bool excluded = threads_clear && grade.nominal_shear_excluded_psi > 0.0;
    const double shear_psi = excluded ? grade.nominal_shear_excluded_psi : grade.nominal_shear_psi;
    const double psi = tension ? grade.nominal_tension_psi : shear_psi;
    return {psi,
            given(tension ? "F_nt" : "F_nv",
                  tension    ? phrase("nominal tension stress of {}", grade.name)
                  : excluded ? phrase("nominal shear stress of {}, threads out of the plane", grade.name)
                             : phrase("nominal shear stress of {}, threads in the plane", grade.name),
                  psi, "psi", "AISC 360-16 Table J3.2"),
            psi > 0.0 ? format::Phrase() : phrase("The nominal stress of bolt grade {} is not specified.", grade.name)};
}

NominalStress screw_stress(const catalog::Anchor& anchor, bool tension) {
    const double ultimate_psi = anchor.metal.ultimate_psi;
    if (!(ultimate_psi > 0.0)) return {0.0, {}, phrase("The tensile strength of the screw's metal is not specified.")};
    const double psi = tension ? steel::threaded_tension_psi(ultimate_psi) : steel::threaded_shear_psi(ultimate_psi);
    const std::string clause = steel_clause(anchor.metal, "AISC 360-16 Table J3.2");
    return {psi,
            {tension ? "F_nt" : "F_nv",
             tension ? phrase("nominal tension stress of a threaded part")
                     : phrase("nominal shear stress, threads in the plane"),
             tension ? "0.75 F_u" : "0.450 F_u", psi, "psi", clause},
            {}};
}

Capacity on_section(const catalog::Anchor& anchor, const model::Basis& basis, bool tension,
                    bool threads_clear = false) {
    const bool bolt = anchor.kind == FastenerKind::through_bolt;
    Capacity capacity;
    const NominalStress stress = bolt ? bolt_stress(anchor, tension, threads_clear) : screw_stress(anchor, tension);
    capacity.clause = bolt ? "AISC 360-16 J3.6" : "AISC 360-16 J3.6 on the root section; NDS 2018 12.2.1.4";
    if (!bolt && !tension) capacity.clause = "AISC 360-16 J3.6 on the root section";
    capacity.missing = stress.missing;
    if (!capacity.missing.empty()) return capacity;
    if (!bolt) capacity.steps.push_back(ultimate_step(anchor.metal, strengths(anchor.metal, {})));
    capacity.steps.push_back(stress.step);
    const double diameter_in = bolt ? anchor.diameter_in : anchor.root_diameter_in;
    const double area_in2 = steel::circle_area_in2(diameter_in);
    capacity.steps.push_back(from_file(bolt ? "D" : "D_r",
                                       bolt ? phrase("nominal diameter") : phrase("root diameter of the thread"),
                                       diameter_in, "in"));
    capacity.steps.push_back({"A_b", bolt ? phrase("nominal area") : phrase("area at the root"),
                              bolt ? "pi D^2/4" : "pi D_r^2/4", area_in2, "in2", ""});
    const Adjusted usable = available(stress.psi * area_in2, steel::bolt_safety, basis, "AISC 360-16 J3.6");
    append(capacity.steps, usable.steps);
    const bool asd = basis.method == model::Method::asd;
    capacity.value = usable.value;
    capacity.steps.push_back(
        {tension ? "T_c" : "V_c", tension ? phrase("available tension") : phrase("available shear"),
         std::string(asd ? "" : "phi ") + (tension ? "F_nt A_b" : "F_nv A_b") + (asd ? " / Omega" : ""), capacity.value,
         "lb", "AISC 360-16 Eq. J3-1"});
    return capacity;
}

/// Usable tension of one anchor's steel, lb. A through-bolt on its nominal area; a lag or wood screw on the section at
/// its thread's root, with the same nominal stress. That stress already allows for a bolt's thread on the nominal area,
/// so for screws it is on the safe side; full Fu on the root section would give a third more. A reported fastener has
/// what its report says.
Capacity anchor_tension(const catalog::Anchor& anchor, const model::Basis& basis) {
    if (anchor.kind != FastenerKind::reported) return on_section(anchor, basis, true);
    if (!anchor.reported || !(anchor.reported->tension_lb > 0.0))
        return {
            0.0,
            "report",
            {},
            phrase("The allowable tension of the fastener itself (its steel and head) is not specified. Give it, with "
                   "its report.")};
    Adjusted allowable = reported_value(anchor.reported->tension_lb, "lb", basis);
    return {allowable.value, "report: " + anchor.reported->report, std::move(allowable.steps), {}};
}

/// Usable shear, lb, threads in the shear plane unless a bolt's are known to be clear of it. Not for a reported
/// fastener: its lateral value covers the steel. The reduction of A307 bolts for a long grip between steel plates is
/// not taken: here the bolt bears in wood, whose yield limit equations cover its bending.
Capacity anchor_shear(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (anchor.kind != FastenerKind::reported)
        return on_section(anchor, resolved.detail.basis, false, thread_place(resolved, anchor).clear_of_plane);
    return {0.0, "report", {}, phrase("The shear of a reported fastener is covered by its lateral value.")};
}

/// From the plate, or the post it goes through, to the anchor.
CheckResult steel_result(const CheckInput& input, std::size_t anchor, format::Phrase by) {
    CheckResult result;
    result.part = part_of(input.resolved.anchors.at(anchor));
    result.link = link_between(model::main_part(input.resolved.detail), result.part, std::move(by));
    return result;
}

CheckResult tension(const CheckInput& input, std::size_t index) {
    const demand::AnchorEnvelope& envelope = input.demand.anchors.at(index);
    CheckResult result = steel_result(input, index, phrase("shank in tension"));
    const Capacity strength = anchor_tension(input.resolved.anchors[index], input.resolved.detail.basis);
    result.unit = "lb";
    result.demand = envelope.tension_lb;
    result.direction_deg = degrees(envelope.direction_rad);
    if (!take_capacity(result, strength)) return result;
    result.steps.push_back(demanded("T", phrase("largest tension"), result.demand, "lb"));
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_steel_tension(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index)
        results.push_back(tension(input, index));
    return results;
}

CheckResult shear(const CheckInput& input, std::size_t index) {
    CheckResult result = steel_result(input, index, phrase("shank in shear"));
    const Capacity strength = anchor_shear(input.resolved, input.resolved.anchors[index]);
    const demand::GoverningState worst = largest_shear(input, index);
    result.unit = "lb";
    result.demand = worst.value;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    if (!take_capacity(result, strength)) return result;
    result.steps.push_back(demanded("V", phrase("largest shear"), result.demand, "lb"));
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_steel_shear(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        // A report's lateral value covers the steel; the lateral check reads it.
        if (input.resolved.anchors[index].kind != catalog::FastenerKind::reported)
            results.push_back(shear(input, index));
    }
    return results;
}

struct Pair {
    Capacity tension, shear;
    bool reported = false;
};

Pair capacities(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const model::Basis& basis = resolved.detail.basis;
    if (anchor.kind != catalog::FastenerKind::reported)
        return {anchor_tension(anchor, basis), anchor_shear(resolved, anchor), false};
    Capacity lateral{0.0, "report", {}, phrase("The allowable lateral value is not specified.")};
    if (anchor.reported && anchor.reported->lateral_lb > 0.0) {
        Adjusted allowable = reported_value(anchor.reported->lateral_lb, "lb", basis);
        lateral = {allowable.value, "report: " + anchor.reported->report, std::move(allowable.steps), {}};
    }
    return {anchor_tension(anchor, basis), lateral, true};
}

double ratio(const Pair& pair, const demand::AnchorForce& force) {
    const double tension = force.tension_lb / pair.tension.value;
    const double shear = force.shear_lb() / pair.shear.value;
    return pair.reported ? tension + shear : steel::combined_ratio(tension, shear);
}

void add_steps(CheckResult& result, const Pair& pair, const demand::AnchorForce& force) {
    const std::string pattern = pair.reported ? "report" : "AISC 360-16 J3.6";
    result.steps = {
        demanded("T", phrase("tension from that push"), force.tension_lb, "lb"),
        demanded("V", phrase("shear from the same push"), force.shear_lb(), "lb"),
        {"T_c", phrase("available tension alone"), "as in the tension check", pair.tension.value, "lb", pattern},
        {"V_c", phrase("available shear alone"), pair.reported ? "lateral value" : "as in the shear check",
         pair.shear.value, "lb", pattern},
        {"r", phrase("share of the strength used"),
         pair.reported ? "T/T_c + V/V_c" : "the largest of T/T_c, V/V_c and (T/T_c + V/V_c)/1.3", result.demand, "",
         pair.reported ? "common practice" : "AISC 360-16 Eq. J3-3a, J3-3b as a ratio"}};
}

CheckResult combined(const CheckInput& input, std::size_t index, const Pair& pair) {
    CheckResult result = steel_result(input, index, phrase("shank in tension and shear"));
    const demand::GoverningState worst = demand::governing_state(
        input.demand, [&](const demand::State& state) { return ratio(pair, state.anchors.at(index)); });
    const demand::State& state = input.demand.states.at(worst.state);
    if (pair.reported) result.clause = "common practice";
    result.demand = worst.value;
    result.capacity = 1.0;
    result.direction_deg = degrees(state.direction_rad);
    add_steps(result, pair, state.anchors.at(index));
    conclude(result);
    return result;
}

std::vector<CheckResult> anchor_steel_combined(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Pair pair = capacities(input.resolved, input.resolved.anchors[index]);
        // Where either is missing, the check of that force alone says so.
        if (pair.tension.missing.empty() && pair.shear.missing.empty()) results.push_back(combined(input, index, pair));
    }
    return results;
}

const RegisterCheck tension_check{
    {"anchor-steel-tension",
     phrase("Anchor steel, tension"),
     "AISC 360-16 J3.6",
     phrase("The shank or thread of each anchor against its largest tension, without the wood."),
     anchor_steel_tension,
     {"anchor-steel-combined"}}};
const RegisterCheck shear_check{{"anchor-steel-shear",
                                 phrase("Anchor steel, shear"),
                                 "AISC 360-16 J3.6",
                                 phrase("The shank or thread of each anchor against its largest shear."),
                                 anchor_steel_shear,
                                 {"anchor-steel-combined"}}};
const RegisterCheck combined_check{
    {"anchor-steel-combined", phrase("Anchor steel, combined tension and shear"), "AISC 360-16 J3.7",
     phrase("Tension and shear of the same push together on the steel of each anchor."), anchor_steel_combined}};

}  // namespace
}  // namespace toehold::checks
