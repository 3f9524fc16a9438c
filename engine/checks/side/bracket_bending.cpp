// A bracket's plate bent between the welds at the post's sides and what holds it.
//   - Pulled: every anchor's tension at its distance from the weld's toe bends a strip of plate up the post. The strip
//     is what is nearest to that anchor, half way to its neighbors on the same side or to the plate's edge, and no
//     wider than the head with 45 degrees to either side (common practice): the wings are cantilevers, their tips do
//     not help.
//   - Pressed: beyond the weld's toe the member presses on the plate, an inch of it at a time, with no more than the
//     largest pressure of that state over the whole overhang.
// Prying is not in the anchors' tension: a wing that bends may press on the member at its tip, which pulls more on the
// anchor. A plate that holds as a cantilever stays nearly flat; the note says so.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/metal_basis.h"
#include "checks/member/plate_pressure.h"
#include "demand/governing_state.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/member.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using format::phrase;

namespace aluminum = resistance::aluminum;
namespace steel = resistance::steel;

/// From the post's axis to the outer toe of the weld.
double to_weld_toe_in(const model::BaseDetail& detail) {
    return 0.5 * model::shaft(detail.post).width_in + on_side(detail).bracket->weld_leg_in;
}

/// Usable moment of a strip of plate beside the weld, lb in.
Capacity strip_capacity(const CheckInput& input, double strip_in) {
    const model::BracketPlate& plate = *on_side(input.resolved.detail).bracket;
    const catalog::Metal& metal = on_side(input.resolved).bracket_metal.value();
    const auto& filler = on_side(input.resolved).filler;
    const model::Basis& basis = input.resolved.detail.basis;
    const bool in_aluminum = metal.kind == catalog::MetalKind::aluminum;
    Capacity capacity;
    capacity.clause =
        in_aluminum ? "Aluminum Design Manual 2020 F.2 (from memory)" : steel_clause(metal, "AISC 360-16 F11.1");
    const BesideWeld used = strengths(metal, {true, filler ? &*filler : nullptr, plate.thickness_in});
    capacity.missing = used.missing;
    if (!capacity.missing.empty()) return capacity;
    capacity.steps = {from_file("t", phrase("plate thickness"), plate.thickness_in, "in"), yield_step(metal, used)};
    if (!in_aluminum) {
        const Adjusted usable = available(steel::plate_moment_lb_in(strip_in, plate.thickness_in, used.yield_psi),
                                          steel::flexure_safety, basis, capacity.clause);
        append(capacity.steps, usable.steps);
        capacity.value = usable.value;
    } else {
        const aluminum::Moment nominal =
            aluminum::plate_moment(strip_in, plate.thickness_in, {used.yield_psi, used.ultimate_psi});
        const Adjusted yields = available(nominal.yield_lb_in, aluminum::yield_safety, basis, capacity.clause);
        const Adjusted breaks = available(nominal.rupture_lb_in, aluminum::rupture_safety, basis, capacity.clause);
        const Adjusted& least = yields.value < breaks.value ? yields : breaks;
        append(capacity.steps, least.steps);
        capacity.value = least.value;
    }
    capacity.steps.push_back({"M_c", phrase("available moment of the strip"),
                              in_aluminum ? "the lesser of Z F_y (no more than 1.5 S F_y) and Z F_u, ASD or LRFD"
                                          : "F_y b_s t^2/4, ASD or LRFD",
                              capacity.value, "lb in", capacity.clause});
    return capacity;
}

/// Height of plate that an anchor bends: half way to its neighbors on its side, or to the plate's edges.
double tributary_in(const catalog::Resolved& resolved, const Anchor& anchor) {
    const model::BracketPlate& plate = *on_side(resolved.detail).bracket;
    double above_in = -anchor.at.z_in - plate.from_top_in;
    double below_in = plate.height_in - above_in;
    for (const Anchor& other : resolved.anchors) {
        if (other.at.x_in * anchor.at.x_in <= 0.0 || &other == &anchor) continue;
        const double up_in = other.at.z_in - anchor.at.z_in;
        if (up_in > 0.0) above_in = std::min(above_in, 0.5 * up_in);
        if (up_in < 0.0) below_in = std::min(below_in, -0.5 * up_in);
    }
    return std::max(0.0, above_in) + std::max(0.0, below_in);
}

