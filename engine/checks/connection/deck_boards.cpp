// Boards fastened to the joists hold the joists' tops laterally. What each joist gets is statics: the anchors in it and
// the ends of the blocks, in every state. Its screws share that force evenly over the boards from a foot below the
// outermost of those places to a foot beyond, as far as they lie evenly about the resultant. Why evenly: a fastener
// under 1/4 in yields by bending before the wood splits, and NDS 2018 11.3.6 sets the group factor of such fasteners
// to 1.0; any distribution in balance that none of them exceeds can then be reached. The joist bends flat between the
// place of the force and those screws, and no farther than its own strength allows.
//
// What no standard gives a value for (boards that are not wood, without a report) is a finding with the force on one
// fastener: a missing value is no proof that the boards do not hold.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/connection/board_pushes.h"
#include "checks/registry.h"
#include "demand/demand.h"
#include "demand/framing_demand.h"
#include "model/placement.h"
#include "resistance/wood/single_shear.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace toehold::checks {
namespace {

using format::phrase;
using format::Quantity;
using model::DeckingFastening;

constexpr double foot_in = 12.0;

/// What the boards are made of; absent: none, or not known.
const std::optional<catalog::DeckingMaterial>& board_material(const catalog::Resolved& resolved) {
    const auto* const side = std::get_if<catalog::SideFastened>(&resolved.mount);
    return side != nullptr ? side->decking : on_deck(resolved).decking;
}

/// G of the boards, where a member of the detail is of their species.
std::optional<double> board_gravity(const catalog::Resolved& resolved) {
    const std::string& species = board_material(resolved)->species;
    if (resolved.joists->species.id == species) return resolved.joists->species.specific_gravity;
    for (const catalog::MemberMaterial& wood : resolved.blocks) {
        if (wood.species.id == species) return wood.species.specific_gravity;
    }
    if (resolved.post_species && resolved.post_species->id == species) return resolved.post_species->specific_gravity;
    return std::nullopt;
}

bool boards_are_wood(const catalog::Resolved& resolved) {
    const auto& decking = board_material(resolved);
    return decking && decking->kind == catalog::DeckingKind::wood;
}

/// Of the value of one fastener; empty: nothing.
format::Phrase missing_of_value(const catalog::Resolved& resolved, const DeckingFastening& fastening) {
    constexpr double thickest_in = 0.25;
    const bool wood = boards_are_wood(resolved);
    if (wood && fastening.diameter_in >= thickest_in) {
        return phrase(
            "Deck-board fasteners of {} and more are not covered. Give the lateral value of one fastener, with "
            "its report.",
            format::Dimension{thickest_in});
    }
    if ((wood && board_gravity(resolved)) || fastening.lateral_lb > 0.0) return {};
    return phrase("No standard gives a lateral value for these boards. Give that of one fastener, with its report.");
}

Adjusted computed(const catalog::Resolved& resolved, const DeckingFastening& fastening, double gravity) {
    resistance::WoodToWood connection;
    connection.diameter_in = fastening.diameter_in;
    connection.root_diameter_in = 0.78 * fastening.diameter_in;  // nail or screw is not said: as a screw's
    connection.length_in = fastening.length_in;
    connection.side_thickness_in = model::deck_boards(resolved.detail)->thickness_in;
    connection.main_thickness_in = resolved.detail.framing.joists->depth_in;
    connection.side_specific_gravity = gravity;
    connection.main_specific_gravity = resolved.joists->species.specific_gravity;
    connection.side_angle_rad = connection.main_angle_rad = 0.5 * std::numbers::pi;
    const resistance::SingleShear reference = resistance::single_shear_value(connection);
    LateralConditions conditions;
    conditions.diameter_in = fastening.diameter_in;
    const Adjusted adjusted = adjust_lateral(reference.value_lb, conditions, resolved.detail.basis);
    Adjusted value{
        adjusted.value,
        {from_file("D", phrase("diameter, root taken as 0.78 D"), fastening.diameter_in, "in"),
         {"p", phrase("penetration into the joist"), "length less the board's thickness", reference.penetration_in,
          "in", ""},
         {"Z", phrase("reference lateral value, one fastener, mode {} governs", resistance::name(reference.mode)),
          "least of the yield modes", reference.value_lb, "lb", "NDS 2018 12.3.1"}}};
    append(value.steps, adjusted.steps);
    return value;
}

/// Of one fastener, lb, of which nothing is missing.
Adjusted fastener_value(const catalog::Resolved& resolved, const DeckingFastening& fastening) {
    const std::optional<double> gravity = boards_are_wood(resolved) ? board_gravity(resolved) : std::nullopt;
    return gravity ? computed(resolved, fastening, *gravity)
                   : reported_value(fastening.lateral_lb, "lb", resolved.detail.basis);
}

/// The boards whose fasteners share what one joist gets.
struct Reach {
    double length_in = 0.0;  ///< of joist, evenly about the resultant
    int boards = 1;
};

Reach reach(const model::Member& joist, const BoardPush& push, const DeckingFastening& fastening) {
    double from_in = push.first_in - foot_in, to_in = push.last_in + foot_in;
    if (joist.length_stated) {
        from_in = std::max(from_in, joist.from_in);
        to_in = std::min(to_in, joist.to_in);
    }
    Reach reach;
    reach.length_in = std::max(2.0 * std::min(push.middle_in - from_in, to_in - push.middle_in), 0.0);
    if (fastening.board_width_in > 0.0)
        reach.boards = std::max(1, static_cast<int>(std::floor(reach.length_in / fastening.board_width_in)));
    return reach;
}

/// The joist and the state in which one fastener carries most.
struct Worst {
    BoardPush push;
    Reach reach;
    std::size_t state = 0;
    double each_lb = 0.0;
};

/// Absent where nothing reaches a joist.
struct WorstPush {
    std::optional<Worst> at;
};

WorstPush worst_push(const CheckInput& input, const DeckingFastening& fastening) {
    const std::vector<model::Member> members = model::members(input.resolved.detail.framing);
    WorstPush worst;
    for (std::size_t state = 0; state < input.demand.states.size(); ++state) {
        for (const BoardPush& push : board_pushes(input, members, state)) {
            const Reach shared = reach(members[push.joist], push, fastening);
            const double each_lb = push.force_lb() / (shared.boards * std::max(fastening.per_crossing, 1));
            if (each_lb > 0.0 && (!worst.at || each_lb > worst.at->each_lb))
                worst.at = Worst{push, shared, state, each_lb};
        }
    }
    return worst;
}

/// Evenly spread over the reach, a force in its middle bends the joist most there: F s/8.
std::vector<Step> joist_steps(const CheckInput& input, const Worst& worst) {
    const model::Member joist = model::member(input.resolved.detail.framing, worst.push.joist);
    const double moment = 0.125 * worst.push.across_lb * worst.reach.length_in;
    const double thickness_in = model::ply_width_in(joist);
    const double modulus_in3 = joist.plies * joist.depth_in * thickness_in * thickness_in / 6.0;
    return {{"M", phrase("moment that bends the joist flat between force and screws"), "F_x s/8", moment, "lb in", ""},
            {"f_b", phrase("its stress, pieces side by side bending by themselves"), "6 M/(n d b^2)",
             moment / modulus_in3, "psi", "NDS 2018 3.3.2"}};
}

CheckResult held(const CheckInput& input, const DeckingFastening& fastening, const Worst& worst, const Adjusted& one) {
    const model::PartId joist = model::part_of(model::member(input.resolved.detail.framing, worst.push.joist));
    CheckResult result;
    result.part = {model::PartKind::boards};
    result.link = link_between(joist, result.part, phrase("deck-board fasteners"));
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.demand = worst.push.force_lb();
    result.capacity = one.value * worst.reach.boards * fastening.per_crossing;
    result.unit = "lb";
    result.steps = {
        demanded("F_x", phrase("force square to {}, its worst", model::part_name(joist)), worst.push.across_lb, "lb"),
        demanded("F_y", phrase("force along it"), worst.push.along_lb, "lb"),
        {"F", phrase("both together"), "sqrt(F_x^2 + F_y^2)", result.demand, "lb", ""}};
    append(result.steps, one.steps);
    append(result.steps, {{"Z'", phrase("adjusted lateral value, one fastener"), "", one.value, "lb", ""},
                          {"s", phrase("length of joist whose boards share the force"),
                           "a foot beyond the outermost places, on the joist, evenly about the resultant",
                           worst.reach.length_in, "in", "common practice"},
                          {"n_b", phrase("boards in that length"), "s over a board's width, at least one",
                           static_cast<double>(worst.reach.boards), "", ""},
                          from_file("n", phrase("fasteners where a board crosses a joist"),
                                    static_cast<double>(fastening.per_crossing), ""),
                          {"R'", phrase("all of them, sharing evenly"), "Z' n n_b, C_g = 1.0 below 1/4 in",
                           result.capacity, "lb", "NDS 2018 11.3.6"}});
    append(result.steps, joist_steps(input, worst));
    conclude(result);
    result.note = phrase("How the boards carry the force on through the deck is not computed.");
    return result;
}

/// Of a post on a member's side they are counted where the file says so.
bool boards_count(const model::BaseDetail& detail) {
    const auto* const side = std::get_if<model::SideFastened>(&detail.mount);
    return side == nullptr || side->boards_brace_member;
}

/// Of the boards to the joists; null where no boards are fastened or no forces on the framing are known.
const DeckingFastening* loaded_fastening(const CheckInput& input) {
    if (!boards_count(input.resolved.detail)) return nullptr;
    const model::Decking* const decking = model::deck_boards(input.resolved.detail);
    const auto& framing = input.demand.framing;
    if (decking == nullptr || !decking->fastening || !framing || framing->states.size() != input.demand.states.size())
        return nullptr;
    if (!input.resolved.detail.framing.joists || !input.resolved.joists) return nullptr;
    return &*decking->fastening;
}

/// Absent where nothing reaches a joist. Looks at every state at the first asking.
std::optional<Worst> worst_on(const CheckInput& input, const DeckingFastening& fastening) {
    return input.once<WorstPush>([&] { return worst_push(input, fastening); })->at;
}

std::vector<CheckResult> deck_sideways(const CheckInput& input) {
    const DeckingFastening* const fastening = loaded_fastening(input);
    if (fastening == nullptr || !missing_of_value(input.resolved, *fastening).empty()) return {};
    const std::optional<Worst> worst = worst_on(input, *fastening);
    if (!worst) return {};
    return {held(input, *fastening, *worst, fastener_value(input.resolved, *fastening))};
}

std::vector<Finding> value_not_given(const CheckInput& input) {
    const DeckingFastening* const fastening = loaded_fastening(input);
    if (fastening == nullptr) return {};
    const format::Phrase missing = missing_of_value(input.resolved, *fastening);
    if (missing.empty()) return {};
    const std::optional<Worst> worst = worst_on(input, *fastening);
    if (!worst) return {};
    return {finding_on(
        {model::PartKind::boards}, Severity::caution,
        phrase("The boards hold the tops of the joists sideways, which is not checked: {} By statics one "
               "of their fasteners carries {} at most, where {} boards share {}.",
               missing, Quantity{worst->each_lb, "lb"}, worst->reach.boards, Quantity{worst->push.force_lb(), "lb"}))};
}

const RegisterCheck registered{
    {"deck-sideways", phrase("Deck-board fasteners, lateral"), "NDS 2018 12.3",
     phrase("What the anchors and block ends put on one joist sideways and along it against the fasteners of the "
            "boards a foot beyond on either side."),
     deck_sideways}};
const RegisterFinding missing_value{{"deck-boards-lateral",
                                     phrase("Deck-board fasteners without a lateral value"),
                                     "common practice",
                                     {},
                                     {},
                                     value_not_given}};

}  // namespace
}  // namespace toehold::checks
