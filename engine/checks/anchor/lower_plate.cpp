// One plate, angle or channel under the wood for all bolts of a group. For each block, joist or rim it lies under: the
// bolts of that member, in the state that is hardest on it, against the wood's mean bearing across the grain and
// against the plate's bending between and beyond its bolts. Nothing is counted from one member to the next: what ties
// them so is not computed.
//   - The width that presses lies evenly about the bolts' line, on the wood, and no farther from the nut than the plate
//     bends across itself under the allowable pressure (as of a backing plate, EN 1993-1-8 6.2.5 by memory).
//   - Along itself the strip is `best_strip`. The bolts' pulls and the wood's pressure meet in that line, so that they
//     do not twist it. A pressure bends the plate both ways at once with the same sign, which is no worse than either
//     alone (Tresca).
//   - A flat plate bends to Fy Z, AISC 360-16 F11.1 (aluminum: yielding and rupture on Z, ADM F.2 by memory). An
//     angle or a channel of steel stays elastic, Fy S about the axis along its face: the wood holds the face from
//     turning, so F10's and F6's reductions for that do not arise. Its legs must not be slender, Table B4.1b.
#include "catalog/resolve.h"
#include "checks/anchor/lower_plate_section.h"
#include "checks/anchor/lower_plate_strip.h"
#include "checks/anchor/seating.h"
#include "checks/basis/wood_basis.h"
#include "demand/demand.h"
#include "model/placement.h"
#include "resistance/wood/washer_bearing.h"

#include <algorithm>
#include <limits>
#include <numbers>
#include <utility>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using format::phrase;
using model::PlanAxis;

constexpr double nothing = 1e-9;

/// The bolts of one group in one member.
struct Seated {
    std::size_t group = 0, member = 0;
    std::vector<std::size_t> anchors;
};

std::vector<Seated> seated_groups(const catalog::Resolved& resolved) {
    std::vector<Seated> all;
    for (std::size_t index = 0; index < resolved.anchors.size(); ++index) {
        const Anchor& anchor = resolved.anchors[index];
        if (!anchor.lower || !lands(anchor)) continue;
        const auto same = [&](const Seated& one) {
            return one.group == anchor.group && one.member == anchor.seat->member;
        };
        auto found = std::find_if(all.begin(), all.end(), same);
        if (found == all.end()) found = all.insert(all.end(), Seated{anchor.group, anchor.seat->member, {}});
        found->anchors.push_back(index);
    }
    return all;
}

struct Interval {
    double from_in = 0.0, to_in = 0.0;
};

Interval common(Interval one, Interval other) {
    return {std::max(one.from_in, other.from_in), std::min(one.to_in, other.to_in)};
}

Interval extent(const model::PlanRectangle& place, PlanAxis axis) {
    return axis == PlanAxis::x ? Interval{place.x_min_in, place.x_max_in} : Interval{place.y_min_in, place.y_max_in};
}

Interval extent(const model::LowerPlate& plate, PlanAxis axis) {
    const double middle_in = model::coordinate_in(plate.center, axis);
    const double half_in = 0.5 * (axis == PlanAxis::x ? plate.width_in : plate.depth_in);
    return {middle_in - half_in, middle_in + half_in};
}

/// Which way the strip runs: an angle or a channel along itself, a plate along the bolts.
PlanAxis run_of(const CheckInput& input, const Seated& seated, const model::LowerPlate& plate) {
    if (plate.shape != model::LowerShape::plate || seated.anchors.size() < 2) return model::runs_along(plate);
    Interval x{1e9, -1e9}, y = x;
    for (const std::size_t index : seated.anchors) {
        const model::Place& at = input.resolved.anchors[index].at;
        x = {std::min(x.from_in, at.x_in), std::max(x.to_in, at.x_in)};
        y = {std::min(y.from_in, at.y_in), std::max(y.to_in, at.y_in)};
    }
    return x.to_in - x.from_in >= y.to_in - y.from_in ? PlanAxis::x : PlanAxis::y;
}

/// What does not depend on the state.
struct Contact {
    PlanAxis run = PlanAxis::x;
    Interval along;         ///< of the plate on the wood
    double width_in = 0.0;  ///< that presses, across the run
    double hole_in = 0.0;   ///< in the wood
    Adjusted wood;          ///< F_c,perp'
    double reference_psi = 0.0;
};

