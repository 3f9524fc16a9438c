// The fillet weld all round the post's foot, or the shoe's: moment and shear of every push on the weld as a line
// (elastic method, common practice), against AISC 360-16 J2.4 or the Aluminum Design Manual 2020 J.2.2 (from memory).
#include "checks/anchor/seating.h"
#include "checks/post/post_foot.h"
#include "checks/post/weld_strength.h"
#include "checks/registry.h"
#include "demand/worst.h"
#include "resistance/steel/fillet_weld.h"
#include "resistance/steel/weld_line.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

namespace steel = resistance::steel;

steel::WeldForces weld_forces(const demand::Demand& demand, const demand::State& state) {
    const PushMoment moment = push_moment(demand, state);
    const demand::LoadCase& load = load_case(demand, state);
    return {moment.about_x_lb_in, moment.about_y_lb_in, std::abs(load.push_lb), std::abs(load.down_lb)};
}

std::vector<Step> demand_steps(const steel::WeldLine& line, const demand::LoadCase& load,
                               const steel::WeldForces& forces) {
    const bool round = line.shape == steel::WeldShape::circle;
    std::vector<Step> steps = {
        {"H", "push", "demand", std::abs(load.push_lb), "lb", "demand"},
        {"h", "height of the push above the plate's underside", "demand", load.height_in, "in", "demand"},
        {"L_w", "length of the weld", round ? "pi D" : "2 (b + d)", line.length_in, "in", "common practice"},
        {"S_x", "section modulus of the line about x", round ? "pi D^2/4" : "b d + d^2/3", line.section_x_in2, "in2",
         "common practice"},
        {"S_y", "section modulus of the line about y", round ? "pi D^2/4" : "b d + b^2/3", line.section_y_in2, "in2",
         "common practice"},
        {"M_x", "moment about x", "H h, its part along y", forces.moment_x_lb_in, "lb in", "demand"},
        {"M_y", "moment about y", "H h, its part along x", forces.moment_y_lb_in, "lb in", "demand"},
        {"f_b", "bending at the worst point", round ? "M/S" : "M_x/S_x + M_y/S_y",
         steel::bending_lb_per_in(line, forces), "lb/in", "common practice"}};
    if (forces.axial_lb > 0.0) {
        steps.push_back({"f_a", "vertical force", "P/L_w, added to f_b", forces.axial_lb / line.length_in, "lb/in",
                         "common practice"});
    }
    steps.push_back({"f_v", "shear", "H/L_w", forces.shear_lb / line.length_in, "lb/in", "common practice"});
    steps.push_back({"f", "resultant", "square root of (f_b + f_a)^2 + f_v^2", steel::resultant_lb_per_in(line, forces),
                     "lb/in", "common practice"});
    return steps;
}

void note_small_leg(CheckResult& result, const catalog::Resolved& resolved, const PostFoot& foot) {
    const double thinner_in = std::min(foot.wall_in, on_deck(resolved.detail).plate.thickness_in);
    const bool in_aluminum = on_deck(resolved).filler->kind == catalog::MetalKind::aluminum;
    if (!in_aluminum && on_deck(resolved.detail).weld->leg_in < steel::minimum_leg_in(thinner_in))
        result.note = "The leg is under the least of AISC 360-16 Table J2.4 for the thinner part.";
}

CheckResult weld_of(const CheckInput& input, const PostFoot& foot) {
    const catalog::Resolved& resolved = input.resolved;
    const steel::WeldLine line =
        foot.round ? steel::circular_weld(foot.width_in) : steel::rectangular_weld(foot.width_in, foot.depth_in);
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        return steel::resultant_lb_per_in(line, weld_forces(input.demand, state));
    });
    const demand::State& state = input.demand.states.at(worst.state);
    CheckResult result;
    result.subject = foot.shoe ? "weld of the shoe" : "weld of the post";
    result.link = Link{foot.shoe ? "shoe" : "post", "plate", "weld"};
    result.unit = "lb/in";
    result.demand = worst.value;
    result.direction_deg = degrees(state.direction_rad);
    result.steps = demand_steps(line, load_case(input.demand, state), weld_forces(input.demand, state));
    if (!on_deck(resolved.detail).weld || !on_deck(resolved).filler) {
        lacks_evidence(result, "No weld is described: nothing in the file joins the post to the plate.");
        return result;
    }
    const Capacity strength = weld_strength(
        *on_deck(resolved.detail).weld, *on_deck(resolved).filler,
        {resolved.post_metal, foot.wall_in, on_deck(resolved).plate_metal, on_deck(resolved.detail).plate.thickness_in},
        resolved.detail.basis);
    if (!take_capacity(result, strength)) return result;
    conclude(result);
    note_small_leg(result, resolved, foot);
    return result;
}

std::vector<CheckResult> weld(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    // A bolted shoe has no weld; the evidence for the shoe as a whole speaks for its bolts.
    if (!foot.welded) return {};
    return {weld_of(input, foot)};
}

const RegisterCheck registered{
    {"weld", "Weld of the post's foot", "AISC 360-16 J2.4; weld as a line, common practice",
     "The fillet weld all round the post's or the shoe's foot under moment and shear.", weld},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
