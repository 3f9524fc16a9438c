// Boards fastened to the joists hold the joists' tops laterally. The whole load is set against the fasteners of
// the boards that cross one joist within the plate's extent: boards beyond it and other joists are not counted.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/registry.h"
#include "demand/governing_state.h"
#include "model/placement.h"
#include "resistance/wood/single_shear.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace toehold::checks {
namespace {

using format::phrase;
using model::DeckingFastening;

/// Something loaded meets a joist or a rim: an anchor stands in it, or it holds the end of a block.
bool reaches_joists(const CheckInput& input) {
    const model::Framing& framing = input.resolved.detail.framing;
    const auto long_member = [&](std::size_t member) {
        return model::member(framing, member).kind != model::MemberKind::block;
    };
    const auto& anchors = input.resolved.anchors;
    if (std::any_of(anchors.begin(), anchors.end(),
                    [&](const auto& anchor) { return anchor.seat && long_member(anchor.seat->member); }))
        return true;
    const auto& supports = input.demand.framing->supports;
    return std::any_of(supports.begin(), supports.end(), [&](const demand::MemberSupport& support) {
        return support.kind == demand::MemberSupportKind::block_end && support.holder && long_member(*support.holder);
    });
}

int crossings(const catalog::Resolved& resolved, const DeckingFastening& fastening) {
    if (!(fastening.board_width_in > 0.0)) return 1;
    const double extent_in =
        model::extent_in(on_deck(resolved.detail).plate.outline, resolved.detail.framing.joists->along);
    return std::max(1, static_cast<int>(std::floor(extent_in / fastening.board_width_in)));
}

/// G of the boards, where a member of the detail is of their species.
std::optional<double> board_gravity(const catalog::Resolved& resolved) {
    const std::string& species = on_deck(resolved).decking->species;
    if (resolved.joists->species.id == species) return resolved.joists->species.specific_gravity;
    for (const catalog::MemberMaterial& wood : resolved.blocks) {
        if (wood.species.id == species) return wood.species.specific_gravity;
    }
    if (resolved.post_species && resolved.post_species->id == species) return resolved.post_species->specific_gravity;
    return std::nullopt;
}

/// Of one fastener, with its steps; or what is missing.
struct FastenerValue {
    double value_lb = 0.0;
    std::vector<Step> steps;
    format::Phrase missing;
};

FastenerValue reported(const DeckingFastening& fastening, const model::Basis& basis) {
    if (!(fastening.lateral_lb > 0.0)) {
        return {
            0.0,
            {},
            phrase("No standard gives a lateral value for these boards. Give that of one fastener, with its report.")};
    }
    const Adjusted adjusted = reported_value(fastening.lateral_lb, "lb", basis);
    return {adjusted.value, adjusted.steps, {}};
}

FastenerValue computed(const catalog::Resolved& resolved, const DeckingFastening& fastening, double gravity) {
    resistance::WoodToWood connection;
    connection.diameter_in = fastening.diameter_in;
    connection.root_diameter_in = 0.78 * fastening.diameter_in;  // nail or screw is not said: as a screw's, from memory
    connection.length_in = fastening.length_in;
    connection.side_thickness_in = on_deck(resolved.detail).layers.decking->thickness_in;
    connection.main_thickness_in = resolved.detail.framing.joists->depth_in;
    connection.side_specific_gravity = gravity;
    connection.main_specific_gravity = resolved.joists->species.specific_gravity;
    connection.side_angle_rad = connection.main_angle_rad = 0.5 * std::numbers::pi;
    const resistance::SingleShear reference = resistance::single_shear_value(connection);
    LateralConditions conditions;
    conditions.diameter_in = fastening.diameter_in;
    const Adjusted adjusted = adjust_lateral(reference.value_lb, conditions, resolved.detail.basis);
    FastenerValue value{
        adjusted.value,
        {from_file("D", phrase("diameter, root taken as 0.78 D"), fastening.diameter_in, "in"),
         {"p", phrase("penetration into the joist"), "length less the board's thickness", reference.penetration_in,
          "in", ""},
         {"Z", phrase("reference lateral value, one fastener, mode {} governs", resistance::name(reference.mode)),
          "least of the yield modes", reference.value_lb, "lb", "NDS 2018 12.3.1"}},
        {}};
    append(value.steps, adjusted.steps);
    return value;
}

FastenerValue fastener_value(const catalog::Resolved& resolved, const DeckingFastening& fastening) {
    constexpr double thickest_in = 0.25;
    const bool wood = on_deck(resolved).decking && on_deck(resolved).decking->kind == catalog::DeckingKind::wood;
    if (!wood) return reported(fastening, resolved.detail.basis);
    if (fastening.diameter_in >= thickest_in) {
        return {
            0.0,
            {},
            phrase("Deck-board fasteners of {} and more are not covered. Give the lateral value of one fastener, with "
                   "its report.",
                   format::Quantity{thickest_in, "in"})};
    }
    const std::optional<double> gravity = board_gravity(resolved);
    return gravity ? computed(resolved, fastening, *gravity) : reported(fastening, resolved.detail.basis);
}

CheckResult boards(const CheckInput& input, const DeckingFastening& fastening) {
    const demand::GoverningState worst = demand::governing_state(
        input.demand, [&](const demand::State& state) { return input.demand.cases.at(state.load_case).push_lb; });
    const FastenerValue one = fastener_value(input.resolved, fastening);
    CheckResult result;
    result.part = {model::PartKind::boards};
    result.link = link_between({model::PartKind::joist}, result.part, phrase("deck-board fasteners"));
    if (!one.missing.empty()) {
        lacks_evidence(result, one.missing);
        return result;
    }
    const int boards = crossings(input.resolved, fastening);
    result.demand = worst.value;
    result.capacity = one.value_lb * boards * fastening.per_crossing;
    result.unit = "lb";
    result.steps = {demanded("P", phrase("whole lateral load of the load case"), worst.value, "lb")};
    append(result.steps, one.steps);
    append(result.steps, {{"Z'", phrase("adjusted lateral value, one fastener"), "", one.value_lb, "lb", ""},
                          {"n_b", phrase("boards that cross a joist within the plate's extent"), "at least one",
                           static_cast<double>(boards), "", "common practice"},
                          from_file("n", phrase("fasteners where a board crosses a joist"),
                                    static_cast<double>(fastening.per_crossing), "")});
    conclude(result);
    result.note = phrase(
        "Counts the boards over one joist beside the plate. How the boards carry the load on is not "
        "computed.");
    return result;
}

std::vector<CheckResult> deck_sideways(const CheckInput& input) {
    const auto& decking = on_deck(input.resolved.detail).layers.decking;
    const bool framed = input.demand.framing && input.resolved.detail.framing.joists && input.resolved.joists;
    if (!decking || !decking->fastening || !framed || input.demand.states.empty() || !reaches_joists(input)) return {};
    return {boards(input, *decking->fastening)};
}

const RegisterCheck registered{
    {"deck-sideways", phrase("Deck-board fasteners, lateral"), "NDS 2018 12.3",
     phrase("The whole lateral load against the fasteners of the boards that cross one joist "
            "beside the plate."),
     deck_sideways},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
