#include "checks/anchor/anchor_steel.h"

#include "checks/anchor/anchor_seating.h"
#include "checks/basis/wood_basis.h"
#include "resistance/steel/bolt.h"

#include <utility>

namespace toehold::checks {
namespace {

namespace steel = resistance::steel;
using catalog::FastenerKind;

struct NominalStress {
    double psi = 0.0;
    Step step;
    std::string missing;
};

NominalStress bolt_stress(const catalog::Anchor& anchor, bool tension) {
    if (!anchor.bolt_grade) return {0.0, {}, "The bolt's grade is not known."};
    const catalog::BoltGrade& grade = *anchor.bolt_grade;
    const double psi = tension ? grade.nominal_tension_psi : grade.nominal_shear_psi;
    return {psi,
            {tension ? "F_nt" : "F_nv",
             (tension ? "nominal tension stress of " : "nominal shear stress, threads in the plane, of ") + grade.name,
             "given", psi, "psi", "AISC 360-16 Table J3.2"},
            psi > 0.0 ? "" : "The bolt grade gives no nominal stress."};
}

NominalStress screw_stress(const catalog::Anchor& anchor, bool tension) {
    const double ultimate_psi = anchor.metal.ultimate_psi;
    if (!(ultimate_psi > 0.0)) return {0.0, {}, "The tensile strength of the screw's metal is not known."};
    const double psi = tension ? steel::threaded_tension_psi(ultimate_psi) : steel::threaded_shear_psi(ultimate_psi);
    const std::string clause = steel_clause(anchor.metal, "AISC 360-16 Table J3.2");
    return {psi,
            {tension ? "F_nt" : "F_nv",
             tension ? "nominal tension stress of a threaded part" : "nominal shear stress, threads in the plane",
             tension ? "0.75 F_u" : "0.450 F_u", psi, "psi", clause},
            {}};
}

Capacity on_section(const catalog::Anchor& anchor, const model::Basis& basis, bool tension) {
    const bool bolt = anchor.kind == FastenerKind::through_bolt;
    Capacity capacity;
    const NominalStress stress = bolt ? bolt_stress(anchor, tension) : screw_stress(anchor, tension);
    capacity.clause = bolt ? "AISC 360-16 J3.6" : "AISC 360-16 J3.6 on the root section; NDS 2018 12.2.1.3";
    if (!bolt && !tension) capacity.clause = "AISC 360-16 J3.6 on the root section";
    capacity.missing = stress.missing;
    if (!capacity.missing.empty()) return capacity;
    if (!bolt) capacity.steps.push_back(ultimate_step(anchor.metal, strengths(anchor.metal, false)));
    capacity.steps.push_back(stress.step);
    const double diameter_in = bolt ? anchor.diameter_in : anchor.root_diameter_in;
    const double area_in2 = steel::circle_area_in2(diameter_in);
    capacity.steps.push_back({bolt ? "D" : "D_r", bolt ? "nominal diameter" : "diameter at the thread's root", "given",
                              diameter_in, "in", "input"});
    capacity.steps.push_back(
        {"A_b", bolt ? "nominal area" : "area at the root", bolt ? "pi D^2/4" : "pi D_r^2/4", area_in2, "in2", ""});
    const Adjusted usable = available(stress.psi * area_in2, steel::bolt_safety, basis, "AISC 360-16 J3.6");
    append(capacity.steps, usable.steps);
    const bool asd = basis.method == model::Method::asd;
    capacity.value = usable.value;
    capacity.steps.push_back(
        {tension ? "T_c" : "V_c", tension ? "usable tension" : "usable shear",
         std::string(asd ? "" : "phi ") + (tension ? "F_nt A_b" : "F_nv A_b") + (asd ? " / Omega" : ""), capacity.value,
         "lb", "AISC 360-16 Eq. J3-1"});
    return capacity;
}

}  // namespace

Capacity anchor_tension(const catalog::Anchor& anchor, const model::Basis& basis) {
    if (anchor.kind != FastenerKind::reported) return on_section(anchor, basis, true);
    if (!anchor.reported || !(anchor.reported->tension_lb > 0.0))
        return {0.0, "report", {}, "The file gives no allowable tension of the fastener itself (its steel and head)."};
    Adjusted allowable = reported_value(anchor.reported->tension_lb, "lb", basis);
    return {allowable.value, "report: " + anchor.reported->report, std::move(allowable.steps), {}};
}

Capacity anchor_shear(const catalog::Anchor& anchor, const model::Basis& basis) {
    if (anchor.kind != FastenerKind::reported) return on_section(anchor, basis, false);
    return {0.0, "report", {}, "A reported fastener's shear is covered by its lateral value."};
}

CheckResult anchor_steel_result(const CheckInput& input, std::size_t anchor, const std::string& by) {
    CheckResult result;
    result.subject = subject(input.resolved.anchors.at(anchor));
    result.link = Link{"plate", result.subject, by};
    return result;
}

}  // namespace toehold::checks
