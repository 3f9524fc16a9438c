// A rail in shear beside a post, level or upright: the load stands next to the post, so that the whole of it passes.
#include "resistance/steel/shear.h"
#include "checks/basis/metal_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/rail/rail.h"
#include "checks/rail/rail_section.h"
#include "resistance/aluminum/member.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;
using catalog::MetalKind;

/// AISC 360-16 G4 with Cv2 = 1 up to h/t of 2.24 root(E/Fy), from memory, to be confirmed.
bool walls_are_stocky(const MetalSection& section, double wall_in) {
    if (section.solid || section.shape.round) return true;
    const double flat_in = std::max(section.shape.width_in, section.shape.depth_in) - 3.0 * wall_in;
    return flat_in / wall_in <= 2.24 * std::sqrt(section.metal.modulus_psi / section.metal.yield_psi);
}

double nominal_shear_lb(const MetalSection& section, double wall_in, double yield_psi) {
    if (section.solid) return steel::bar_shear_lb(section.shape, yield_psi);
    return std::min(steel::tube_shear_lb(section.shape, wall_in, true, yield_psi),
                    steel::tube_shear_lb(section.shape, wall_in, false, yield_psi));
}

Capacity metal_shear(const RailInput& input) {
    const MetalSection section = rail_section(input.rail, 0.0);
    const bool aluminum = section.metal.kind == MetalKind::aluminum;
    const BesideWeld used = strengths(section.metal, section.welding);
    const bool as_drawn = section.solid || aluminum;
    const double wall_in =
        as_drawn ? section.shape.wall_in : steel::design_wall_in(section.shape.wall_in, section.metal.full_wall);
    Capacity capacity{0.0,
                      aluminum ? "Aluminum Design Manual 2020 G (from memory)"
                               : steel_clause(section.metal, section.shape.round ? "AISC 360-16 G5" : "AISC 360-16 G4"),
                      {},
                      used.missing};
    if (!capacity.missing.empty()) return capacity;
    if (!walls_are_stocky(section, wall_in)) {
        capacity.missing = phrase("The rail's wall is too slender in shear for the clauses this check uses.");
        return capacity;
    }
    const double nominal = nominal_shear_lb(section, wall_in, used.yield_psi);
    const Adjusted usable = available(nominal, aluminum ? resistance::aluminum::yield_safety : steel::shear_safety,
                                      input.basis, capacity.clause);
    capacity.value = usable.value;
    capacity.steps = {yield_step(section.metal, used),
                      {"V_n", phrase("nominal shear strength, the lesser of level and upright"),
                       section.solid         ? "0.60 F_y A over the peak of an elastic section"
                       : section.shape.round ? "0.60 F_y A/2"
                                             : "0.60 F_y 2 (d - 3 t) t",
                       nominal, "lb", capacity.clause}};
    append(capacity.steps, usable.steps);
    return capacity;
}

Capacity wood_shear(const RailInput& input, const model::WoodRail& rail) {
    const catalog::LumberGrade& grade = rail_grade(input.rail);
    const Adjusted shear = adjust_shear(grade, input.basis);
    Capacity capacity{2.0 / 3.0 * shear.value * rail.width_in * rail.depth_in, "NDS 2018 3.4.2", {}, {}};
    capacity.steps = allowable_shear_steps(grade, shear);
    append(capacity.steps,
           {from_file("b", phrase("width of the rail"), rail.width_in, "in"),
            from_file("d", phrase("depth of the rail"), rail.depth_in, "in"),
            {"V'", phrase("allowable shear force"), "2/3 F_v' b d", capacity.value, "lb", capacity.clause}});
    return capacity;
}

void add_shears(CheckResult& result, const RailInput& input, const RailSpan& span) {
    const RailLoads& loads = input.loads;
    const double of_line = (span.held_at_one_end ? 1.0 : 0.5) * loads.line_lb_per_in * span.length_in;
    append(result.steps,
           {given("P", phrase("concentrated load beside the post"), loads.push_lb, "lb", loads.push_clause)});
    if (loads.line_lb_per_in > 0.0) {
        append(result.steps,
               {from_file("L", phrase("span between the posts' axes, along the rail"), span.length_in, "in"),
                given("w", phrase("load along the rail"), loads.line_lb_per_in, "lb/in", loads.line_clause),
                {"V_w", phrase("shear of the load along the rail, simple span or held at one end"),
                 span.held_at_one_end ? "w L" : "w L/2", of_line, "lb", "statics"}});
    }
    const double of_wind = (span.held_at_one_end ? 1.0 : 0.5) * loads.wind_lb_per_in * span.length_in;
    if (loads.wind_lb_per_in > 0.0) {
        append(result.steps, {given("w_W", phrase("wind on the infill that reaches the rail, at once with the load"),
                                    loads.wind_lb_per_in, "lb/in", loads.wind_clause),
                              {"V_W", phrase("shear of the wind, added to that of the load"),
                               span.held_at_one_end ? "w_W L" : "w_W L/2", of_wind, "lb", "statics"}});
    }
    result.demand = std::max(loads.push_lb, of_line) + of_wind;
    if (!span.solved) return;
    append(result.steps, {demanded("V_s", phrase("largest shear in plan, rail and posts solved together"),
                                   span.solved->level_shear_lb, "lb"),
                          demanded("V_u", phrase("largest shear of loads straight down or up, rail over all its posts"),
                                   span.solved->upright_shear_lb, "lb")});
    if (loads.wind_lb_per_in > 0.0) {
        append(result.steps, {demanded("V_Ws", phrase("largest shear of the wind, rail and posts solved together"),
                                       span.solved->wind_shear_lb, "lb")});
    }
    result.demand = std::max(result.demand, std::max(span.solved->level_shear_lb, span.solved->upright_shear_lb) +
                                                span.solved->wind_shear_lb);
}

}  // namespace

CheckResult rail_shear(const RailInput& input, const RailSpan& span) {
    CheckResult result;
    result.id = "rail-shear";
    result.title = phrase("Rail shear");
    result.part = span.part;
    result.unit = "lb";
    add_shears(result, input, span);
    const model::WoodRail* const wood = wood_rail(input.rail);
    if (take_capacity(result, wood != nullptr ? wood_shear(input, *wood) : metal_shear(input))) conclude(result);
    return result;
}

}  // namespace toehold::checks
