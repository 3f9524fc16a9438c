#include "checks/basis/metal_basis.h"

#include "units/limit.h"

namespace toehold::checks {

using format::phrase;

Adjusted available(double nominal, const resistance::Safety& safety, const model::Basis& basis,
                   const std::string& clause) {
    if (basis.method == model::Method::lrfd)
        return {nominal * safety.phi,
                {{"phi", phrase("resistance factor"), "LRFD", safety.phi, "", clause, Origin::given}}};
    return {nominal / safety.omega,
            {{"Omega", phrase("safety factor"), "ASD", safety.omega, "", clause, Origin::given}}};
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

namespace {

/// Where this filler in a part so thick leaves the metal softer than other fillers do.
std::optional<catalog::SofterWeld> softer(const catalog::Metal& metal, const Welding& welding) {
    if (!metal.softer_weld || units::at_most(welding.thickness_in, metal.softer_weld->above_in)) return std::nullopt;
    if (welding.filler != nullptr && welding.filler->id != metal.softer_weld->filler) return std::nullopt;
    return metal.softer_weld;
}

}  // namespace

BesideWeld strengths(const catalog::Metal& metal, const Welding& welding) {
    if (metal.by_certificate) {
        return {0.0, 0.0, false,
                phrase("The standard of {} guarantees no strength. Give yield and tensile strength from the "
                       "certificate of the metal delivered.",
                       metal.name)};
    }
    if (!welding.welded || metal.kind != catalog::MetalKind::aluminum)
        return {metal.yield_psi, metal.ultimate_psi, false, {}};
    if (!metal.welded_yield_psi || !metal.welded_ultimate_psi) {
        return {0.0, 0.0, true,
                phrase("The strength of {} beside a weld is not specified. Add its welded strengths to the catalog.",
                       metal.name)};
    }
    BesideWeld beside{*metal.welded_yield_psi, *metal.welded_ultimate_psi, true, {}};
    beside.softer = softer(metal, welding);
    if (beside.softer) beside.yield_psi = beside.softer->yield_psi;
    return beside;
}

Step yield_step(const catalog::Metal& metal, const BesideWeld& used) {
    if (used.softer) {
        return given("F_y",
                     phrase("yield strength of {} beside a weld of {} in metal over {}", metal.name,
                            used.softer->filler, format::Dimension{used.softer->above_in}),
                     used.yield_psi, "psi", metal.source.text);
    }
    return given("F_y",
                 used.reduced ? phrase("yield strength of {} beside the weld", metal.name)
                              : phrase("yield strength of {}", metal.name),
                 used.yield_psi, "psi", metal.source.text);
}

Step ultimate_step(const catalog::Metal& metal, const BesideWeld& used) {
    return given("F_u",
                 used.reduced ? phrase("tensile strength of {} beside the weld", metal.name)
                              : phrase("tensile strength of {}", metal.name),
                 used.ultimate_psi, "psi", metal.source.text);
}

std::string steel_clause(const catalog::Metal& metal, const std::string& clause) {
    const bool stainless = metal.kind == catalog::MetalKind::stainless_steel;
    return stainless ? clause + ", read across to stainless steel (assumption)" : clause;
}

}  // namespace toehold::checks