double at_in(const Anchor& anchor, PlanAxis axis) { return model::coordinate_in(model::in_plan(anchor.at), axis); }

Contact contact(const CheckInput& input, const Seated& seated, const model::LowerPlate& plate, double available_psi) {
    const Anchor& first = input.resolved.anchors[seated.anchors.front()];
    const model::PlanRectangle member = model::plan(model::member(input.resolved.detail.framing, seated.member));
    Contact contact;
    contact.run = run_of(input, seated, plate);
    const PlanAxis across = model::other(contact.run);
    contact.along = common(extent(plate, contact.run), extent(member, contact.run));
    const catalog::MemberMaterial& wood = catalog::wood(input.resolved, seated.member);
    contact.reference_psi = wood.grade.compression_perp_psi;
    contact.wood = adjust_compression_perp(wood.grade, input.resolved.detail.basis);
    contact.hole_in = resistance::bolt_hole_in_wood_in(first.diameter_in);
    const Interval wide = common(extent(plate, across), extent(member, across));
    double even_in = std::numeric_limits<double>::infinity();
    for (const std::size_t index : seated.anchors) {
        const double place_in = at_in(input.resolved.anchors[index], across);
        even_in = std::min({even_in, 2.0 * (place_in - wide.from_in), 2.0 * (wide.to_in - place_in)});
    }
    const double spread_in = resistance::plate_spread_in(plate.thickness_in, available_psi, contact.wood.value);
    contact.width_in = std::max(std::min(even_in, first.head_width_in + 2.0 * spread_in), 0.0);
    return contact;
}

std::vector<StripBolt> pulls(const CheckInput& input, const Seated& seated, const Contact& contact,
                             const demand::State& state) {
    std::vector<StripBolt> bolts;
    for (const std::size_t index : seated.anchors)
        bolts.push_back({at_in(input.resolved.anchors[index], contact.run), state.anchors.at(index).tension_lb});
    return bolts;
}

struct Worst {
    StripUse use;
    std::size_t state = 0;
    double pull_lb = 0.0;
};

Worst hardest(const CheckInput& input, const Seated& seated, const Contact& contact, const StripStrength& strength) {
    Worst worst;
    for (std::size_t index = 0; index < input.demand.states.size(); ++index) {
        const std::vector<StripBolt> bolts = pulls(input, seated, contact, input.demand.states[index]);
        StripUse use = best_strip(bolts, contact.along.from_in, contact.along.to_in, strength);
        if (use.ratio <= worst.use.ratio) continue;
        worst.use = std::move(use);
        worst.state = index;
        worst.pull_lb = 0.0;
        for (const StripBolt& bolt : bolts) worst.pull_lb += bolt.tension_lb;
    }
    return worst;
}

/// Everything both results rest on.
struct Case {
    Contact contact;
    Capacity moment;
    StripStrength strength;
    Worst worst;
};

CheckResult begin(const CheckInput& input, const Seated& seated, const Worst& worst) {
    CheckResult result;
    result.part = model::held_at(model::lower_plate_part(input.resolved.detail, seated.group),
                                 model::part_of(model::member(input.resolved.detail.framing, seated.member)));
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.steps = {demanded("T", phrase("pull of its bolts in this member, together"), worst.pull_lb, "lb")};
    return result;
}

