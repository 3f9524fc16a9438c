#include "checks/post/tube_bending.h"

#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/post/tube_strength.h"
#include "demand/worst.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

/// Share of the moment that a vertical force leaves: AISC 360-16 Eq. H1-1a and H1-1b solved for it.
double left_by_axial(double axial_ratio) {
    if (axial_ratio < 0.2) return 1.0 - 0.5 * axial_ratio;
    return std::max(0.0, 9.0 / 8.0 * (1.0 - axial_ratio));
}

/// Moment the tube takes in the direction of this push, lb in, beside the vertical force of the same case.
double capacity_lb_in(const TubeStrength& strength, const PostFoot& foot, const PushMoment& moment, double down_lb) {
    if (!(moment.total_lb_in > 0.0)) return std::min(strength.about_x_lb_in, strength.about_y_lb_in);
    const double left = left_by_axial(std::abs(down_lb) / strength.axial_lb);
    if (foot.round) return left * strength.about_x_lb_in;
    const double used = moment.about_x_lb_in / strength.about_x_lb_in + moment.about_y_lb_in / strength.about_y_lb_in;
    return left * moment.total_lb_in / used;
}

void add_demand_steps(CheckResult& result, const PostFoot& foot, const TubeStrength& strength,
                      const demand::LoadCase& load, const PushMoment& moment) {
    append(result.steps,
           {{"H", "push", "demand", std::abs(load.push_lb), "lb", "demand"},
            {"h", "height of the push above the plate's underside", "demand", load.height_in, "in", "demand"},
            {"M", "moment at the plate", "H h", moment.total_lb_in, "lb in", "demand"}});
    if (!foot.round) {
        append(result.steps,
               {{"M_cx", "usable moment about x", "M_n_x made usable", strength.about_x_lb_in, "lb in", ""},
                {"M_cy", "usable moment about y", "M_n_y made usable", strength.about_y_lb_in, "lb in", ""},
                {"M_x", "moment about x", "the push's part along y", moment.about_x_lb_in, "lb in", ""},
                {"M_y", "moment about y", "the push's part along x", moment.about_y_lb_in, "lb in", ""}});
    }
    if (load.down_lb != 0.0) {
        append(result.steps, {{"P", "vertical force", "demand", std::abs(load.down_lb), "lb", "demand"},
                              {"P_c", "usable axial force of a flagpole column", "K = 2.1", strength.axial_lb, "lb",
                               "AISC 360-16 E3"}});
    }
    result.steps.push_back(
        {"M_c", "usable moment in the push's direction",
         std::string(foot.round ? "M_n made usable" : "M / (M_x/M_cx + M_y/M_cy)") +
             (load.down_lb != 0.0 ? ", times 1 - P/(2 P_c), or 9/8 (1 - P/P_c) from P = 0.2 P_c" : ""),
         result.capacity, "lb in", "AISC 360-16 Eq. H1-1a, H1-1b"});
}

}  // namespace

CheckResult tube_bending(const CheckInput& input, const PostFoot& foot, const catalog::Metal& metal,
                         double free_height_in) {
    const TubeStrength strength = tube_strength(foot, metal, free_height_in, input.resolved.detail.basis);
    CheckResult result;
    result.clause = strength.clause;
    result.unit = "lb in";
    result.steps = strength.steps;
    const auto moment_of = [&](const demand::State& state) { return push_moment(input.demand, state); };
    const bool known = strength.missing.empty();
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        const PushMoment moment = moment_of(state);
        if (!known) return moment.total_lb_in;
        return ratio(moment.total_lb_in,
                     capacity_lb_in(strength, foot, moment, load_case(input.demand, state).down_lb));
    });
    const demand::State& state = input.demand.states.at(worst.state);
    const PushMoment moment = moment_of(state);
    result.demand = moment.total_lb_in;
    result.direction_deg = degrees(state.direction_rad);
    if (!known) {
        lacks_evidence(result, strength.missing);
        return result;
    }
    const demand::LoadCase& load = load_case(input.demand, state);
    result.capacity = capacity_lb_in(strength, foot, moment, load.down_lb);
    add_demand_steps(result, foot, strength, load, moment);
    conclude(result);
    return result;
}

}  // namespace toehold::checks
