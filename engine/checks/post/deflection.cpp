// How far the guard's top moves under the push alone: the base turns on its bed and anchors, the framing below gives,
// the post bends. Neither IBC nor IRC sets a limit; ASTM E985, withdrawn in 2015, is a performance specification for
// metal railings that a contract may invoke: then its limit is checked, and otherwise a larger movement is a caution.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "demand/demand.h"
#include "resistance/steel/tube.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toehold::checks {
namespace {

using format::phrase;

constexpr const char* limit_clause = "ASTM E985 (h/12 read in a quotation of a maker's catalogue, to be confirmed)";

/// E I of the post, lb in2, for a push along y (bent about x) and along x.
struct PostStiffness {
    double about_x_lb_in2 = 0.0, about_y_lb_in2 = 0.0;
    std::vector<Step> steps;
};

PostStiffness tube_stiffness(const catalog::Resolved& resolved) {
    // Steel with its design wall and rounded corners, the lesser section; aluminum as drawn.
    const resistance::steel::TubeShape tube = post_foot(resolved.detail.post).tube;
    const resistance::steel::TubeSection section = resolved.post_metal.kind == catalog::MetalKind::aluminum
                                                       ? resistance::steel::section_as_drawn(tube)
                                                       : resistance::steel::design_section(tube);
    const double modulus_psi = resolved.post_metal.modulus_psi;
    return {modulus_psi * section.inertia_x_in4,
            modulus_psi * section.inertia_y_in4,
            {{"E", phrase("modulus of elasticity of the post"), resolved.post_metal.name, modulus_psi, "psi", "input",
              Origin::file},
             {"I_x", phrase("moment of inertia about x"), "of the tube", section.inertia_x_in4, "in4", ""},
             {"I_y", phrase("moment of inertia about y"), "of the tube", section.inertia_y_in4, "in4", ""}}};
}

PostStiffness wood_stiffness(const model::WoodPost& post, const catalog::LumberGrade& grade,
                             const model::Basis& basis) {
    const Adjusted modulus = adjust_modulus(grade, basis);
    const double about_x_in4 = post.width_in * std::pow(post.depth_in, 3) / 12.0;
    const double about_y_in4 = post.depth_in * std::pow(post.width_in, 3) / 12.0;
    PostStiffness result{modulus.value * about_x_in4, modulus.value * about_y_in4, {}};
    result.steps = {given("E", phrase("reference modulus of elasticity"), grade.modulus_psi, "psi", grade.source.text)};
    append(result.steps, modulus.steps);
    append(result.steps, {{"E'", phrase("adjusted modulus of elasticity"), "E and every factor", modulus.value, "psi",
                           "NDS 2018 Table 4.3.1"},
                          {"I_x", phrase("moment of inertia about x"), "b d^3/12", about_x_in4, "in4", ""},
                          {"I_y", phrase("moment of inertia about y"), "d b^3/12", about_y_in4, "in4", ""}});
    return result;
}

/// Absent: a wood post of no known grade.
std::optional<PostStiffness> post_stiffness(const catalog::Resolved& resolved) {
    const auto* post = std::get_if<model::WoodPost>(&resolved.detail.post);
    if (post == nullptr) return tube_stiffness(resolved);
    if (!resolved.post_grade) return std::nullopt;
    return wood_stiffness(*post, *resolved.post_grade, resolved.detail.basis);
}

/// At `top_in` of a cantilever of this E I, for a force at `load_in`, both from its foot.
double cantilever_in(double force_lb, double load_in, double top_in, double stiffness_lb_in2) {
    const double lower_in = std::min(load_in, top_in);
    const double upper_in = std::max(load_in, top_in);
    return force_lb * lower_in * lower_in * (3.0 * upper_in - lower_in) / (6.0 * stiffness_lb_in2);
}

/// Along the push, in, under the load without its factor.
struct Movement {
    double post_in = 0.0, base_in = 0.0, framing_in = 0.0;
    [[nodiscard]] double total_in() const { return post_in + base_in + framing_in; }
};

Movement movement(const CheckInput& input, const PostStiffness& post, std::size_t index) {
    const demand::State& state = input.demand.states[index];
    const demand::LoadCase& load = load_case(input.demand, state);
    const double top_in = model::lever_height_in(input.resolved.detail);
    const double push_lb = std::abs(load.push_lb) / load.load_factor;
    const double along_y = std::pow(std::sin(state.direction_rad), 2);
    const auto bent = [&](double stiffness) { return cantilever_in(push_lb, load.height_in, top_in, stiffness); };
    Movement result;
    result.post_in = along_y * bent(post.about_x_lb_in2) + (1.0 - along_y) * bent(post.about_y_lb_in2);
    result.base_in = std::abs(state.rotation_rad) * top_in / load.load_factor;
    if (input.demand.framing && !input.demand.framing->states.empty())
        result.framing_in = std::abs(input.demand.framing->states.at(index).top_in) / load.load_factor;
    return result;
}

/// A push and nothing else; the framing's give is added, so a state that lets it give would count it twice.
bool counts(const demand::Demand& demand, const demand::State& state) {
    const demand::LoadCase& load = load_case(demand, state);
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
    const demand::LoadCase& load = load_case(input.demand, state);
    const double top_in = model::lever_height_in(input.resolved.detail);
    append(result.steps,
           {demanded("P", phrase("push without its load factor"), std::abs(load.push_lb) / load.load_factor, "lb"),
            demanded("a", phrase("height of the push above the underside of the plate"), load.height_in, "in"),
            from_file("h_t", phrase("height of the top of the guard above the underside of the plate"), top_in, "in")});
    append(result.steps, post.steps);
    append(result.steps,
           {{"u_p", phrase("post bending, along the push"), "P a^2 (3 h_t - a)/(6 E I): P h^3/(3 E I) at the top",
             worst.movement.post_in, "in", "statics"},
            demanded("phi", phrase("rotation of the post base, softest state, under the factored load"),
                     std::abs(state.rotation_rad), "rad"),
            {"u_b", phrase("deflection from base rotation"), "phi h_t, over the load factor", worst.movement.base_in,
             "in", "demand"},
            {"u_f", phrase("deflection from framing"), "grillage", worst.movement.framing_in, "in", "demand",
             Origin::demanded},
            {"u", phrase("deflection at top of guard"), "u_p + u_b + u_f", worst.movement.total_in(), "in", ""},
            from_file("h", phrase("guard height"), input.resolved.detail.guard.height_in, "in"),
            {"u_max", phrase("deflection limit"), "h/12", result.capacity, "in", limit_clause}});
}

/// Why the framing's part is not whole; empty where it is.
format::Phrase framing_lacks(const demand::Demand& demand) {
    if (demand.framing && !demand.framing->unstable.empty())
        return phrase("Framing is not stable: nothing limits its movement.");
    if (!demand.framing || !demand.framing->joists_described)
        return phrase("Joist lengths and supports are not specified: joist flexibility is not included.");
    return {};
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
    const format::Phrase lacks = framing_lacks(input.demand);
    result.note =
        std::holds_alternative<model::WoodPost>(input.resolved.detail.post)
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
