#include "checks/plate/plate_strength.h"

#include "checks/anchor/seating.h"
#include "resistance/aluminum/flexure.h"
#include "resistance/steel/flexure.h"

namespace toehold::checks {
namespace {

void in_aluminum(Capacity& capacity, double width_in, double thickness_in, const BesideWeld& used,
                 const model::Basis& basis) {
    namespace aluminum = resistance::aluminum;
    const std::string clause = "Aluminum Design Manual 2020 F.2 (from memory)";
    capacity.clause = clause + "; strip method, common practice";
    const aluminum::Moment nominal =
        aluminum::plate_moment(width_in, thickness_in, {used.yield_psi, used.ultimate_psi});
    const Adjusted yielding = available(nominal.yield_lb_in, aluminum::yield_safety, basis, clause);
    const Adjusted rupture = available(nominal.rupture_lb_in, aluminum::rupture_safety, basis, clause);
    const bool yields = yielding.value <= rupture.value;
    capacity.steps.push_back({"M_n", yields ? "nominal moment at yielding" : "nominal moment at rupture",
                              yields ? "F_y Z" : "F_u Z", yields ? nominal.yield_lb_in : nominal.rupture_lb_in, "lb in",
                              clause});
    append(capacity.steps, yields ? yielding.steps : rupture.steps);
    capacity.value = yields ? yielding.value : rupture.value;
}

void in_steel(Capacity& capacity, const catalog::Metal& metal, double width_in, double thickness_in,
              const model::Basis& basis) {
    namespace steel = resistance::steel;
    const std::string clause = steel_clause(metal, "AISC 360-16 F11");
    capacity.clause = clause + "; strip method, common practice";
    const double nominal = steel::plate_moment_lb_in(width_in, thickness_in, metal.yield_psi);
    const Adjusted usable = available(nominal, steel::flexure_safety, basis, clause);
    capacity.steps.push_back(
        {"M_n", "nominal moment, at most 1.6 of that at first yield", "F_y Z", nominal, "lb in", clause});
    append(capacity.steps, usable.steps);
    capacity.value = usable.value;
}

}  // namespace

Capacity plate_moment(const catalog::Metal& metal, double width_in, double thickness_in, bool welded,
                      const model::Basis& basis) {
    Capacity capacity;
    const BesideWeld used = strengths(metal, welded);
    capacity.missing = used.missing;
    if (capacity.missing.empty() && !(used.yield_psi > 0.0))
        capacity.missing = "The yield strength of " + metal.name + " is not known.";
    if (!capacity.missing.empty()) return capacity;
    capacity.steps = {
        {"t", "plate thickness", "given", thickness_in, "in", "input"},
        {"Z", "plastic modulus of the strip", "w t^2/4", 0.25 * width_in * thickness_in * thickness_in, "in3", ""}};
    capacity.steps.push_back(yield_step(metal, used));
    if (metal.kind == catalog::MetalKind::aluminum) {
        capacity.steps.push_back(ultimate_step(metal, used));
        in_aluminum(capacity, width_in, thickness_in, used, basis);
    } else {
        in_steel(capacity, metal, width_in, thickness_in, basis);
    }
    const bool asd = basis.method == model::Method::asd;
    capacity.steps.push_back({"M_c", "usable moment", asd ? "M_n / Omega" : "phi M_n", capacity.value, "lb in", ""});
    return capacity;
}

}  // namespace toehold::checks
