// The fillet weld all round the post's foot, or the shoe's: moment and shear of every push on the weld as a line
// (elastic method, common practice), against AISC 360-16 J2.4 or the Aluminum Design Manual 2020 J.2.2 (from memory).
#include "resistance/steel/weld.h"
#include "catalog/resolve.h"
#include "checks/basis/metal_basis.h"
#include "checks/basis/result_parts.h"
#include "checks/post/filler.h"
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "demand/governing_state.h"
#include "resistance/aluminum/connection.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/tube.h"

#include <array>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

namespace aluminum = resistance::aluminum;
namespace steel = resistance::steel;
using catalog::MetalKind;

/// What the weld joins.
struct WeldParts {
    const catalog::Metal& post;
    double post_wall_in = 0.0;  ///< as drawn
    const catalog::Metal& plate;
    double plate_in = 0.0;
};

// Fillet welds in austenitic stainless steel, AISC Design Guide 27, 2013, from memory, to be confirmed.
constexpr resistance::Safety stainless_weld_safety{2.70, 0.55};

/// One way the weld can break.
struct Line {
    Step step;  ///< nominal, lb/in
    resistance::Safety safety;
};

std::array<Line, 3> steel_lines(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts) {
    const bool stainless = filler.kind == MetalKind::stainless_steel;
    const resistance::Safety safety = stainless ? stainless_weld_safety : steel::weld_safety;
    const std::string clause = stainless ? "AISC Design Guide 27 (from memory)" : "AISC 360-16 J2.4";
    return {
        {{{"r_w", phrase("nominal strength, weld metal"), "0.60 F_EXX x 0.707 l",
           steel::weld_metal_lb_per_in(weld.leg_in, filler.strength_psi), "lb/in", clause},
          safety},
         {{"r_post", phrase("nominal shear rupture, post wall"), "0.60 F_u t",
           steel::base_metal_lb_per_in(steel::design_wall_in(parts.post_wall_in), parts.post.ultimate_psi), "lb/in",
           "AISC 360-16 J2.4, J4.2"},
          steel::weld_safety},
         {{"r_plate", phrase("nominal shear rupture, plate"), "0.60 F_u t_p",
           steel::base_metal_lb_per_in(parts.plate_in, parts.plate.ultimate_psi), "lb/in", "AISC 360-16 J2.4, J4.2"},
          steel::weld_safety}}};
}

std::array<Line, 3> aluminum_lines(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts,
                                   double post_ultimate_psi, double plate_ultimate_psi) {
    const std::string clause = "Aluminum Design Manual 2020 J.2.2 (from memory)";
    return {
        {{{"r_w", phrase("nominal shear strength, filler"), "F_sw x 0.707 l",
           aluminum::weld_filler_lb_per_in(weld.leg_in, filler.strength_psi), "lb/in", clause},
          aluminum::rupture_safety},
         {{"r_post", phrase("nominal shear strength, post beside the weld"), "0.6 F_tuw min(l, t)",
           aluminum::weld_base_metal_lb_per_in(weld.leg_in, parts.post_wall_in, post_ultimate_psi), "lb/in", clause},
          aluminum::rupture_safety},
         {{"r_plate", phrase("nominal shear strength, plate beside the weld"), "0.6 F_tuw min(l, t)",
           aluminum::weld_base_metal_lb_per_in(weld.leg_in, parts.plate_in, plate_ultimate_psi), "lb/in", clause},
          aluminum::rupture_safety}}};
}

void add_governing(Capacity& capacity, const std::array<Line, 3>& lines, const model::Basis& basis) {
    bool first = true;
    Adjusted least;
    for (const Line& line : lines) {
        capacity.steps.push_back(line.step);
        const Adjusted usable = available(line.step.value, line.safety, basis, line.step.clause);
        if (first || usable.value < least.value) {
            least = usable;
            capacity.clause = line.step.clause;
            least.steps.front().meaning = phrase("{}, for {} (governs)", least.steps.front().meaning, line.step.symbol);
        }
        first = false;
    }
    append(capacity.steps, least.steps);
    capacity.value = least.value;
    capacity.steps.push_back(
        {"r_c", phrase("available strength per inch of weld"), "least of the three", capacity.value, "lb/in", ""});
}

/// Steel tubes are rolled thinner than they are named: the wall to design with. Aluminum is as drawn.
std::vector<Step> wall_steps(const WeldParts& parts, bool in_aluminum) {
    if (in_aluminum) return {from_file("t", phrase("post wall thickness"), parts.post_wall_in, "in")};
    return {from_file("t_w", phrase("post wall thickness"), parts.post_wall_in, "in"),
            {"t", phrase("design wall thickness"), "0.93 t_w", steel::design_wall_in(parts.post_wall_in), "in",
             "AISC 360-16 B4.2"},
            from_file("t_p", phrase("plate thickness"), parts.plate_in, "in")};
}

