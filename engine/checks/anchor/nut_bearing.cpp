// A through-bolt's nut pressed up into the member's underside.
//   - On a washer or backing plate: F_c,perp' on the net area (NDS 2018 3.10.2), taken evenly about the bolt, as far as
//     the metal's bending can load it. An overhang too thin for the pressure gives, the pressure comes in toward the
//     nut, and what is left bears: a limit of the area, not a failure of its own.
//   - On the wood itself: NDS 2018 12.2.5. The clause is for round heads, so the nut's across-flats stands for the
//     head's diameter: the smallest circle, and the reading taken. The wood under the nut must also not be crushed
//     (3.10.2), which commonly leads.
#include "catalog/resolve.h"
#include "checks/anchor/seating.h"
#include "checks/basis/wood_basis.h"
#include "demand/demand.h"
#include "resistance/steel/washer.h"
#include "resistance/wood/washer_bearing.h"
#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using format::phrase;
using resistance::BearingArea;
using resistance::Clearance;

/// Plate washers are commonly of ASTM A36. ASTM F844 asks for no strength at all, so the step says that this is
/// assumed; hardened washers (ASTM F436) are far stronger.
constexpr double washer_yield_psi = 36000.0;

bool bears_on_metal(const Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt && (anchor.washer_below || anchor.backing);
}

/// Yield stress a washer or backing plate may be bent to: Omega 1.67, phi 0.90, AISC 360-16 F1.
double available_psi(double yield_psi, model::Method method) {
    return method == model::Method::asd ? yield_psi / 1.67 : 0.90 * yield_psi;
}

/// Cb lengthens a washer's short bearing.
double bearing_area_factor(const Anchor& anchor, double along_in) {
    if (!(along_in > 0.0)) return 1.0;
    return resistance::bearing_area_factor(along_in, anchor.seat.value().end_in - 0.5 * along_in);
}

/// What bears, with the factor of its length.
struct Bearing {
    BearingArea area;
    double factor = 1.0;
};

/// Only as much of a washer counts as its own bending can load. Cb stays that of the whole washer, whose pressure bends
/// it.
Bearing under_washer(const Anchor& anchor, const Clearance& clearance, double available, double allowed_psi,
                     std::vector<Step>& steps) {
    const catalog::WasherSize& washer = anchor.washer_below.value();
    const double hole_in = std::max(washer.hole_diameter_in, resistance::bolt_hole_in_wood_in(anchor.diameter_in));
    const BearingArea whole = resistance::washer_bearing(washer.outside_diameter_in, hole_in, clearance);
    const resistance::steel::RoundWasher bent{whole.along_in, hole_in, anchor.head_width_in, washer.thickness_in};
    const double factor = bearing_area_factor(anchor, whole.along_in);
    const double limit_psi = resistance::steel::washer_limit_psi(bent, available);
    const double reach_in = resistance::steel::washer_reach_in(bent, available, factor * allowed_psi);
    const BearingArea area = resistance::washer_bearing(reach_in, hole_in, clearance);
    steps.push_back(from_file("d_o", phrase("washer, outside"), washer.outside_diameter_in, "in"));
    steps.push_back(from_file("t", phrase("washer, thickness"), washer.thickness_in, "in"));
    steps.push_back({"d_h", phrase("larger of the washer's hole and the hole in the wood"), "max(hole, D + 1/16)",
                     hole_in, "in", "NDS 2018 12.1.3.2"});
    steps.push_back({"F_y", phrase("yield strength of the washer, assumed: the standards of washers give none"),
                     "assumed", washer_yield_psi, "psi", "ASTM A36", Origin::given});
    if (std::isfinite(limit_psi)) {
        steps.push_back({"p_L", phrase("pressure at which a washer so wide folds around the nut, allowable"),
                         "2 (b - h) (F_y,a t^2/4)/((2/3)(b^3 - h^3) - (b^2 - h^2) a)", limit_psi, "psi",
                         "AISC 360-16 F11.1"});
    }
    steps.push_back({"d_e", phrase("its part on the wood, even about the bolt, that its bending can load"),
                     "min(d_o, twice to the nearer edge or end, p_L >= C_b F_c,perp')", area.along_in, "in", ""});
    steps.push_back({"A", phrase("net bearing area"), "pi (d_e^2 - d_h^2)/4", area.area_in2, "in2", ""});
    return {area, factor};
}

