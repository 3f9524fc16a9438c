// Packing through the boards: a solid piece between the plate and the framing. Each piece presses evenly, since it is
// short and stiff beside the wood below it.
//   - The piece itself: wood across the grain (NDS 2018 3.10.2), metal by its catalog's allowable bearing.
//   - The block, joist or rim below, across the grain, with the bearing area factor Cb (3.10.4) of the piece's length
//     along the grain.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/registry.h"
#include "demand/demand.h"
#include "demand/plate_on_deck/packing.h"
#include "model/placement.h"
#include "resistance/wood/member_factors.h"

#include <algorithm>
#include <optional>

namespace toehold::checks {
namespace {

using format::phrase;

/// A piece over one member, in the state in which it presses most.
struct Pressed {
    std::size_t support = 0;  ///< number in the demand's supports
    std::size_t state = 0;
    double force_lb = 0.0;
    model::PlanRectangle covers;
    double area_in2 = 0.0;  ///< net of the anchor's hole
};

model::PlanRectangle around(const std::vector<model::Position>& outline) {
    model::PlanRectangle box{{}, outline.at(0).x_in, outline.at(0).x_in, outline.at(0).y_in, outline.at(0).y_in};
    for (const model::Position corner : outline) {
        box.x_min_in = std::min(box.x_min_in, corner.x_in);
        box.x_max_in = std::max(box.x_max_in, corner.x_in);
        box.y_min_in = std::min(box.y_min_in, corner.y_in);
        box.y_max_in = std::max(box.y_max_in, corner.y_in);
    }
    return box;
}

/// Share of the piece that is not hole.
double solid_share(const std::vector<demand::PackingPiece>& pieces, const model::PlanRectangle& covers) {
    const model::Position middle{0.5 * (covers.x_min_in + covers.x_max_in), 0.5 * (covers.y_min_in + covers.y_max_in)};
    for (const demand::PackingPiece& piece : pieces) {
        if (model::contains(piece.covers, middle)) return piece.solid;
    }
    return 1.0;
}

std::vector<Pressed> pressed_pieces(const CheckInput& input) {
    std::vector<Pressed> all;
    const std::vector<demand::PackingPiece> pieces = demand::packing_pieces(input.resolved);
    for (std::size_t index = 0; index < input.demand.supports.size(); ++index) {
        const demand::Support& support = input.demand.supports[index];
        if (!support.packing || support.outline.empty()) continue;
        Pressed pressed;
        pressed.support = index;
        for (std::size_t state = 0; state < input.demand.states.size(); ++state) {
            const double force_lb = input.demand.states[state].supports.at(index).force_lb;
            if (force_lb > pressed.force_lb) {
                pressed.force_lb = force_lb;
                pressed.state = state;
            }
        }
        pressed.covers = around(support.outline);
        pressed.area_in2 = (pressed.covers.x_max_in - pressed.covers.x_min_in) *
                           (pressed.covers.y_max_in - pressed.covers.y_min_in) * solid_share(pieces, pressed.covers);
        if (pressed.area_in2 > 0.0) all.push_back(pressed);
    }
    return all;
}

double pressure_psi(const Pressed& pressed) { return pressed.force_lb / pressed.area_in2; }

void begin(CheckResult& result, const CheckInput& input, const Pressed& pressed) {
    result.demand = pressure_psi(pressed);
    result.unit = "psi";
    result.direction_deg = degrees(input.demand.states.at(pressed.state).direction_rad);
    result.steps = {
        demanded("R", phrase("largest force on one piece of packing"), pressed.force_lb, "lb"),
        {"A", phrase("its area on the wood, net of the anchor's hole"), "area less hole", pressed.area_in2, "in2", ""},
        {"f", phrase("pressure, even over the piece"), "R/A", result.demand, "psi", "NDS 2018 3.10.2"}};
}

CheckResult on_itself(const CheckInput& input, const Pressed& pressed) {
    const catalog::DeckingMaterial& material = on_deck(input.resolved).packing.value();
    CheckResult result;
    result.part = {model::PartKind::packing};
    begin(result, input, pressed);
    result.link = link_between({model::PartKind::plate}, result.part, phrase("bearing"));
    if (!material.may_bear || !(material.bearing_psi > 0.0)) {
        lacks_evidence(result, phrase("No allowable bearing of a plate on {} is known. Use packing of wood or metal.",
                                      material.name));
        return result;
    }
    const bool wood = material.kind == catalog::DeckingKind::wood;
    const Adjusted adjusted = wood ? adjust_compression_perp(material.bearing_psi, input.resolved.detail.basis)
                                   : reported_value(material.bearing_psi, "psi", input.resolved.detail.basis);
    result.steps.push_back(given(wood ? "F_c,perp" : "F_b,a", phrase("bearing of {}, before factors", material.name),
                                 material.bearing_psi, "psi", "decking catalog"));
    append(result.steps, adjusted.steps);
    result.capacity = adjusted.value;
    conclude(result);
    if (wood) result.note = phrase("The packing's grain is taken to lie flat.");
    return result;
}

/// Cb of the piece's length along the grain; 1 within 3 in of the member's end and where that is not known.
double area_factor(const model::Member& member, const model::PlanRectangle& covers) {
    const bool along_x = member.along == model::PlanAxis::x;
    const double from_in = along_x ? covers.x_min_in : covers.y_min_in,
                 to_in = along_x ? covers.x_max_in : covers.y_max_in;
    if (!member.length_stated) return 1.0;
    constexpr double shortest_in = 0.5;  // the table's first row
    return resistance::bearing_area_factor(std::max(to_in - from_in, shortest_in),
                                           std::min(from_in - member.from_in, member.to_in - to_in));
}

CheckResult on_member(const CheckInput& input, const Pressed& pressed) {
    const demand::Support& support = input.demand.supports[pressed.support];
    const model::Member member = model::member(input.resolved.detail.framing, support.member);
    const catalog::MemberMaterial& wood = catalog::wood(input.resolved, support.member);
    const Adjusted adjusted = adjust_compression_perp(wood.grade, input.resolved.detail.basis);
    const double factor = area_factor(member, pressed.covers);
    CheckResult result;
    result.part = support.part;
    begin(result, input, pressed);
    result.link = link_between({model::PartKind::packing}, result.part, phrase("bearing"));
    result.steps.push_back(given(
        "F_c,perp", phrase("reference compression perpendicular to grain, {} {}", wood.species.name, wood.grade.name),
        wood.grade.compression_perp_psi, "psi", wood.grade.source.text));
    append(result.steps, adjusted.steps);
    result.steps.push_back({"C_b", phrase("bearing area factor"),
                            "(l_b + 3/8)/l_b below 6 in and 3 in or more from the end, else 1", factor, "",
                            "NDS 2018 3.10.4"});
    result.capacity = factor * adjusted.value;
    result.steps.push_back(
        {"F_c,perp'", phrase("allowable pressure"), "F_c,perp times every factor", result.capacity, "psi", ""});
    conclude(result);
    return result;
}

std::vector<CheckResult> bearing_packing(const CheckInput& input) {
    if (!on_deck(input.resolved).packing) return {};
    std::optional<Pressed> worst;
    for (const Pressed& pressed : pressed_pieces(input)) {
        if (!worst || pressure_psi(pressed) > pressure_psi(*worst)) worst = pressed;
    }
    if (!worst) return {};
    return {on_itself(input, *worst)};
}

/// The worst piece on each member.
std::vector<CheckResult> packing_seat(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const Pressed& pressed : pressed_pieces(input)) {
        CheckResult one = on_member(input, pressed);
        const auto same = std::find_if(results.begin(), results.end(),
                                       [&](const CheckResult& other) { return other.part == one.part; });
        if (same == results.end()) {
            results.push_back(std::move(one));
        } else if (one.ratio > same->ratio) {
            *same = std::move(one);
        }
    }
    return results;
}

const RegisterCheck itself{
    {"bearing-packing", phrase("Plate bearing on packing"), "NDS 2018 3.10.2",
     phrase("The largest force on a piece of packing against the packing's own strength."), bearing_packing},
    {model::MountKind::plate_on_deck}};
const RegisterCheck seat{
    {"packing-seat", phrase("Packing bearing on the framing"), "NDS 2018 3.10.2",
     phrase("The largest force on a piece of packing against the wood of the block, joist or rim below it."),
     packing_seat},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