/// Usable force per inch of weld, lb/in: the least of filler and both base metals. Steel: AISC 360-16 J2.4; stainless
/// steel with the larger factors of AISC Design Guide 27 (from memory); aluminum: Aluminum Design Manual 2020 J.2.2
/// (from memory). `missing` where filler and metals do not belong together.
Capacity weld_strength(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts,
                       const model::Basis& basis) {
    Capacity capacity;
    capacity.clause = "AISC 360-16 J2.4";
    if (match(filler.kind, parts.post.kind, parts.plate.kind) != FillerMatch::matches) {
        capacity.missing = phrase("{} is not a filler metal for a weld between {} and {}.", filler.name,
                                  parts.post.name, parts.plate.name);
        return capacity;
    }
    const bool in_aluminum = filler.kind == MetalKind::aluminum;
    const BesideWeld post = strengths(parts.post, {true, &filler, parts.post_wall_in});
    const BesideWeld plate = strengths(parts.plate, {true, &filler, parts.plate_in});
    capacity.missing = post.missing.empty() ? plate.missing : post.missing;
    if (!capacity.missing.empty()) return capacity;
    capacity.steps = {from_file("l", phrase("fillet leg size"), weld.leg_in, "in"),
                      given(in_aluminum ? "F_sw" : "F_EXX", format::verbatim(filler.name), filler.strength_psi, "psi",
                            filler.source.text)};
    append(capacity.steps, wall_steps(parts, in_aluminum));
    add_governing(capacity,
                  in_aluminum ? aluminum_lines(weld, filler, parts, post.ultimate_psi, plate.ultimate_psi)
                              : steel_lines(weld, filler, parts),
                  basis);
    return capacity;
}

steel::WeldForces weld_forces(const demand::Demand& demand, const demand::State& state) {
    const PushMoment moment = push_moment(demand, state);
    const demand::LoadCase& load = load_case(demand, state);
    return {moment.about_x_lb_in, moment.about_y_lb_in, std::abs(load.push_lb), std::abs(load.down_lb)};
}

std::vector<Step> demand_steps(const steel::WeldLine& line, const demand::LoadCase& load,
                               const steel::WeldForces& forces) {
    const bool round = line.shape == steel::WeldShape::circle;
    std::vector<Step> steps = {
        demanded("H", phrase("push"), std::abs(load.push_lb), "lb"),
        demanded("h", phrase("height of the push above the underside of the plate"), load.height_in, "in"),
        {"L_w", phrase("weld length"), round ? "pi D" : "2 (b + d)", line.length_in, "in", "common practice"},
        {"S_x", phrase("section modulus of the weld line about x"), round ? "pi D^2/4" : "b d + d^2/3",
         line.section_x_in2, "in2", "common practice"},
        {"S_y", phrase("section modulus of the weld line about y"), round ? "pi D^2/4" : "b d + b^2/3",
         line.section_y_in2, "in2", "common practice"},
        {"M_x", phrase("moment about x"), "H h, component along y", forces.moment_x_lb_in, "lb in", "demand"},
        {"M_y", phrase("moment about y"), "H h, component along x", forces.moment_y_lb_in, "lb in", "demand"},
        {"f_b", phrase("bending at the worst point"), round ? "M/S" : "M_x/S_x + M_y/S_y",
         steel::bending_lb_per_in(line, forces), "lb/in", "common practice"}};
    if (forces.axial_lb > 0.0) {
        steps.push_back({"f_a", phrase("vertical load"), "P/L_w, added to f_b", forces.axial_lb / line.length_in,
                         "lb/in", "common practice"});
    }
    steps.push_back({"f_v", phrase("shear"), "H/L_w", forces.shear_lb / line.length_in, "lb/in", "common practice"});
    steps.push_back({"f", phrase("resultant"), "sqrt((f_b + f_a)^2 + f_v^2)", steel::resultant_lb_per_in(line, forces),
                     "lb/in", "common practice"});
    return steps;
}

CheckResult weld_of(const CheckInput& input, const PostFoot& foot) {
    const catalog::Resolved& resolved = input.resolved;
    const steel::WeldLine line = foot.tube.round ? steel::circular_weld(foot.tube.width_in)
                                                 : steel::rectangular_weld(foot.tube.width_in, foot.tube.depth_in);
    const demand::GoverningState worst = demand::governing_state(input.demand, [&](const demand::State& state) {
        return steel::resultant_lb_per_in(line, weld_forces(input.demand, state));
    });
    const demand::State& state = input.demand.states.at(worst.state);
    CheckResult result;
    result.part = {model::PartKind::weld};
    result.link = link_between({foot.shoe ? model::PartKind::shoe : model::PartKind::post}, {model::PartKind::plate},
                               phrase("weld"));
    result.unit = "lb/in";
    result.demand = worst.value;
    result.direction_deg = degrees(state.direction_rad);
    result.steps = demand_steps(line, load_case(input.demand, state), weld_forces(input.demand, state));
    if (!on_deck(resolved.detail).weld || !on_deck(resolved).filler) {
        lacks_evidence(result, phrase("Weld is not specified: nothing in the file joins the post to the plate."));
        return result;
    }
    const Capacity strength = weld_strength(*on_deck(resolved.detail).weld, *on_deck(resolved).filler,
                                            {resolved.post_metal, foot.tube.wall_in, on_deck(resolved).plate_metal,
                                             on_deck(resolved.detail).plate.thickness_in},
                                            resolved.detail.basis);
    if (!take_capacity(result, strength)) return result;
    conclude(result);
    return result;
}

std::vector<CheckResult> weld(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    // A bolted shoe has no weld; the evidence for the shoe as a whole speaks for its bolts.
    if (!foot.welded) return {};
    return {weld_of(input, foot)};
}

const RegisterCheck registered{
    {"weld", phrase("Post base weld"), "AISC 360-16 J2.4; weld as a line, common practice",
     phrase("Fillet weld all around the foot of the post or the shoe, under moment and shear."), weld},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
