#include "checks/anchor/wood_bearing.h"

#include "checks/basis/wood_basis.h"
#include "resistance/steel/washer.h"
#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;
using resistance::BearingArea;

/// Plate washers are commonly of ASTM A36. ASTM F844 asks for no strength at all, so the step says that this is
/// assumed; hardened washers (ASTM F436) are far stronger.
constexpr double washer_yield_psi = 36000.0;

bool at_nut(const BearingOnWood& bearing) { return bearing.end == BearingEnd::nut; }

/// Yield stress a washer or plate may be bent to: Omega 1.67, phi 0.90, AISC 360-16 F1.
double available_psi(double yield_psi, model::Method method) {
    return method == model::Method::asd ? yield_psi / 1.67 : 0.90 * yield_psi;
}

/// Cb lengthens a washer's short bearing.
double bearing_area_factor(const BearingOnWood& bearing, double along_in) {
    if (!(along_in > 0.0)) return 1.0;
    return resistance::bearing_area_factor(along_in, bearing.clearance.along_in - 0.5 * along_in);
}

/// F_c,perp', psi.
double strength_psi(const BearingOnWood& bearing, std::vector<Step>& steps) {
    const Adjusted strength = adjust_compression_perp(bearing.grade, bearing.basis);
    steps.push_back(given("F_c,perp", phrase("reference compression perpendicular to grain"),
                          bearing.grade.compression_perp_psi, "psi", "NDS Supplement 2018"));
    append(steps, strength.steps);
    steps.push_back({"F_c,perp'", phrase("adjusted compression perpendicular to grain"), "F_c,perp and every factor",
                     strength.value, "psi", "NDS 2018 3.10.2"});
    return strength.value;
}

double allowed_lb(double allowed_psi, double factor, double area_in2, std::vector<Step>& steps) {
    const double capacity = allowed_psi * factor * area_in2;
    steps.push_back({"C_b", phrase("bearing area factor, washers only"),
                     "(d_w + 3/8)/d_w of the washer on the wood where d_w < 6 in and 3 in from the end, else 1", factor,
                     "", "NDS 2018 3.10.4"});
    steps.push_back(
        {"R'", phrase("bearing allowed by the wood"), "F_c,perp' C_b A", capacity, "lb", "NDS 2018 3.10.2"});
    return capacity;
}

void add_fold(std::vector<Step>& steps, const BearingOnWood& bearing, double limit_psi) {
    if (!std::isfinite(limit_psi)) return;
    steps.push_back({"p_L",
                     at_nut(bearing) ? phrase("pressure at which a washer so wide folds around the nut, allowable")
                                     : phrase("pressure at which a washer so wide folds around the head, allowable"),
                     "2 (b - h) (F_y,a t^2/4)/((2/3)(b^3 - h^3) - (b^2 - h^2) a)", limit_psi, "psi",
                     "AISC 360-16 F11.1"});
}

/// Only as much of a plate counts as its own bending can load.
BearingArea plate_area(const BearingOnWood& bearing, const model::BackingPlate& plate, double spread_in,
                       std::vector<Step>& steps) {
    const bool grain_along_x = bearing.grain == model::PlanAxis::x;
    const double reach_in = bearing.head_in + 2.0 * spread_in;
    const double along_in = std::min(grain_along_x ? plate.width_in : plate.depth_in, reach_in);
    const double across_in = std::min(grain_along_x ? plate.depth_in : plate.width_in, reach_in);
    const double hole_in = resistance::bolt_hole_in_wood_in(bearing.diameter_in);
    const BearingArea area = resistance::plate_bearing(along_in, across_in, hole_in, bearing.clearance);
    const char* const formula = at_nut(bearing) ? "min(plate, nut + 2 c), on the wood evenly about the bolt"
                                                : "min(plate, head + 2 c), on the wood evenly about the bolt";
    steps.push_back({"c",
                     at_nut(bearing) ? phrase("spread of pressure beyond the nut, as the plate's bending allows")
                                     : phrase("spread of pressure beyond the head, as the plate's bending allows"),
                     "t sqrt(F_y,a/(3 F_c,perp'))", spread_in, "in", "EN 1993-1-8 6.2.5 (from memory)"});
    steps.push_back({"l_b", phrase("bearing along the grain"), formula, area.along_in, "in", ""});
    steps.push_back({"b_b", phrase("bearing across the grain"), formula, area.across_in, "in", ""});
    steps.push_back({"d_h", phrase("hole in the wood"), "D + 1/16", hole_in, "in", "NDS 2018 12.1.3.2"});
    steps.push_back({"A", phrase("net bearing area"), "l_b b_b - pi d_h^2/4", area.area_in2, "in2", ""});
    return area;
}