/// Only as much of a backing plate counts as its own bending can load.
BearingArea under_plate(const Anchor& anchor, const model::Member& member, const Clearance& clearance, double spread_in,
                        std::vector<Step>& steps) {
    const model::BackingPlate& plate = anchor.backing.value();
    const bool grain_along_x = member.along == model::PlanAxis::x;
    const double reach_in = anchor.head_width_in + 2.0 * spread_in;
    const double along_in = std::min(grain_along_x ? plate.width_in : plate.depth_in, reach_in);
    const double across_in = std::min(grain_along_x ? plate.depth_in : plate.width_in, reach_in);
    const double hole_in = resistance::bolt_hole_in_wood_in(anchor.diameter_in);
    const BearingArea area = resistance::plate_bearing(along_in, across_in, hole_in, clearance);
    steps.push_back({"c", phrase("spread of pressure beyond the nut, as the plate's bending allows"),
                     "t sqrt(F_y,a/(3 F_c,perp'))", spread_in, "in", "EN 1993-1-8 6.2.5 (from memory)"});
    steps.push_back({"l_b", phrase("bearing along the grain"),
                     "min(plate, nut + 2 c), on the wood evenly about the bolt", area.along_in, "in", ""});
    steps.push_back({"b_b", phrase("bearing across the grain"),
                     "min(plate, nut + 2 c), on the wood evenly about the bolt", area.across_in, "in", ""});
    steps.push_back({"d_h", phrase("hole in the wood"), "D + 1/16", hole_in, "in", "NDS 2018 12.1.3.2"});
    steps.push_back({"A", phrase("net bearing area"), "l_b b_b - pi d_h^2/4", area.area_in2, "in2", ""});
    return area;
}

/// F_c,perp', psi.
double strength_psi(const CheckInput& input, const Anchor& anchor, std::vector<Step>& steps) {
    const double reference_psi = wood_of(input.resolved, anchor).grade.compression_perp_psi;
    const Adjusted strength =
        adjust_compression_perp(wood_of(input.resolved, anchor).grade, input.resolved.detail.basis);
    steps.push_back(given("F_c,perp", phrase("reference compression perpendicular to grain"), reference_psi, "psi",
                          "NDS Supplement 2018"));
    append(steps, strength.steps);
    steps.push_back({"F_c,perp'", phrase("adjusted compression perpendicular to grain"), "F_c,perp and every factor",
                     strength.value, "psi", "NDS 2018 3.10.2"});
    return strength.value;
}

double capacity_lb(const CheckInput& input, const Anchor& anchor, std::vector<Step>& steps) {
    const double allowed_psi = strength_psi(input, anchor, steps);
    const Clearance clearance{anchor.seat.value().end_in, anchor.seat->edge_in};
    Bearing bears;
    if (anchor.backing) {
        const double yield_psi =
            available_psi(anchor.backing_metal.value().yield_psi, input.resolved.detail.basis.method);
        const double spread_in = resistance::plate_spread_in(anchor.backing->thickness_in, yield_psi, allowed_psi);
        // Without Cb: the plate's extent is already what its bending can load.
        bears.area = under_plate(anchor, member_of(input.resolved, anchor), clearance, spread_in, steps);
    } else {
        const double available = available_psi(washer_yield_psi, input.resolved.detail.basis.method);
        bears = under_washer(anchor, clearance, available, allowed_psi, steps);
    }
    const double capacity = allowed_psi * bears.factor * bears.area.area_in2;
    steps.push_back({"C_b", phrase("bearing area factor, washers only"),
                     "(d_w + 3/8)/d_w of the washer on the wood where d_w < 6 in and 3 in from the end, else 1",
                     bears.factor, "", "NDS 2018 3.10.4"});
    steps.push_back(
        {"R'", phrase("bearing allowed by the wood"), "F_c,perp' C_b A", capacity, "lb", "NDS 2018 3.10.2"});
    return capacity;
}

CheckResult bearing(const CheckInput& input, std::size_t index) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.unit = "lb";
    result.link = link_between(result.part, member_part(input.resolved, anchor),
                               anchor.backing ? phrase("backing plate below") : phrase("washer below"));
    if (anchor.backing && !anchor.backing_metal) {
        lacks_evidence(result,
                       phrase("The metal of the backing plate is not specified. Give it, so that its spread of the "
                              "bearing can be computed."));
        return result;
    }
    result.capacity = capacity_lb(input, anchor, result.steps);
    result.steps.push_back(demanded("T_u", phrase("largest tension"), result.demand, "lb"));
    conclude(result);
    return result;
}

