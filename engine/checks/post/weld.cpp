// The weld at the post's foot, or the shoe's: moment and shear of every push on the weld as a line (elastic method,
// common practice; see resistance/steel/weld_line.h for what a thin plate adds), against the strength of the weld and
// of the metal on both sides of it.
#include "catalog/resolve.h"
#include "checks/basis/pushes.h"
#include "checks/basis/result_parts.h"
#include "checks/post/filler.h"
#include "checks/post/weld_strength.h"
#include "checks/registry.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;
using steel::WeldIntensity;

/// Of one piece of the foot about its own center, all round or along the sides named.
steel::WeldLine line_of(const steel::TubeShape& piece, const model::FootSides& sides) {
    if (piece.round) return steel::circular_weld(piece.width_in);
    const double x = 0.5 * piece.width_in, y = 0.5 * piece.depth_in;
    std::vector<steel::WeldSegment> segments;
    if (sides.outward) segments.push_back({{-x, y}, {x, y}});
    if (sides.inward) segments.push_back({{-x, -y}, {x, -y}});
    if (sides.right) segments.push_back({{x, -y}, {x, y}});
    if (sides.left) segments.push_back({{-x, -y}, {-x, y}});
    return steel::weld_line(segments);
}

/// What one of the foot's equal pieces carries.
steel::WeldForces forces_of(const demand::Demand& demand, const demand::State& state, std::size_t pieces) {
    const demand::ActingLoad load = demand::acting_load(demand, state);
    const double share = 1.0 / static_cast<double>(pieces);
    return {share * push_moment(demand, state).total_lb_in, state.direction_rad, share * std::abs(load.push_lb),
            share * std::abs(load.down_lb)};
}

struct Weld {
    steel::WeldLine line;
    std::size_t pieces = 1;
    std::optional<WeldStrength> strength;  ///< absent: not described

    /// Without a strength, the force itself.
    [[nodiscard]] double use(const WeldIntensity& force) const {
        return strength && strength->missing.empty() ? weld_use(*strength, force).most() : force.resultant();
    }
    [[nodiscard]] WeldIntensity worst(const demand::Demand& demand, const demand::State& state) const {
        const std::vector<WeldIntensity> all = steel::intensities(line, forces_of(demand, state, pieces));
        return *std::max_element(all.begin(), all.end(),
                                 [this](const WeldIntensity& a, const WeldIntensity& b) { return use(a) < use(b); });
    }
};

std::vector<Step> demand_steps(const Weld& weld, const demand::ActingLoad& load, const steel::WeldForces& forces,
                               const WeldIntensity& worst) {
    const steel::WeldLine& line = weld.line;
    std::vector<Step> steps = {
        demanded("H", phrase("push"), std::abs(load.push_lb), "lb"),
        demanded("h", phrase("height of the push above the underside of the plate"), load.height_in, "in"),
        {"L_w", phrase("weld length"), "sum of its lines", line.length_in, "in", "common practice"},
        {"I_x", phrase("second moment of the weld line about x, through its centroid"), "sum over its lines",
         line.yy_in3, "in3", "common practice"},
        {"I_y", phrase("second moment of the weld line about y, through its centroid"), "sum over its lines",
         line.xx_in3, "in3", "common practice"},
        {"M", phrase("moment"), weld.pieces > 1 ? "H h, half on each bar" : "H h", forces.moment_lb_in, "lb in",
         "demand"},
        {"f_b", phrase("bending at the worst point"), "M_x y/I_x + M_y x/I_y", worst.bending, "lb/in",
         "common practice"}};
    if (forces.axial_lb > 0.0) {
        steps.push_back({"f_a", phrase("vertical load"), "P/L_w and its moment, added to f_b", worst.axial, "lb/in",
                         "common practice"});
    }
    steps.push_back({"f_v", phrase("shear"), "H/L_w and its torsion", worst.shear, "lb/in", "common practice"});
    steps.push_back(
        {"f", phrase("resultant"), "sqrt((f_b + f_a)^2 + f_v^2)", worst.resultant(), "lb/in", "common practice"});
    return steps;
}

