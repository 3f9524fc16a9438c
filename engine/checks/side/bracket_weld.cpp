// The two fillets that run up a metal post's sides and hold it to its bracket's plate: the push, its moment about the
// middle of the welds and the vertical load, on the welds as lines (elastic method, common practice, as at a post's
// foot: resistance/steel/weld_line.h), against the strength of the weld and of the metal on both sides of it. All of it
// goes through the welds: where the post presses on the plate itself, they are spared, which is not counted.
#include "catalog/resolve.h"
#include "checks/basis/pushes.h"
#include "checks/basis/result_parts.h"
#include "checks/post/foot.h"
#include "checks/post/weld_strength.h"

#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;

/// Two lines of this height, this far apart, and the middle of them below the member's top edge; in.
struct BracketWeld {
    double height_in = 0.0, apart_in = 0.0, middle_below_in = 0.0, to_axis_in = 0.0;
    [[nodiscard]] double length_in() const { return 2.0 * height_in; }
    /// Of the lines about the level axis through their middle, and about the axis square to the plate, in3.
    [[nodiscard]] double level_in3() const { return std::pow(height_in, 3) / 6.0; }
    [[nodiscard]] double polar_in3() const { return level_in3() + 0.5 * height_in * apart_in * apart_in; }
};

BracketWeld bracket_weld(const model::BaseDetail& detail) {
    const model::BracketPlate& plate = *on_side(detail).bracket;
    const model::Footprint post = model::shaft(detail.post);
    return {plate.height_in, post.width_in, plate.from_top_in + 0.5 * plate.height_in, 0.5 * post.depth_in};
}

/// What one push brings to the middle of the welds.
struct WeldLoads {
    double out_lb = 0.0, along_lb = 0.0, down_lb = 0.0;
    double out_lb_in = 0.0;    ///< turns the post off the plate; the vertical load's eccentricity is added
    double along_lb_in = 0.0;  ///< turns it in the plate's plane
};

WeldLoads loads_of(const demand::Demand& demand, const demand::State& state, const BracketWeld& weld) {
    const demand::ActingLoad load = demand::acting_load(demand, state);
    const double push_lb = std::abs(load.push_lb), height_in = load.height_in + weld.middle_below_in;
    WeldLoads loads;
    loads.out_lb = push_lb * std::abs(std::sin(state.direction_rad));
    loads.along_lb = push_lb * std::abs(std::cos(state.direction_rad));
    loads.down_lb = std::abs(load.down_lb);
    loads.out_lb_in = loads.out_lb * height_in + loads.down_lb * weld.to_axis_in;
    loads.along_lb_in = loads.along_lb * height_in;
    return loads;
}

/// At the end of a line, where all add up.
steel::WeldIntensity at_worst_end(const BracketWeld& weld, const WeldLoads& loads) {
    steel::WeldIntensity force;
    force.bending = loads.out_lb_in * 0.5 * weld.height_in / weld.level_in3();
    force.axial = loads.out_lb / weld.length_in();
    const double level =
        loads.along_lb / weld.length_in() + loads.along_lb_in * 0.5 * weld.height_in / weld.polar_in3();
    const double upright =
        loads.down_lb / weld.length_in() + loads.along_lb_in * 0.5 * weld.apart_in / weld.polar_in3();
    force.shear = std::hypot(level, upright);
    return force;
}

WeldStrength strength_of_fillets(const CheckInput& input) {
    const model::BracketPlate& plate = *on_side(input.resolved.detail).bracket;
    const PostFoot foot = post_foot(input.resolved.detail.post);
    model::Weld fillet;
    fillet.leg_in = plate.weld_leg_in;
    fillet.filler = plate.filler;
    return weld_strength(fillet, on_side(input.resolved).filler.value(),
                         {input.resolved.post_metal, foot.thickness_in, foot.solid,
                          on_side(input.resolved).bracket_metal.value(), plate.thickness_in},
                         input.resolved.detail.basis);
}

std::vector<Step> load_steps(const BracketWeld& weld, const WeldLoads& loads, const steel::WeldIntensity& worst) {
    return {
        demanded("V_y", phrase("push outward or inward"), loads.out_lb, "lb"),
        demanded("V_x", phrase("push along the rail"), loads.along_lb, "lb"),
        demanded("P", phrase("vertical load"), loads.down_lb, "lb"),
        from_file("h_w", phrase("height of the welds"), weld.height_in, "in"),
        from_file("b_w", phrase("distance between them"), weld.apart_in, "in"),
        {"M_x", phrase("moment about the middle of the welds that turns the post off the plate"),
         "V_y h, h from the middle of the welds, and P times half the post's depth", loads.out_lb_in, "lb in",
         "demand"},
        {"M_y", phrase("moment about it in the plate's plane"), "V_x h", loads.along_lb_in, "lb in", "demand"},
        {"f_b", phrase("bending at their ends"), "M_x (h_w/2)/(h_w^3/6)", worst.bending, "lb/in", "common practice"},
        {"f_a", phrase("pull or push square to the plate"), "V_y/(2 h_w)", worst.axial, "lb/in", "common practice"},
        {"f_v", phrase("along the plate"), "V_x, P and M_y on the two lines", worst.shear, "lb/in", "common practice"},
        {"f", phrase("resultant"), "sqrt((f_b + f_a)^2 + f_v^2)", worst.resultant(), "lb/in", "common practice"}};
}

CheckResult weld_of_bracket(const CheckInput& input) {
    const BracketWeld weld = bracket_weld(input.resolved.detail);
    const WeldStrength strength = strength_of_fillets(input);
    const auto worst_of = [&](const demand::State& state) {
        return at_worst_end(weld, loads_of(input.demand, state, weld));
    };
    const bool known = strength.missing.empty();
    const demand::GoverningState worst = governing_push(input, [&](const demand::State& state) {
        return known ? weld_use(strength, worst_of(state)).most() : worst_of(state).resultant();
    });
    const demand::State& state = input.demand.states.at(worst.state);
    const steel::WeldIntensity force = worst_of(state);
    CheckResult result;
    result.part = {model::PartKind::weld};
    result.link = link_between({model::PartKind::post}, {model::PartKind::plate}, phrase("weld"));
    result.unit = "lb/in";
    result.demand = force.resultant();
    result.direction_deg = degrees(state.direction_rad);
    result.steps = load_steps(weld, loads_of(input.demand, state, weld), force);
    append(result.steps, strength.steps);
    if (!known) {
        result.clause = "AISC 360-16 J2.4";
        lacks_evidence(result, strength.missing);
        return result;
    }
    const WeldUse use = weld_use(strength, force);
    result.clause = use.governs() == WeldGoverns::metal ? strength.clause_of_metal : "AISC 360-16 J4.1, J4.2";
    result.capacity = force.resultant() / use.most();
    result.steps.push_back({"r_c", phrase("resultant at which weld, wall or plate is fully used"), "f / largest share",
                            result.capacity, "lb/in", ""});
    conclude(result);
    return result;
}

std::vector<CheckResult> side_bracket_weld(const CheckInput& input) {
    const catalog::SideFastened& materials = on_side(input.resolved);
    if (!on_side(input.resolved.detail).bracket || !materials.bracket_metal || !materials.filler) return {};
    if (input.demand.states.empty()) return {};
    return {weld_of_bracket(input)};
}

const RegisterCheck registered{
    {"side-bracket-weld", phrase("Bracket weld"), "AISC 360-16 J2.4, J4; weld as a line, common practice",
     phrase("The welds up the post's sides that hold it to its bracket, and the metal on both sides of them."),
     side_bracket_weld},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
