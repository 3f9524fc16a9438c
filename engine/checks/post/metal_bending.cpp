#include "checks/post/metal_bending.h"

#include "catalog/resolve.h"
#include "checks/basis/pushes.h"
#include "checks/basis/result_parts.h"
#include "checks/post/foot.h"
#include "resistance/steel/tube.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;

/// Moment the section takes in the direction of this push, lb in, beside the vertical force of the same case.
double capacity_lb_in(const MetalStrength& strength, const PushMoment& moment, double down_lb) {
    const double left = steel::moment_share_beside_axial(std::abs(down_lb) / strength.axial_lb);
    return left * moment_capacity_lb_in(strength, moment.about_x_lb_in, moment.about_y_lb_in);
}

std::string direction_formula(const MetalStrength& strength) {
    if (strength.round) return "M_n, ASD or LRFD";
    if (strength.between) return "plastic moment about the axis of M, ASD or LRFD";
    return "M / (M_x/M_cx + M_y/M_cy)";
}

void add_demand_steps(CheckResult& result, const MetalStrength& strength, const demand::ActingLoad& load,
                      const PushMoment& moment, double above_in) {
    append(result.steps,
           {demanded("H", phrase("push"), std::abs(load.push_lb), "lb"),
            demanded("h", phrase("height of the push above the underside of the plate"), load.height_in, "in")});
    if (above_in > 0.0) {
        append(result.steps,
               {from_file("h_s", phrase("height of the section above the underside of the plate"), above_in, "in"),
                {"M", phrase("moment at the section"), "H (h - h_s)", moment.total_lb_in, "lb in", "demand"}});
    } else {
        append(result.steps, {{"M", phrase("moment at the plate"), "H h", moment.total_lb_in, "lb in", "demand"}});
    }
    if (!strength.round) {
        append(result.steps,
               {{"M_cx", phrase("available moment about x"), "M_n_x, ASD or LRFD", strength.about_x_lb_in, "lb in", ""},
                {"M_cy", phrase("available moment about y"), "M_n_y, ASD or LRFD", strength.about_y_lb_in, "lb in", ""},
                {"M_x", phrase("moment about x"), "component of H along y", moment.about_x_lb_in, "lb in", ""},
                {"M_y", phrase("moment about y"), "component of H along x", moment.about_y_lb_in, "lb in", ""}});
    }
    if (load.down_lb != 0.0) {
        append(result.steps, {demanded("P", phrase("vertical load"), std::abs(load.down_lb), "lb"),
                              {"P_c", phrase("available axial strength, column free at its top"), "K = 2.1",
                               strength.axial_lb, "lb", "AISC 360-16 E3"}});
    }
    result.steps.push_back(
        {"M_c", phrase("available moment in the direction of the push"),
         direction_formula(strength) +
             (load.down_lb != 0.0 ? ", times 1 - P/(2 P_c), or 9/8 (1 - P/P_c) from P = 0.2 P_c" : ""),
         result.capacity, "lb in", strength.between ? strength.clause : "AISC 360-16 Eq. H1-1a, H1-1b"});
}

}  // namespace

CheckResult metal_bending(const CheckInput& input, const MetalSection& section, double above_in) {
    const MetalStrength strength = metal_strength(section, input.resolved.detail.basis);
    CheckResult result;
    result.clause = strength.clause;
    result.unit = "lb in";
    result.steps = strength.steps;
    const auto moment_of = [&](const demand::State& state) { return push_moment(input.demand, state, above_in); };
    const bool known = strength.missing.empty();
    const demand::GoverningState worst = governing_push(input, [&](const demand::State& state) {
        const PushMoment moment = moment_of(state);
        if (!known) return moment.total_lb_in;
        return ratio(moment.total_lb_in,
                     capacity_lb_in(strength, moment, demand::acting_load(input.demand, state).down_lb));
    });
    const demand::State& state = input.demand.states.at(worst.state);
    const PushMoment moment = moment_of(state);
    result.demand = moment.total_lb_in;
    result.direction_deg = degrees(state.direction_rad);
    if (!known) {
        lacks_evidence(result, strength.missing);
        return result;
    }
    const demand::ActingLoad load = demand::acting_load(input.demand, state);
    result.capacity = capacity_lb_in(strength, moment, load.down_lb);
    add_demand_steps(result, strength, load, moment, above_in);
    conclude(result);
    return result;
}

}  // namespace toehold::checks