CheckResult bearing(const CheckInput& input, const Seated& seated, const Case& one) {
    const Contact& contact = one.contact;
    CheckResult result = begin(input, seated, one.worst);
    result.link = link_between(part_of(input.resolved.anchors[seated.anchors.front()]),
                               model::part_of(model::member(input.resolved.detail.framing, seated.member)),
                               phrase("lower plate"));
    const bool presses = !one.worst.use.pressures.empty() && contact.width_in > 0.0;
    if (!presses && one.worst.pull_lb > 0.0) {
        nothing_resists(
            result, one.worst.pull_lb, "lb",
            phrase("The pull of the bolts does not meet wood on both sides of its line. Make the lower plate "
                   "wider or longer, or move it."));
        return result;
    }
    result.capacity = contact.wood.value;
    result.unit = "psi";
    if (!presses) {
        conclude(result);
        return result;
    }
    result.demand = one.worst.use.lb_per_in / contact.width_in;
    const StripPressure& lead =
        *std::max_element(one.worst.use.pressures.begin(), one.worst.use.pressures.end(),
                          [](const StripPressure& a, const StripPressure& b) { return a.lb_per_in < b.lb_per_in; });
    append(result.steps,
           {{"b_e", phrase("width that presses, across the line of the bolts, less the share of their holes"),
             "min(even about the bolts on the wood, nut + 2 t sqrt(F_y,a/(3 F_c,perp')))", contact.width_in, "in",
             "EN 1993-1-8 6.2.5 (from memory)"},
            {"l_e", phrase("length that presses, the easiest in balance with the bolts"), "search",
             lead.to_in - lead.from_in, "in", ""},
            {"f_c,perp", phrase("mean pressure there"), "w/b_e", result.demand, "psi", "NDS 2018 3.10.2"},
            given("F_c,perp", phrase("reference compression perpendicular to grain"), contact.reference_psi, "psi",
                  "NDS Supplement 2018")});
    append(result.steps, contact.wood.steps);
    conclude(result);
    return result;
}

CheckResult bending(const CheckInput& input, const Seated& seated, const Case& one) {
    CheckResult result = begin(input, seated, one.worst);
    if (!take_capacity(result, one.moment)) return result;
    result.demand = one.worst.use.moment_lb_in;
    result.unit = "lb in";
    result.steps.push_back({"M", phrase("largest moment between and beyond the bolts"), "statics", result.demand,
                            "lb in", "demand", Origin::demanded});
    conclude(result);
    result.note =
        phrase("The plate under this member alone. What it carries from one member to another is not counted.");
    return result;
}

Case solve(const CheckInput& input, const Seated& seated) {
    const Anchor& first = input.resolved.anchors[seated.anchors.front()];
    const model::LowerPlate& plate = first.lower.value();
    const model::Basis& basis = input.resolved.detail.basis;
    Case one;
    one.contact = contact(input, seated, plate, available_yield_psi(first.backing_metal.value(), basis));
    one.moment = lower_plate_moment(plate, one.contact.run, one.contact.hole_in, first.backing_metal.value(), basis);
    // Holes take their share evenly out of the width.
    const double length_in = one.contact.along.to_in - one.contact.along.from_in;
    const double holes_in2 = static_cast<double>(seated.anchors.size()) * 0.25 * std::numbers::pi *
                             one.contact.hole_in * one.contact.hole_in;
    if (length_in > 0.0) one.contact.width_in = std::max(one.contact.width_in - holes_in2 / length_in, 0.0);
    one.strength = {std::max(one.contact.wood.value * one.contact.width_in, nothing),
                    one.moment.value > 0.0 ? one.moment.value : std::numeric_limits<double>::infinity()};
    one.worst = hardest(input, seated, one.contact, one.strength);
    return one;
}

template <class Result>
std::vector<CheckResult> of_every_plate(const CheckInput& input, Result&& of) {
    std::vector<CheckResult> results;
    for (const Seated& seated : seated_groups(input.resolved)) {
        if (!input.resolved.anchors[seated.anchors.front()].backing_metal) continue;
        results.push_back(of(input, seated, solve(input, seated)));
    }
    return results;
}

std::vector<CheckResult> lower_plate_bearing(const CheckInput& input) { return of_every_plate(input, bearing); }
std::vector<CheckResult> lower_plate_bending(const CheckInput& input) { return of_every_plate(input, bending); }

const RegisterCheck bearing_check{
    {"lower-plate-bearing", phrase("Lower plate bearing"), "NDS 2018 3.10.2",
     phrase("A plate, angle or channel under several bolts against the underside of the wood, by its mean pressure."),
     lower_plate_bearing}};
const RegisterCheck bending_check{{"lower-plate-bending", phrase("Lower plate bending"), "AISC 360-16 F11",
                                   phrase("The same plate, angle or channel bent between and beyond its bolts."),
                                   lower_plate_bending}};

}  // namespace
}  // namespace toehold::checks
