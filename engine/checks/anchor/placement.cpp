// Distances of each anchor to its member's edge and end and to the other anchors in it, against the least the standard
// (or the fastener's report) allows. Distances above these but below the full ones lower the lateral value instead.
#include "catalog/anchor_view.h"
#include "checks/anchor/placement_rules.h"
#include "checks/anchor/seating.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;
using format::phrase;

/// The rule that is furthest from being met leads; every rule that applies is shown.
CheckResult against(CheckResult result, const std::vector<PlacementRule>& rules, const format::Phrase& measured) {
    const PlacementRule& leading = hardest(rules);
    result.demand = leading.least_in;
    result.capacity = std::max(leading.actual_in, 0.0);
    result.clause = leading.clause;
    for (const PlacementRule& rule : rules)
        result.steps.push_back(rule.reported
                                   ? given("least", rule.meaning, rule.least_in, "in", rule.clause)
                                   : Step{"least", rule.meaning, rule.formula, rule.least_in, "in", rule.clause});
    result.steps.push_back({"actual", measured, "from the plan", result.capacity, "in", "input", Origin::file});
    conclude(result);
    return result;
}

CheckResult against_report(CheckResult result, const Anchor& anchor, double least_in, double actual_in,
                           const format::Phrase& measured) {
    const std::string clause = "report: " + anchor.reported.value().report;
    if (least_in > 0.0)
        return against(std::move(result), {{least_in, actual_in, phrase("minimum of the report"), "", clause, true}},
                       measured);
    result.capacity = std::max(actual_in, 0.0);
    result.clause = clause;
    lacks_evidence(result, phrase("The minimum distance of this fastener is not specified. Give it, with its report."));
    return result;
}

/// Three results of one anchor: each has a title of its own, and says by its aspect which it is.
CheckResult result_for(const CheckInput& input, std::size_t index, format::Phrase title, const char* aspect) {
    CheckResult result = anchor_result(input, index, false);
    result.title = std::move(title);
    result.aspect = aspect;
    result.unit = "in";
    return result;
}

std::vector<Neighbor> neighbors(const catalog::Resolved& resolved, std::size_t index) {
    const Anchor& anchor = resolved.anchors[index];
    const bool grain_along_x = member_of(resolved, anchor).along == model::PlanAxis::x;
    std::vector<Neighbor> found;
    for (std::size_t other = 0; other < resolved.anchors.size(); ++other) {
        const Anchor& second = resolved.anchors[other];
        if (other == index || !second.seat || second.seat->member != anchor.seat.value().member) continue;
        const model::Position one = catalog::seen(anchor), two = catalog::seen(second);
        const double x_in = std::abs(two.x_in - one.x_in), y_in = std::abs(two.y_in - one.y_in);
        found.push_back({part_of(second), grain_along_x ? x_in : y_in, grain_along_x ? y_in : x_in});
    }
    return found;
}

format::Phrase edge_measured(const model::Member& member) {
    const format::Phrase name = model::part_name(model::part_of(member));
    return member.plies > 1
               ? phrase("anchor's center to the nearer long edge of its piece of {}, seams counted as edges", name)
               : phrase("anchor's center to the nearer long edge of {}", name);
}

format::Phrase edge_remedy(const Anchor& anchor, model::MemberKind kind) {
    if (catalog::lies_level(anchor)) return phrase("Use a deeper member or a smaller anchor, or move the anchor.");
    switch (kind) {
        case model::MemberKind::block:
            return phrase("Use a wider block or a smaller anchor, or move the anchor.");
        case model::MemberKind::joist:
            return phrase("Use a wider joist or a smaller anchor, or move the anchor.");
        case model::MemberKind::rim:
            break;
    }
    return phrase("Use a wider rim or a smaller anchor, or move the anchor.");
}

double apart_in(const Neighbor& neighbor) { return std::hypot(neighbor.along_in, neighbor.across_in); }

CheckResult spacing(const CheckInput& input, std::size_t index, const PlacementLoads& loads,
                    const std::vector<Neighbor>& others) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = result_for(input, index, phrase("Anchor spacing"), "spacing");
    const format::Phrase measured = phrase("to the neighbor that governs");
    if (anchor.kind == FastenerKind::reported) {
        const auto nearest = std::min_element(others.begin(), others.end(), [](const Neighbor& a, const Neighbor& b) {
            return apart_in(a) < apart_in(b);
        });
        return against_report(std::move(result), anchor, anchor.reported.value().minimum_spacing_in, apart_in(*nearest),
                              measured);
    }
    std::vector<std::vector<PlacementRule>> for_each;
    for_each.reserve(others.size());
    for (const Neighbor& other : others)
        for_each.push_back(spacing_rules(anchor.diameter_in, anchor.embedment_in, loads, other));
    const auto worst = std::max_element(for_each.begin(), for_each.end(), [](const auto& a, const auto& b) {
        return multiple(hardest(a)) < multiple(hardest(b));
    });
    return against(std::move(result), *worst, measured);
}

