// Distances of each anchor to its member's edge and end and to the other anchors in it, against the least the standard
// (or the fastener's report) allows. Distances above these but below the full ones lower the lateral value instead.
#include "checks/anchor/placement_rules.h"
#include "checks/anchor/seating.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::checks {
namespace {

using catalog::Anchor;
using catalog::FastenerKind;

/// The rule that is furthest from being met leads; every rule that applies is shown.
CheckResult against(CheckResult result, const std::vector<PlacementRule>& rules, const std::string& measured) {
    const PlacementRule& leading = hardest(rules);
    result.demand = leading.least_in;
    result.capacity = std::max(leading.actual_in, 0.0);
    result.clause = leading.clause;
    for (const PlacementRule& rule : rules)
        result.steps.push_back({"least", rule.meaning, rule.formula, rule.least_in, "in", rule.clause});
    result.steps.push_back({"actual", measured, "from the plan", result.capacity, "in", "input"});
    conclude(result);
    return result;
}

CheckResult against_report(CheckResult result, const Anchor& anchor, double least_in, double actual_in,
                           const std::string& measured) {
    const std::string clause = "report: " + anchor.reported.value().report;
    if (least_in > 0.0)
        return against(std::move(result), {{least_in, actual_in, "least the report gives", "given", clause}}, measured);
    result.capacity = std::max(actual_in, 0.0);
    result.clause = clause;
    lacks_evidence(result, "The file gives no such least distance for this fastener.");
    return result;
}

CheckResult titled(const CheckInput& input, std::size_t index, const char* title) {
    CheckResult result = anchor_result(input, index, false);
    result.title = title;
    result.unit = "in";
    return result;
}

std::vector<Neighbour> neighbours(const catalog::Resolved& resolved, std::size_t index) {
    const Anchor& anchor = resolved.anchors[index];
    const bool grain_along_x = member_of(resolved, anchor).along == model::PlanAxis::x;
    std::vector<Neighbour> found;
    for (std::size_t other = 0; other < resolved.anchors.size(); ++other) {
        const Anchor& second = resolved.anchors[other];
        if (other == index || !second.seat || second.seat->member != anchor.seat.value().member) continue;
        const double x_in = std::abs(second.at.x_in - anchor.at.x_in);
        const double y_in = std::abs(second.at.y_in - anchor.at.y_in);
        found.push_back({second.id, grain_along_x ? x_in : y_in, grain_along_x ? y_in : x_in});
    }
    return found;
}

std::string edge_measured(const model::Member& member) {
    return std::string("anchor's centre to the nearer long edge of the ") + model::name(member.kind) +
           (member.plies > 1 ? "'s piece it is in, seams counted as edges" : "");
}

double apart_in(const Neighbour& neighbour) { return std::hypot(neighbour.along_in, neighbour.across_in); }

CheckResult spacing(const CheckInput& input, std::size_t index, const PlacementLoads& loads,
                    const std::vector<Neighbour>& others) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = titled(input, index, "Spacing of the anchors");
    constexpr const char* measured = "to the neighbour that leads";
    if (anchor.kind == FastenerKind::reported) {
        const auto nearest = std::min_element(others.begin(), others.end(), [](const Neighbour& a, const Neighbour& b) {
            return apart_in(a) < apart_in(b);
        });
        return against_report(std::move(result), anchor, anchor.reported.value().minimum_spacing_in, apart_in(*nearest),
                              measured);
    }
    std::vector<std::vector<PlacementRule>> for_each;
    for_each.reserve(others.size());
    for (const Neighbour& other : others)
        for_each.push_back(spacing_rules(anchor.diameter_in, anchor.embedment_in, loads, other));
    const auto worst = std::max_element(for_each.begin(), for_each.end(), [](const auto& a, const auto& b) {
        return multiple(hardest(a)) < multiple(hardest(b));
    });
    return against(std::move(result), *worst, measured);
}

CheckResult edge(const CheckInput& input, std::size_t index, const PlacementLoads& loads,
                 const std::vector<Neighbour>& others) {
    const Anchor& anchor = input.resolved.anchors[index];
    const double edge_in = anchor.seat.value().edge_in;
    CheckResult result = titled(input, index, "Edge distance of the anchor");
    const std::string kind = kind_under(input.resolved, anchor);
    const std::string measured = edge_measured(member_of(input.resolved, anchor));
    if (anchor.kind == FastenerKind::reported)
        return against_report(std::move(result), anchor, anchor.reported.value().minimum_edge_in, edge_in, measured);
    result = against(
        std::move(result),
        edge_rules(anchor.diameter_in, anchor.embedment_in, loads, rows_apart_in(anchor.diameter_in, others), edge_in),
        measured);
    if (result.status != Status::holds)
        result.note = "A wider " + kind + ", a thinner anchor or another place of it mends this.";
    return result;
}

CheckResult end(const CheckInput& input, std::size_t index, const PlacementLoads& loads) {
    const Anchor& anchor = input.resolved.anchors[index];
    const double end_in = anchor.seat.value().end_in;
    CheckResult result = titled(input, index, "End distance of the anchor");
    const model::Member member = member_of(input.resolved, anchor);
    if (!member.length_stated) {
        lacks_evidence(result, "The file does not say where the joists end.");
        return result;
    }
    const std::string measured = std::string("anchor's centre to the nearer end of the ") + model::name(member.kind);
    if (anchor.kind == FastenerKind::reported)
        return against_report(std::move(result), anchor, anchor.reported.value().minimum_end_in, end_in, measured);
    return against(std::move(result), end_rules(anchor.diameter_in, loads, end_in), measured);
}

std::vector<CheckResult> anchor_spacing(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const Anchor& anchor = input.resolved.anchors[index];
        if (!lands(anchor)) continue;
        const PlacementLoads loads =
            placement_loads(input.demand, index, anchor, member_of(input.resolved, anchor).along);
        const std::vector<Neighbour> others = neighbours(input.resolved, index);
        results.push_back(edge(input, index, loads, others));
        results.push_back(end(input, index, loads));
        if (!others.empty()) results.push_back(spacing(input, index, loads, others));
    }
    return results;
}

const RegisterCheck registered{
    {"anchor-spacing", "Edge, end and spacing of the anchors", "NDS 2018 12.5.1",
     "Each anchor's distance to the edge and end of its block, joist or rim and to the other "
     "anchors in it, against the least allowed.",
     anchor_spacing}};

}  // namespace
}  // namespace toehold::checks
