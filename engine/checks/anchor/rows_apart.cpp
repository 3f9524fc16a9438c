// Rows of fasteners that one rigid piece of steel holds apart across the grain: the wood between them shrinks, the
// steel does not, and the wood splits. NDS 2018 12.5.1.3 allows 5 in between the outermost rows in sawn lumber unless
// the steel is detailed for the shrinkage (from memory, to be confirmed).
//   - It is asked of what 12.5.1 is about, fasteners of 1/4 in and more: of the anchors in one member through the
//     mount's metal, and of each angle at a member's end, whose line stands upright, across the grain of both legs'
//     wood.
//   - The distance is measured across the grain between the outermost fasteners, whatever their row.
//   - The clause makes no exception for lumber that is dry when built, and none is made here. A glued member is held to
//     the same 5 in, which is on the safe side.
#include "catalog/anchor_view.h"
#include "catalog/fastened.h"
#include "checks/anchor/anchors_in_member.h"
#include "checks/anchor/seating.h"
#include "checks/connection/connection.h"
#include "model/placement.h"
#include "resistance/wood/fastener_placement.h"

#include <algorithm>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

bool detailed(const CheckInput& input) { return input.resolved.detail.basis.shrinkage_detailed.value_or(false); }

CheckResult against_limit(CheckResult result, double apart_in) {
    result.unit = "in";
    result.demand = apart_in;
    result.capacity = resistance::rows_on_one_plate_in();
    result.steps = {{"actual", phrase("outermost fasteners, distance across the grain"), "from the plan", apart_in,
                     "in", "input", Origin::file},
                    given("most", phrase("maximum on one piece of steel"), result.capacity, "in", "NDS 2018 12.5.1.3")};
    conclude(result);
    if (result.status != Status::holds)
        result.note = phrase(
            "The wood shrinks between the rows and the steel does not. Bring the rows closer, use two "
            "pieces of steel, or slot its holes across the grain and state `shrinkage-detailed`.");
    return result;
}

struct Spread {
    double from_in = 0.0, to_in = 0.0;
    bool any = false;
};

/// Across the grain, of the member's anchors.
Spread spread_of(const CheckInput& input, std::size_t member, model::PlanAxis across) {
    Spread spread;
    for (const catalog::Anchor& anchor : input.resolved.anchors) {
        const bool thick = anchor.diameter_in >= resistance::least_tabulated_diameter_in();
        if (!thick || !stands_in(anchor, member)) continue;
        if (catalog::fastened_by(input.resolved, anchor).side.wood) continue;  // a wood post is no piece of steel
        const double at_in = model::coordinate_in(catalog::seen(anchor), across);
        spread.from_in = spread.any ? std::min(spread.from_in, at_in) : at_in;
        spread.to_in = spread.any ? std::max(spread.to_in, at_in) : at_in;
        spread.any = true;
    }
    return spread;
}

std::vector<CheckResult> of_anchors(const CheckInput& input) {
    std::vector<CheckResult> results;
    const std::vector<model::Member> members = model::members(input.resolved.detail.framing);
    for (std::size_t index = 0; index < members.size(); ++index) {
        const Spread spread = spread_of(input, index, model::other(members[index].along));
        if (spread.to_in - spread.from_in < resistance::least_tabulated_diameter_in()) continue;  // one row
        CheckResult result;
        result.part = model::part_of(members[index]);
        results.push_back(against_limit(std::move(result), spread.to_in - spread.from_in));
    }
    return results;
}

std::vector<CheckResult> of_angles(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const EndPlace& place : end_places(input)) {
        const auto* const angles = std::get_if<model::SideAngles>(&place.support->connection);
        if (angles == nullptr || angles->per_leg < 2) continue;
        if (angles->diameter_in < resistance::least_tabulated_diameter_in()) continue;
        CheckResult result;
        result.part = place.part;
        results.push_back(against_limit(std::move(result), angles->spacing_in * (angles->per_leg - 1)));
    }
    return results;
}

std::vector<CheckResult> rows_apart(const CheckInput& input) {
    if (detailed(input)) return {};
    std::vector<CheckResult> results = of_anchors(input);
    for (CheckResult& result : of_angles(input)) results.push_back(std::move(result));
    return results;
}

const RegisterCheck registered{
    {"fastener-rows-apart", phrase("Fastener rows across the grain"), "NDS 2018 12.5.1.3",
     phrase("The distance across the grain over which one piece of steel holds fasteners apart, against 5 in."),
     rows_apart}};

}  // namespace
}  // namespace toehold::checks
