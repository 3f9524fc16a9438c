#include "checks/basis/metal_basis.h"

namespace toehold::checks {

Adjusted available(double nominal, const resistance::Safety& safety, const model::Basis& basis,
                   const std::string& clause) {
    if (basis.method == model::Method::lrfd)
        return {nominal * safety.phi, {{"phi", "resistance factor", "LRFD", safety.phi, "", clause}}};
    return {nominal / safety.omega, {{"Omega", "safety factor", "ASD", safety.omega, "", clause}}};
}

bool take_capacity(CheckResult& result, const Capacity& capacity) {
    result.clause = capacity.clause;
    append(result.steps, capacity.steps);
    if (!capacity.missing.empty()) {
        lacks_evidence(result, capacity.missing);
        return false;
    }
    result.capacity = capacity.value;
    return true;
}

BesideWeld strengths(const catalog::Metal& metal, bool welded) {
    if (!welded || metal.kind != catalog::MetalKind::aluminum) return {metal.yield_psi, metal.ultimate_psi, "", {}};
    if (!metal.welded_yield_psi || !metal.welded_ultimate_psi) {
        return {0.0, 0.0, "", "The strength of " + metal.name + " beside a weld is not known."};
    }
    return {*metal.welded_yield_psi, *metal.welded_ultimate_psi, " beside the weld", {}};
}

Step yield_step(const catalog::Metal& metal, const BesideWeld& used) {
    return {"F_y", "yield strength of " + metal.name + used.meaning, "given", used.yield_psi, "psi", metal.source.text};
}

Step ultimate_step(const catalog::Metal& metal, const BesideWeld& used) {
    return {"F_u",   "tensile strength of " + metal.name + used.meaning,
            "given", used.ultimate_psi,
            "psi",   metal.source.text};
}

std::string steel_clause(const catalog::Metal& metal, const std::string& clause) {
    const bool stainless = metal.kind == catalog::MetalKind::stainless_steel;
    return stainless ? clause + ", read across to stainless steel (assumption)" : clause;
}

}  // namespace toehold::checks