CheckResult edge(const CheckInput& input, std::size_t index, const PlacementLoads& loads,
                 const std::vector<Neighbor>& others) {
    const Anchor& anchor = input.resolved.anchors[index];
    const double edge_in = anchor.seat.value().edge_in;
    CheckResult result = result_for(input, index, phrase("Anchor edge distance"), "edge");
    const format::Phrase measured = edge_measured(member_of(input.resolved, anchor));
    if (anchor.kind == FastenerKind::reported)
        return against_report(std::move(result), anchor, anchor.reported.value().minimum_edge_in, edge_in, measured);
    result = against(
        std::move(result),
        edge_rules(anchor.diameter_in, anchor.embedment_in, loads, rows_apart_in(anchor.diameter_in, others), edge_in),
        measured);
    if (result.status != Status::holds) result.note = edge_remedy(anchor, member_of(input.resolved, anchor).kind);
    return result;
}

CheckResult end(const CheckInput& input, std::size_t index, const PlacementLoads& loads) {
    const Anchor& anchor = input.resolved.anchors[index];
    const double end_in = anchor.seat.value().end_in;
    CheckResult result = result_for(input, index, phrase("Anchor end distance"), "end");
    const model::Member member = member_of(input.resolved, anchor);
    if (!member.length_stated) {
        lacks_evidence(result, phrase("The ends of the joists are not specified. Give `from` and `to` of the joists."));
        return result;
    }
    const format::Phrase measured =
        phrase("anchor's center to the nearer end of {}", member_name(input.resolved, anchor));
    if (anchor.kind == FastenerKind::reported)
        return against_report(std::move(result), anchor, anchor.reported.value().minimum_end_in, end_in, measured);
    return against(std::move(result), end_rules(anchor.diameter_in, loads, end_in), measured);
}

/// On a stringer, whose grain is neither level nor upright, every force has a part along it and one across it.
PlacementLoads loads_on(const CheckInput& input, std::size_t index) {
    const Anchor& anchor = input.resolved.anchors[index];
    PlacementLoads loads = placement_loads(input.demand, index, anchor, member_of(input.resolved, anchor).along);
    if (grain_slope_rad(input.resolved, anchor) != 0.0)
        loads.along_grain = loads.across_grain = loads.along_grain || loads.across_grain;
    return loads;
}

/// To the edge, the end and the neighbors in the member of its seat.
std::vector<CheckResult> distances_of(const CheckInput& input, std::size_t index, const PlacementLoads& loads) {
    const std::vector<Neighbor> others = neighbors(input.resolved, index);
    std::vector<CheckResult> results = {edge(input, index, loads, others), end(input, index, loads)};
    if (!others.empty()) results.push_back(spacing(input, index, loads, others));
    return results;
}

/// Of anchors that go on into a member behind: in the one they cross, which has their shear and none of their pull.
void add_crossed(std::vector<CheckResult>& results, const CheckInput& whole) {
    const std::vector<Anchor>& anchors = whole.resolved.anchors;
    const auto crosses = [](const Anchor& anchor) { return anchor.crossed.has_value(); };
    if (std::none_of(anchors.begin(), anchors.end(), crosses)) return;
    const catalog::Resolved sheared = catalog::as_sheared(whole.resolved);
    const CheckInput input{sheared, whole.demand, nullptr, whole.asked};
    for (std::size_t index = 0; index < anchors.size(); ++index) {
        if (!anchors[index].crossed || !lands(sheared.anchors[index])) continue;
        PlacementLoads loads = loads_on(input, index);
        loads.withdrawal = false;
        for (CheckResult& result : distances_of(input, index, loads)) {
            result.aspect += " in the member crossed";
            results.push_back(std::move(result));
        }
    }
}

std::vector<CheckResult> anchor_spacing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (!lands(anchor)) continue;
        PlacementLoads loads = loads_on(input, index);
        if (anchor.crossed) loads.along_grain = loads.across_grain = false;
        for (CheckResult& result : distances_of(input, index, loads)) results.push_back(std::move(result));
    }
    add_crossed(results, input);
    return results;
}

const RegisterCheck registered{
    {"anchor-spacing", phrase("Anchor edge, end and spacing"), "NDS 2018 12.5.1",
     phrase("Each anchor's distance to the edge and end of its block, joist or rim and to the other anchors in it, "
            "against the minimum."),
     anchor_spacing}};

}  // namespace
}  // namespace toehold::checks