double pull_through_lb(const BearingOnWood& bearing, std::vector<Step>& steps) {
    const double reference_lb =
        resistance::head_pull_through_lb(bearing.specific_gravity, bearing.head_in, bearing.thickness_in);
    const bool thin = bearing.thickness_in <= 2.5 * bearing.head_in;
    append(steps, {from_file("D_H",
                             at_nut(bearing) ? phrase("nut across flats, taken as the head diameter")
                                             : phrase("head's diameter, or across its flats"),
                             bearing.head_in, "in"),
                   from_file("t_ns",
                             at_nut(bearing) ? phrase("wood above the nut: depth of {}", bearing.wood_name)
                                             : phrase("wood under the head: depth of {}", bearing.wood_name),
                             bearing.thickness_in, "in"),
                   given("G", phrase("specific gravity"), bearing.specific_gravity, "", "NDS 2018 Table 12.3.3A"),
                   {"W_H", phrase("reference pull-through"), thin ? "690 pi D_H G^2 t_ns" : "1725 pi D_H^2 G^2",
                    reference_lb, "lb", "NDS 2018 12.2.5"}});
    const Adjusted adjusted = adjust_withdrawal(reference_lb, bearing.basis);
    append(steps, adjusted.steps);
    steps.push_back(
        {"W_H'", phrase("adjusted pull-through"), "W_H and every factor", adjusted.value, "lb", "NDS 2018 12.2.5"});
    return adjusted.value;
}

/// The ring of wood under it: small, because the hole takes most of what a nut covers.
double ring_lb(const BearingOnWood& bearing, std::vector<Step>& steps) {
    const bool screw = bearing.end == BearingEnd::screw_head;
    const double hole_in = screw ? bearing.diameter_in : resistance::bolt_hole_in_wood_in(bearing.diameter_in);
    const BearingArea ring = resistance::washer_bearing(bearing.head_in, hole_in, bearing.clearance);
    const Adjusted adjusted = adjust_compression_perp(bearing.grade, bearing.basis);
    steps.push_back(given("F_c,perp", phrase("reference compression perpendicular to grain"),
                          bearing.grade.compression_perp_psi, "psi", "NDS Supplement 2018"));
    append(steps, adjusted.steps);
    steps.push_back({"A", at_nut(bearing) ? phrase("net area under the nut") : phrase("net area under the head"),
                     screw ? "pi (D_H^2 - D^2)/4" : "pi (D_H^2 - (D + 1/16)^2)/4", ring.area_in2, "in2", ""});
    const double capacity = adjusted.value * ring.area_in2;
    steps.push_back({"R'", phrase("bearing allowed by the wood"), "F_c,perp' A", capacity, "lb", "NDS 2018 3.10.2"});
    return capacity;
}

}  // namespace

/// Only as much of a washer counts as its own bending can load. Cb stays that of the whole washer, whose pressure bends
/// it.
double under_washer_lb(const BearingOnWood& bearing, const catalog::WasherSize& washer, std::vector<Step>& steps) {
    const double allowed_psi = strength_psi(bearing, steps);
    const double available = available_psi(washer_yield_psi, bearing.basis.method);
    const double hole_in = std::max(washer.hole_diameter_in, resistance::bolt_hole_in_wood_in(bearing.diameter_in));
    const BearingArea whole = resistance::washer_bearing(washer.outside_diameter_in, hole_in, bearing.clearance);
    const resistance::steel::RoundWasher bent{whole.along_in, hole_in, bearing.head_in, washer.thickness_in};
    const double factor = bearing_area_factor(bearing, whole.along_in);
    const double limit_psi = resistance::steel::washer_limit_psi(bent, available);
    const double reach_in = resistance::steel::washer_reach_in(bent, available, factor * allowed_psi);
    const BearingArea area = resistance::washer_bearing(reach_in, hole_in, bearing.clearance);
    steps.push_back(from_file("d_o", phrase("washer, outside"), washer.outside_diameter_in, "in"));
    steps.push_back(from_file("t", phrase("washer, thickness"), washer.thickness_in, "in"));
    steps.push_back({"d_h", phrase("larger of the washer's hole and the hole in the wood"), "max(hole, D + 1/16)",
                     hole_in, "in", "NDS 2018 12.1.3.2"});
    steps.push_back({"F_y", phrase("yield strength of the washer, assumed: the standards of washers give none"),
                     "assumed", washer_yield_psi, "psi", "ASTM A36", Origin::given});
    add_fold(steps, bearing, limit_psi);
    steps.push_back({"d_e", phrase("its part on the wood, even about the bolt, that its bending can load"),
                     "min(d_o, twice to the nearer edge or end, p_L >= C_b F_c,perp')", area.along_in, "in", ""});
    steps.push_back({"A", phrase("net bearing area"), "pi (d_e^2 - d_h^2)/4", area.area_in2, "in2", ""});
    return allowed_lb(allowed_psi, factor, area.area_in2, steps);
}

double under_plate_lb(const BearingOnWood& bearing, const model::BackingPlate& plate, const catalog::Metal& metal,
                      std::vector<Step>& steps) {
    const double allowed_psi = strength_psi(bearing, steps);
    const double yield_psi = available_psi(metal.yield_psi, bearing.basis.method);
    const double spread_in = resistance::plate_spread_in(plate.thickness_in, yield_psi, allowed_psi);
    const BearingArea area = plate_area(bearing, plate, spread_in, steps);
    // Without Cb: the plate's extent is already what its bending can load.
    return allowed_lb(allowed_psi, 1.0, area.area_in2, steps);
}

double under_bare_head_lb(const BearingOnWood& bearing, std::vector<Step>& steps) {
    const double through_lb = pull_through_lb(bearing, steps);
    if (bearing.end == BearingEnd::round_head) return through_lb;
    const double capacity = std::min(through_lb, ring_lb(bearing, steps));
    steps.push_back({"R_n", phrase("lesser of the two"), "min(W_H', R')", capacity, "lb", ""});
    return capacity;
}

}  // namespace toehold::checks