std::string governing_clause(const WeldStrength& strength, WeldGoverns governs, bool in_aluminum) {
    if (governs == WeldGoverns::metal || in_aluminum) return strength.clause_of_metal;
    return governs == WeldGoverns::wall ? "AISC 360-16 J4.1, J4.2" : "AISC 360-16 J4.2";
}

void add_use(CheckResult& result, const WeldStrength& strength, const WeldIntensity& worst, bool in_aluminum) {
    const WeldUse use = weld_use(strength, worst);
    result.clause = governing_clause(strength, use.governs(), in_aluminum);
    if (std::isfinite(strength.metal)) {
        if (strength.peak > 1.0)
            result.steps.push_back({"k",
                                    phrase("peak on a thin plate, which a partial penetration groove cannot spread"),
                                    "on f_b", strength.peak, "", "solids of a 2 in tube on 1/4 in plate"});
        result.steps.push_back({"u_w", phrase("share of the weld metal used"), "f / usable r_w", use.metal, "", ""});
    }
    result.steps.push_back({"u_post", phrase("share of the post wall used"),
                            "sqrt(((f_b + f_a)/usable r_t)^2 + (f_v/usable r_v)^2)", use.wall, "", ""});
    result.steps.push_back({"u_plate", phrase("share of the plate used"), "f / usable r_plate", use.plate, "", ""});
    result.capacity = worst.resultant() / use.most();
    result.steps.push_back({"r_c", phrase("resultant at which the first of them is fully used"), "f / largest share",
                            result.capacity, "lb/in", ""});
}

Weld weld_of(const catalog::Resolved& resolved, const PostFoot& foot) {
    const catalog::PlateOnDeck& mount = on_deck(resolved);
    const std::optional<model::Weld>& described = on_deck(resolved.detail).weld;
    Weld weld{line_of(foot.piece, described ? described->sides : model::FootSides{}), foot.centers.size(), {}};
    if (described && mount.filler) {
        weld.strength = weld_strength(*described, *mount.filler,
                                      {foot_metal(resolved), foot.thickness_in, foot.solid, mount.plate_metal,
                                       on_deck(resolved.detail).plate.thickness_in},
                                      resolved.detail.basis);
    }
    return weld;
}

CheckResult result_of(const CheckInput& input, const PostFoot& foot) {
    const Weld weld = weld_of(input.resolved, foot);
    const demand::GoverningState worst =
        governing_push(input, [&](const demand::State& state) { return weld.use(weld.worst(input.demand, state)); });
    const demand::State& state = input.demand.states.at(worst.state);
    const WeldIntensity force = weld.worst(input.demand, state);
    CheckResult result;
    result.part = {model::PartKind::weld};
    result.link = link_between({foot.shoe ? model::PartKind::shoe : model::PartKind::post}, {model::PartKind::plate},
                               phrase("weld"));
    result.unit = "lb/in";
    result.demand = force.resultant();
    result.direction_deg = degrees(state.direction_rad);
    result.steps = demand_steps(weld, demand::acting_load(input.demand, state),
                                forces_of(input.demand, state, weld.pieces), force);
    if (!weld.strength) {
        lacks_evidence(result, phrase("Weld is not specified: nothing in the file joins the post to the plate."));
        return result;
    }
    append(result.steps, weld.strength->steps);
    if (!weld.strength->missing.empty()) {
        result.clause = "AISC 360-16 J2.4";
        lacks_evidence(result, weld.strength->missing);
        return result;
    }
    add_use(result, *weld.strength, force, foot_metal(input.resolved).kind == catalog::MetalKind::aluminum);
    result.note = gussets_not_counted(input.resolved);
    conclude(result);
    return result;
}

std::vector<CheckResult> weld(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    // A bolted shoe has no weld; the evidence for the shoe as a whole speaks for its bolts.
    if (!foot.welded) return {};
    return {result_of(input, foot)};
}

const RegisterCheck registered{
    {"weld", phrase("Post base weld"), "AISC 360-16 J2.4, J4; weld as a line, common practice",
     phrase("The weld at the foot of the post or the shoe, and the metal on both sides of it, under moment and shear."),
     weld},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
