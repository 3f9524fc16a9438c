// Distances of each anchor in a wood post it is driven through: to the post's sides, to its lower end and to the other
// anchors, against the least of NDS 2018 12.5.1. The post's grain stands upright. It holds the anchor's head, not its
// thread, so the rules for withdrawal are not of it. A reported fastener keeps the least distances of its report.
#include "catalog/fastened.h"
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

/// What one distance is held to.
struct PostDistance {
    format::Phrase title, measured;
    const char* aspect = "";
    std::vector<PlacementRule> rules = {};
    double reported_in = 0.0, actual_in = 0.0;
};

CheckResult against_report(CheckResult result, const Anchor& anchor, const PostDistance& distance) {
    result.clause = "report: " + anchor.reported.value().report;
    result.capacity = std::max(distance.actual_in, 0.0);
    result.demand = distance.reported_in;
    if (!(distance.reported_in > 0.0)) {
        lacks_evidence(result,
                       phrase("The minimum distance of this fastener is not specified. Give it, with its report."));
        return result;
    }
    result.steps = {given("least", phrase("minimum of the report"), result.demand, "in", result.clause)};
    return result;
}

CheckResult result_of(const CheckInput& input, std::size_t index, const PostDistance& distance) {
    const Anchor& anchor = input.resolved.anchors[index];
    CheckResult result = anchor_result(input, index, false);
    result.title = distance.title;
    result.aspect = distance.aspect;
    result.unit = "in";
    if (anchor.kind == FastenerKind::reported) {
        result = against_report(std::move(result), anchor, distance);
        if (result.status == Status::missing_evidence) return result;
    } else {
        const PlacementRule& leading = hardest(distance.rules);
        result.demand = leading.least_in;
        result.capacity = std::max(leading.actual_in, 0.0);
        result.clause = leading.clause;
        for (const PlacementRule& rule : distance.rules)
            result.steps.push_back({"least", rule.meaning, rule.formula, rule.least_in, "in", rule.clause});
    }
    result.steps.push_back(
        {"actual", distance.measured, "from the elevation", result.capacity, "in", "input", Origin::file});
    conclude(result);
    return result;
}

std::vector<Neighbor> others_in_post(const catalog::Resolved& resolved, std::size_t index) {
    const Anchor& anchor = resolved.anchors[index];
    std::vector<Neighbor> found;
    for (std::size_t other = 0; other < resolved.anchors.size(); ++other) {
        if (other == index) continue;
        const Anchor& second = resolved.anchors[other];
        found.push_back(
            {part_of(second), std::abs(second.at.z_in - anchor.at.z_in), std::abs(second.at.x_in - anchor.at.x_in)});
    }
    return found;
}

double apart_from_in(const Neighbor& neighbor) { return std::hypot(neighbor.along_in, neighbor.across_in); }

PostDistance spacing(const Anchor& anchor, const catalog::SideMember& post, const PlacementLoads& loads,
                     const std::vector<Neighbor>& others) {
    PostDistance distance{phrase("Anchor spacing in the post"), phrase("to the neighbor that governs"), "spacing"};
    const auto nearest = std::min_element(others.begin(), others.end(), [](const Neighbor& a, const Neighbor& b) {
        return apart_from_in(a) < apart_from_in(b);
    });
    distance.actual_in = apart_from_in(*nearest);
    if (anchor.reported) distance.reported_in = anchor.reported->minimum_spacing_in;
    for (const Neighbor& other : others) {
        std::vector<PlacementRule> rules = spacing_rules(anchor.diameter_in, post.thickness_in, loads, other);
        if (distance.rules.empty() || multiple(hardest(rules)) > multiple(hardest(distance.rules)))
            distance.rules = std::move(rules);
    }
    return distance;
}

std::vector<PostDistance> distances(const CheckInput& input, std::size_t index, const catalog::SideMember& post) {
    const Anchor& anchor = input.resolved.anchors[index];
    PlacementLoads loads = placement_loads(input.demand, index, anchor, model::PlanAxis::y);
    loads.withdrawal = false;
    const std::vector<Neighbor> others = others_in_post(input.resolved, index);
    const double edge_in = 0.5 * post.width_x_in - std::abs(anchor.at.x_in);
    const double end_in = on_side(input.resolved.detail).post_bottom_below_top_in + anchor.at.z_in;
    PostDistance edge{phrase("Anchor edge distance in the post"), phrase("anchor's center to the post's nearer side"),
                      "edge"};
    edge.rules =
        edge_rules(anchor.diameter_in, post.thickness_in, loads, rows_apart_in(anchor.diameter_in, others), edge_in);
    edge.actual_in = edge_in;
    PostDistance end{phrase("Anchor end distance in the post"), phrase("anchor's center to the post's lower end"),
                     "end"};
    end.rules = end_rules(anchor.diameter_in, loads, end_in);
    end.actual_in = end_in;
    if (anchor.reported) {
        edge.reported_in = anchor.reported->minimum_edge_in;
        end.reported_in = anchor.reported->minimum_end_in;
    }
    std::vector<PostDistance> all{std::move(edge), std::move(end)};
    if (!others.empty()) all.push_back(spacing(anchor, post, loads, others));
    return all;
}

std::vector<CheckResult> post_anchor_spacing(const CheckInput& input) {
    std::vector<CheckResult> results;
    if (input.demand.states.empty()) return results;
    for (std::size_t index = 0; index < input.resolved.anchors.size(); ++index) {
        const catalog::SideMember post = catalog::fastened_by(input.resolved, input.resolved.anchors[index]).side;
        if (!post.wood) continue;
        for (const PostDistance& distance : distances(input, index, post))
            results.push_back(result_of(input, index, distance));
    }
    return results;
}

const RegisterCheck registered{
    {"side-post-spacing", phrase("Anchor edge, end and spacing in the post"), "NDS 2018 12.5.1",
     phrase("Each anchor's distance to the sides and the lower end of a wood post and to the other anchors in it, "
            "against the minimum."),
     post_anchor_spacing},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
