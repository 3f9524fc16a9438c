// A wood post's moment into the plate through its shoe. No standard gives a rule for it: the allowable moment is a
// test's or an evaluation report's, and without one there is no evidence.
#include "checks/anchor/seating.h"
#include "checks/basis/wood_basis.h"
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "demand/worst.h"

namespace toehold::checks {
namespace {

CheckResult shoe(const CheckInput& input, const model::WoodPost& post) {
    const demand::Worst worst = demand::worst_state(
        input.demand, [&](const demand::State& state) { return push_moment(input.demand, state).total_lb_in; });
    const demand::State& state = input.demand.states.at(worst.state);
    CheckResult result;
    result.subject = "shoe";
    result.link = Link{"post", "shoe", "shoe"};
    result.unit = "lb in";
    result.demand = worst.value;
    result.direction_deg = degrees(state.direction_rad);
    const demand::LoadCase& load = load_case(input.demand, state);
    result.steps = {{"H", "push", "demand", load.push_lb, "lb", "demand"},
                    {"h", "height of the push above the plate's underside", "demand", load.height_in, "in", "demand"},
                    {"M", "moment at the plate", "H h", result.demand, "lb in", "demand"}};
    if (!post.shoe.allowable_moment_lb_in) {
        lacks_evidence(result, "The file gives no allowable moment of the shoe from a test or an evaluation report.");
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

const RegisterCheck registered{{"post-shoe", "Wood post held by its shoe", "evaluation report or test",
                                "The moment of a wood post through its shoe against the value a report or test gives.",
                                post_shoe}};

}  // namespace
}  // namespace toehold::checks
