// The couple a reviewer works out by hand beside what the model finds, for comparison: no verdict rests on it. The push
// over the lever from the lower end of the contact to the highest fasteners, at the design push and at the push of a
// load test.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "demand/demand.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;
using format::Quantity;

constexpr double code_push_lb = 200.0;

/// What the fasteners at the highest place carry together in one state, ties included.
double upper_pull_lb(const CheckInput& input, const demand::State& state) {
    const model::SideFastened& mount = on_side(input.resolved.detail);
    constexpr double one_row_in = 0.25;
    double highest_in = -model::beyond_any_plate_in;
    for (const catalog::Anchor& anchor : input.resolved.anchors) highest_in = std::max(highest_in, anchor.at.z_in);
    for (const model::TensionTie& tie : mount.ties) highest_in = std::max(highest_in, -tie.below_top_in);
    double sum_lb = 0.0;
    for (std::size_t i = 0; i < input.resolved.anchors.size(); ++i) {
        const catalog::Anchor& anchor = input.resolved.anchors[i];
        if (catalog::pulls_on_member(anchor) && std::abs(anchor.at.z_in - highest_in) < one_row_in)
            sum_lb += state.anchors.at(i).tension_lb;
    }
    for (std::size_t i = 0; i < mount.ties.size() && i < state.ties_lb.size(); ++i) {
        if (std::abs(-mount.ties[i].below_top_in - highest_in) < one_row_in) sum_lb += state.ties_lb[i];
    }
    return sum_lb;
}

std::vector<Finding> hand_couple(const CheckInput& input) {
    if (!input.demand.side || input.demand.states.empty()) return {};
    const demand::HandCouple& hand = input.demand.side->about_bottom;
    if (!(hand.arm_in > 0.0) || !std::isfinite(hand.tension_lb) || !(hand.push_lb > 0.0)) return {};
    double found_lb = 0.0;
    for (const demand::State& state : input.demand.states) found_lb = std::max(found_lb, upper_pull_lb(input, state));
    const double test_push_lb = demand::proof_factor * code_push_lb;
    const double each_lb = hand.height_in / hand.arm_in;
    return {finding_on({model::PartKind::push}, Severity::caution,
                       phrase("By hand, as a comparison: {} at {} above the lower end of the contact, over {} to the "
                              "highest fasteners, is {} in them together; the model finds at most {}. A load test's "
                              "push of {} would be {}.",
                              Quantity{hand.push_lb, "lb"}, Quantity{hand.height_in, "in"}, Quantity{hand.arm_in, "in"},
                              Quantity{hand.tension_lb, "lb"}, Quantity{found_lb, "lb"}, Quantity{test_push_lb, "lb"},
                              Quantity{test_push_lb * each_lb, "lb"}))};
}

const RegisterFinding rule{{"side-hand-couple", phrase("Couple by hand"), "statics", {}, {}, hand_couple},
                           {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
