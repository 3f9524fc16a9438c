// A wood post's moment into the plate through its shoe. No standard gives a rule for it: the allowable moment is a
// test's or an evaluation report's, and without one there is no evidence.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "demand/governing_state.h"

namespace toehold::checks {
namespace {

using format::phrase;

CheckResult shoe(const CheckInput& input, const model::WoodPost& post) {
    const demand::GoverningState worst = demand::governing_state(
        input.demand, [&](const demand::State& state) { return push_moment(input.demand, state).total_lb_in; });
    const demand::State& state = input.demand.states.at(worst.state);
    CheckResult result;
    result.part = {model::PartKind::shoe};
    result.link = link_between({model::PartKind::post}, {model::PartKind::shoe}, phrase("shoe"));
    result.unit = "lb in";
    result.demand = worst.value;
    result.direction_deg = degrees(state.direction_rad);
    const demand::LoadCase& load = load_case(input.demand, state);
    result.steps = {demanded("H", phrase("push"), load.push_lb, "lb"),
                    demanded("h", phrase("height of the push above the underside of the plate"), load.height_in, "in"),
                    {"M", phrase("moment at the plate"), "H h", result.demand, "lb in", "demand"}};
    if (!post.shoe.allowable_moment_lb_in) {
        lacks_evidence(
            result,
            phrase("Allowable moment of the shoe is not specified. Give it from a test or an evaluation report."));
        return result;
    }
    const Adjusted allowable = reported_value(*post.shoe.allowable_moment_lb_in, "lb in", input.resolved.detail.basis);
    append(result.steps, allowable.steps);
    result.capacity = allowable.value;
    if (!post.shoe.moment_source.empty()) result.clause = "report: " + post.shoe.moment_source;
    conclude(result);
    return result;
}

std::vector<CheckResult> post_shoe(const CheckInput& input) {
    const auto* post = std::get_if<model::WoodPost>(&input.resolved.detail.post);
    if (!post) return {};
    return {shoe(input, *post)};
}

const RegisterCheck registered{
    {"post-shoe", phrase("Wood post shoe, moment"), "evaluation report or test",
     phrase("Moment of a wood post through its shoe against the value from a report or a test."), post_shoe},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
