// How far the guard's top moves under the push alone: the base turns on its bed and anchors, the framing below gives,
// the post bends. A post on a member's side bends above the member's top edge; what it does below, the demand gives as
// a turn about that edge. Neither IBC nor IRC sets a limit; ASTM E985, withdrawn in 2015, is a performance
// specification for metal railings that a contract may invoke: then its limit is checked, and otherwise a larger
// movement is a caution.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/post/overlap.h"
#include "checks/post/post_stiffness.h"
#include "checks/registry.h"
#include "demand/demand.h"
#include "demand/framing/find_framing.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::checks {
namespace {

using format::phrase;

constexpr const char* limit_clause = "ASTM E985 (h/12 read in a quotation of a maker's catalog, to be confirmed)";

/// Along the push, in, under the load without its factor.
struct Movement {
    double post_in = 0.0, play_in = 0.0, base_in = 0.0, framing_in = 0.0;
    [[nodiscard]] double total_in() const { return post_in + play_in + base_in + framing_in; }
};

bool beside(const CheckInput& input) { return kind(input.resolved.detail.mount) == model::MountKind::side_fastened; }

Movement movement(const CheckInput& input, const PostStiffness& post, std::size_t index) {
    const demand::State& state = input.demand.states[index];
    const demand::ActingLoad load = demand::acting_load(input.demand, state);
    const double load_factor = input.demand.cases.at(state.load_case).load_factor;
    const double top_in = model::lever_height_in(input.resolved.detail);
    const double push_lb = std::abs(load.push_lb) / load_factor;
    const double along_y = std::pow(std::sin(state.direction_rad), 2);
    Movement result;
    result.post_in = bent_in(post, push_lb, load.height_in, top_in, along_y);
    result.play_in = post.play_rad * top_in;
    result.base_in = std::abs(state.rotation_rad) * top_in / load_factor;
    if (input.demand.framing && !input.demand.framing->states.empty())
        result.framing_in = std::abs(input.demand.framing->states.at(index).top_in) / load_factor;
    return result;
}

/// A push and nothing else; the framing's give is added, so a state that lets it give would count it twice.
bool counts(const demand::Demand& demand, const demand::State& state) {
    const demand::ActingLoad load = demand::acting_load(demand, state);
    return load.push_lb != 0.0 && load.down_lb == 0.0 && !demand.scenarios.at(state.scenario).flexible_framing;
}

struct LargestMovement {
    Movement movement;
    std::size_t state = 0;
};

std::optional<LargestMovement> worst_movement(const CheckInput& input, const PostStiffness& post) {
    std::optional<LargestMovement> worst;
    for (std::size_t index = 0; index < input.demand.states.size(); ++index) {
        if (!counts(input.demand, input.demand.states[index])) continue;
        const Movement at = movement(input, post, index);
        if (!worst || at.total_in() > worst->movement.total_in()) worst = {at, index};
    }
    return worst;
}

void add_steps(CheckResult& result, const CheckInput& input, const PostStiffness& post, const LargestMovement& worst) {
    const demand::State& state = input.demand.states[worst.state];
    const demand::ActingLoad load = demand::acting_load(input.demand, state);
    const double load_factor = input.demand.cases.at(state.load_case).load_factor;
    const double top_in = model::lever_height_in(input.resolved.detail);
    append(result.steps,
           {demanded("P", phrase("push without its load factor"), std::abs(load.push_lb) / load_factor, "lb"),
            demanded("a",
                     beside(input) ? phrase("height of the push above the member's top edge")
                                   : phrase("height of the push above the underside of the plate"),
                     load.height_in, "in"),
            from_file("h_t",
                      beside(input) ? phrase("height of the top of the guard above the member's top edge")
                                    : phrase("height of the top of the guard above the underside of the plate"),
                      top_in, "in")});
    append(result.steps, post.steps);
    append(result.steps,
           {{"u_p", phrase("post bending, along the push"), "P a^2 (3 h_t - a)/(6 E I): P h^3/(3 E I) at the top",
             worst.movement.post_in, "in", "statics"},
            demanded("phi", phrase("rotation of the post base, softest state, under the factored load"),
                     std::abs(state.rotation_rad), "rad"),
            {"u_b", phrase("deflection from base rotation"), "phi h_t, over the load factor", worst.movement.base_in,
             "in", "demand"},
            {"u_f", phrase("deflection from framing"), "grillage", worst.movement.framing_in, "in", "demand",
             Origin::demanded}});
    const bool loose = worst.movement.play_in > 0.0;
    if (loose)
        append(result.steps, {{"u_c", phrase("movement within the play of the post in what holds it"), "phi_c h_t",
                               worst.movement.play_in, "in", "statics"}});
    append(result.steps, {{"u", phrase("deflection at top of guard"),
                           loose ? "u_p + u_b + u_f + u_c" : "u_p + u_b + u_f", worst.movement.total_in(), "in", ""},
                          from_file("h", phrase("guard height"), input.resolved.detail.guard.height_in, "in"),
                          {"u_max", phrase("deflection limit"), "h/12", result.capacity, "in", limit_clause}});
}

/// Against h/12; absent where no state counts.
std::optional<CheckResult> deflection(const CheckInput& input) {
    CheckResult result;
    result.part = {model::PartKind::guard};
    result.unit = std::string("in");
    result.capacity = input.resolved.detail.guard.height_in / 12.0;
    const std::optional<PostStiffness> post = post_stiffness(input.resolved);
    if (!post) {
        lacks_evidence(result, phrase("Post grade is not specified."));
        return result;
    }
    const std::optional<LargestMovement> worst = worst_movement(input, *post);
    if (!worst) return std::nullopt;
    result.demand = worst->movement.total_in();
    result.direction_deg = degrees(input.demand.states[worst->state].direction_rad);
    add_steps(result, input, *post, *worst);
    conclude(result);
    const format::Phrase lacks = demand::framing_lacks(input.demand);
    result.note =
        std::holds_alternative<model::WoodPost>(input.resolved.detail.post) && !beside(input) &&
                !overlap_of(input.resolved)
            ? phrase(
                  "IBC and IRC set no limit on guard deflection; this limit is from a performance specification. "
                  "Play of the post in its shoe is not included.")
            : phrase("IBC and IRC set no limit on guard deflection; this limit is from a performance specification.");
    result.note = sentences(result.note, lacks);
    if (!lacks.empty() && result.status == Status::holds) lacks_evidence(result, lacks);
    return result;
}

bool is_limited(const CheckInput& input) {
    return input.resolved.detail.basis.movement_limit == model::MovementLimit::astm_e985;
}

/// Where no limit is invoked, only a movement within it is worth a line among the checks.
std::vector<CheckResult> guard_deflection(const CheckInput& input) {
    const std::optional<CheckResult> result = deflection(input);
    if (!result || (!is_limited(input) && result->status != Status::holds)) return {};
    return {*result};
}

std::vector<Finding> guard_movement(const CheckInput& input) {
    if (is_limited(input)) return {};
    const std::optional<CheckResult> result = deflection(input);
    if (!result || result->status != Status::fails) return {};
    return {
        finding_on({model::PartKind::guard}, Severity::caution,
                   phrase("The top of the guard moves {} under the push, more than {}, a twelfth of its height. IBC "
                          "and IRC set no limit. Stiffen the base, its framing or the post; where a "
                          "specification invokes {}, the limit is checked once the file says so.",
                          format::Quantity{result->demand, "in"}, format::Quantity{result->capacity, "in"},
                          format::Citation{"ASTM E985"}))};
}

const RegisterCheck registered{{"guard-deflection", phrase("Deflection at top of guard"), limit_clause,
                                phrase("Post bending, base rotation and framing flexibility under the push alone, at "
                                       "the softest stiffness considered."),
                                guard_deflection}};
const RegisterFinding movement_rule{
    {"guard-movement", phrase("Movement at top of guard"), limit_clause, {}, {}, guard_movement}};

}  // namespace
}  // namespace toehold::checks