std::vector<CheckResult> washer_bearing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (bears_on_metal(anchor) && lands(anchor)) results.push_back(bearing(input, index));
    }
    return results;
}

double pull_through_lb(const CheckInput& input, const Anchor& anchor, std::vector<Step>& steps) {
    const double gravity = wood_of(input.resolved, anchor).species.specific_gravity;
    const double depth_in = member_of(input.resolved, anchor).depth_in;
    const double reference_lb = resistance::head_pull_through_lb(gravity, anchor.head_width_in, depth_in);
    const bool thin = depth_in <= 2.5 * anchor.head_width_in;
    append(steps, {from_file("D_H", phrase("nut across flats, taken as the head diameter"), anchor.head_width_in, "in"),
                   from_file("t_ns", phrase("wood above the nut: depth of {}", member_name(input.resolved, anchor)),
                             depth_in, "in"),
                   given("G", phrase("specific gravity"), gravity, "", "NDS 2018 Table 12.3.3A"),
                   {"W_H", phrase("reference pull-through"), thin ? "690 pi D_H G^2 t_ns" : "1725 pi D_H^2 G^2",
                    reference_lb, "lb", "NDS 2018 12.2.5"}});
    const Adjusted adjusted = adjust_withdrawal(reference_lb, input.resolved.detail.basis);
    append(steps, adjusted.steps);
    steps.push_back(
        {"W_H'", phrase("adjusted pull-through"), "W_H and every factor", adjusted.value, "lb", "NDS 2018 12.2.5"});
    return adjusted.value;
}

/// The ring of wood under the nut: small, because a bolt's hole takes most of what a nut covers.
double bearing_lb(const CheckInput& input, const Anchor& anchor, std::vector<Step>& steps) {
    const double reference_psi = wood_of(input.resolved, anchor).grade.compression_perp_psi;
    const double hole_in = resistance::bolt_hole_in_wood_in(anchor.diameter_in);
    const resistance::BearingArea ring =
        resistance::washer_bearing(anchor.head_width_in, hole_in, {anchor.seat.value().end_in, anchor.seat->edge_in});
    const Adjusted adjusted =
        adjust_compression_perp(wood_of(input.resolved, anchor).grade, input.resolved.detail.basis);
    steps.push_back(given("F_c,perp", phrase("reference compression perpendicular to grain"), reference_psi, "psi",
                          "NDS Supplement 2018"));
    append(steps, adjusted.steps);
    steps.push_back({"A", phrase("net area under the nut"), "pi (D_H^2 - (D + 1/16)^2)/4", ring.area_in2, "in2", ""});
    const double capacity = adjusted.value * ring.area_in2;
    steps.push_back({"R'", phrase("bearing allowed by the wood"), "F_c,perp' A", capacity, "lb", "NDS 2018 3.10.2"});
    return capacity;
}

CheckResult pull_through(const CheckInput& input, std::size_t index) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, true);
    result.demand = input.demand.anchors.at(index).tension_lb;
    result.unit = "lb";
    result.link = link_between(result.part, member_part(input.resolved, anchor), phrase("nut on the wood"));
    const double through_lb = pull_through_lb(input, anchor, result.steps);
    const double crushed_lb = bearing_lb(input, anchor, result.steps);
    result.capacity = std::min(through_lb, crushed_lb);
    result.steps.push_back({"R_n", phrase("lesser of the two"), "min(W_H', R')", result.capacity, "lb", ""});
    result.steps.push_back(demanded("T_u", phrase("largest tension"), result.demand, "lb"));
    result.note = phrase(
        "The clause is for round heads: the nut's width across flats is taken as the head diameter, with the factors "
        "of withdrawal, and the net area under the nut must take the tension in bearing too.");
    conclude(result);
    return result;
}

std::vector<CheckResult> head_pull_through(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (bears_on_wood(anchor) && lands(anchor)) results.push_back(pull_through(input, index));
    }
    return results;
}

const RegisterCheck washer_check{
    {"washer-bearing", phrase("Washer or backing plate bearing"), "NDS 2018 3.10.2",
     phrase("A through-bolt's washer or backing plate against the underside of its block, joist or rim."),
     washer_bearing}};
const RegisterCheck pull_through_check{
    {"head-pull-through", phrase("Nut pull-through"), "NDS 2018 12.2.5, 3.10.2",
     phrase("A bolt's nut without a washer, pulled up into its block, joist or rim by the largest tension."),
     head_pull_through}};

}  // namespace
}  // namespace toehold::checks