CheckResult pulled(const CheckInput& input, std::size_t index, double arm_in) {
    const Anchor& anchor = input.resolved.anchors[index];
    const double head_in = anchor.washer ? anchor.washer->outside_diameter_in : anchor.head_width_in;
    const double near_in = tributary_in(input.resolved, anchor);
    const double strip_in = std::min(near_in, head_in + 2.0 * arm_in);
    CheckResult result;
    result.part = model::hole_part(anchor.id);
    result.aspect = "pulled";
    result.direction_deg = degrees(input.demand.anchors.at(index).direction_rad);
    result.link = link_between({model::PartKind::plate}, part_of(anchor), phrase("plate bending"));
    result.unit = "lb in";
    const double tension_lb = input.demand.anchors.at(index).tension_lb;
    result.demand = tension_lb * arm_in;
    const Capacity strength = strip_capacity(input, strip_in);
    result.steps = {
        demanded("T", phrase("largest tension"), tension_lb, "lb"),
        {"a", phrase("anchor's center to the toe of the weld at the post's side"), "from the elevation", arm_in, "in",
         "input", Origin::file},
        {"M", phrase("moment at the toe"), "T a", result.demand, "lb in", "statics"},
        {"b_s", phrase("strip of plate up the post"),
         "half way to the neighbors or to the edge, at most the head and 2 a", strip_in, "in", "common practice"}};
    if (!take_capacity(result, strength)) return result;
    result.note = phrase(
        "Prying is not counted: a wing that bends presses on the member at its tip and pulls more on the anchor.");
    conclude(result);
    return result;
}

double peak_psi(const CheckInput& input, const demand::State& state) {
    double peak = 0.0;
    for (std::size_t index = 0; index < state.supports.size(); ++index) {
        if (presses_level(input.demand.supports.at(index))) peak = std::max(peak, state.supports[index].peak_psi);
    }
    return peak;
}

CheckResult pressed(const CheckInput& input, double overhang_in) {
    const demand::GoverningState worst =
        demand::governing_state(input.demand, [&](const demand::State& state) { return peak_psi(input, state); });
    CheckResult result;
    result.part = {model::PartKind::plate};
    result.aspect = "pressed";
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.unit = "lb in";
    result.demand = 0.5 * worst.value * overhang_in * overhang_in;
    result.steps = {
        demanded("p", phrase("largest pressure of the member on the plate"), worst.value, "psi"),
        {"a", phrase("plate beyond the toe of the weld"), "from the elevation", overhang_in, "in", "input",
         Origin::file},
        {"M", phrase("moment at the toe, an inch of height"), "p a^2/2", result.demand, "lb in", "statics"}};
    if (!take_capacity(result, strip_capacity(input, 1.0))) return result;
    conclude(result);
    return result;
}

std::vector<CheckResult> bracket_bending(const CheckInput& input) {
    std::vector<CheckResult> results;
    const auto& plate = on_side(input.resolved.detail).bracket;
    if (!plate || !on_side(input.resolved).bracket_metal || input.demand.states.empty()) return results;
    const double toe_in = to_weld_toe_in(input.resolved.detail);
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const double arm_in = std::abs(input.resolved.anchors[index].at.x_in) - toe_in;
        if (arm_in > 0.0) results.push_back(pulled(input, index, arm_in));
    }
    const double overhang_in = 0.5 * plate->width_in - toe_in;
    if (overhang_in > 0.0) results.push_back(pressed(input, overhang_in));
    return results;
}

const RegisterCheck registered{
    {"side-bracket-bending", phrase("Bracket plate bending"), "AISC 360-16 F11.1",
     phrase("A bracket's plate, bent at the welds on the post's sides by its anchors and by the member's pressure."),
     bracket_bending},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
