// The anchors' pull and the toe's pressure bend the block between its joists; the anchors' shear bends it sideways.
#include "checks/anchor/anchor_seating.h"
#include "checks/basis/member_basis.h"
#include "checks/block/block_actions.h"
#include "demand/worst.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <limits>

namespace toehold::checks {
namespace {

/// What a block may take about each axis; edgewise is the load on its narrow face.
struct Allowable {
    Adjusted edgewise, flatwise;
    double critical_psi = 0.0;
};

Allowable allowable(const model::Block& block, const catalog::LumberGrade& grade, const model::Basis& basis) {
    const double narrow_in = std::min(block.width_in, block.depth_in);
    const double wide_in = std::max(block.width_in, block.depth_in);
    const bool sized = grade.size_factor_applies;
    Allowable result;
    result.edgewise =
        adjust_bending(grade.bending_psi, {narrow_in, wide_in, sized, length_in(block), grade.modulus_min_psi}, basis);
    result.flatwise = adjust_bending(grade.bending_psi, {wide_in, narrow_in, sized, 0.0, 0.0}, basis);
    if (wide_in > narrow_in) {
        const double slenderness = resistance::beam_slenderness(
            resistance::effective_length_in(length_in(block), wide_in), wide_in, narrow_in);
        result.critical_psi =
            resistance::critical_buckling_psi(adjust_modulus_min(grade.modulus_min_psi, basis).value, slenderness);
    }
    return result;
}

const char* interaction(const model::Block& block) {
    if (block.depth_in == block.width_in) return "f_bv/F_b1' + f_bh/F_b2'";
    return block.depth_in > block.width_in ? "f_bv/F_b1' + f_bh/(F_b2' (1 - (f_bv/F_bE)^2))"
                                           : "f_bh/F_b1' + f_bv/(F_b2' (1 - (f_bh/F_bE)^2))";
}

struct Bending {
    double vertical_psi = 0.0, horizontal_psi = 0.0;
    double ratio = 0.0;
};

bool on_edge(const model::Block& block) { return block.depth_in >= block.width_in; }

Bending bending(const BlockActions& actions, const model::Block& block, const Allowable& allowed) {
    Bending result;
    result.vertical_psi = resistance::bending_stress_psi(actions.vertical_moment_lb_in, block.width_in, block.depth_in);
    result.horizontal_psi =
        resistance::bending_stress_psi(actions.horizontal_moment_lb_in, block.depth_in, block.width_in);
    const double edgewise_psi = on_edge(block) ? result.vertical_psi : result.horizontal_psi;
    const double flatwise_psi = on_edge(block) ? result.horizontal_psi : result.vertical_psi;
    result.ratio = allowed.edgewise.value > 0.0
                       ? resistance::biaxial_bending_ratio({edgewise_psi, allowed.edgewise.value, flatwise_psi,
                                                            allowed.flatwise.value, allowed.critical_psi})
                       : std::numeric_limits<double>::infinity();
    return result;
}

void add_steps(std::vector<Step>& steps, const BlockActions& actions, const model::Block& block, const Bending& worst) {
    const double b = block.width_in;
    const double d = block.depth_in;
    steps.push_back(
        {"L", "length between the block's ends, simply supported", "given", length_in(block), "in", "input"});
    steps.push_back({"M_v", "largest moment of the vertical forces", "simple beam", actions.vertical_moment_lb_in,
                     "lb in", "demand"});
    steps.push_back({"M_h", "largest moment of the horizontal forces", "simple beam", actions.horizontal_moment_lb_in,
                     "lb in", "demand"});
    steps.push_back({"S_v", "section modulus", "b d^2/6", resistance::section_modulus_in3(b, d), "in3", ""});
    steps.push_back({"S_h", "section modulus sideways", "d b^2/6", resistance::section_modulus_in3(d, b), "in3", ""});
    steps.push_back({"f_bv", "bending stress", "M_v/S_v", worst.vertical_psi, "psi", "NDS 2018 3.3.2"});
    steps.push_back({"f_bh", "bending stress sideways", "M_h/S_h", worst.horizontal_psi, "psi", "NDS 2018 3.3.2"});
}

void add_allowable(std::vector<Step>& steps, const Adjusted& adjusted, double reference_psi, const char* symbol,
                   const char* meaning) {
    steps.push_back({"F_b", "reference bending value", "given", reference_psi, "psi", "NDS Supplement 2018"});
    steps.insert(steps.end(), adjusted.steps.begin(), adjusted.steps.end());
    steps.push_back({symbol, meaning, "F_b times every factor", adjusted.value, "psi", "NDS 2018 Table 4.3.1"});
}

CheckResult bending_of(const CheckInput& input, std::size_t index) {
    const model::Block& block = input.resolved.detail.framing.blocks[index];
    const catalog::LumberGrade& grade = input.resolved.blocks.at(index).grade;
    const Allowable allowed = allowable(block, grade, input.resolved.detail.basis);
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        return bending(block_actions(input, state, index), block, allowed).ratio;
    });
    const demand::State& state = input.demand.states[worst.state];
    const BlockActions actions = block_actions(input, state, index);
    const Bending governing = bending(actions, block, allowed);

    CheckResult result;
    result.subject = subject(block);
    result.direction_deg = degrees(state.direction_rad);
    add_steps(result.steps, actions, block, governing);
    add_allowable(result.steps, allowed.edgewise, grade.bending_psi, "F_b1'", "allowable, load on the narrow face");
    add_allowable(result.steps, allowed.flatwise, grade.bending_psi, "F_b2'", "allowable, load on the wide face");
    if (governing.ratio > std::numeric_limits<double>::max()) {
        result.demand = std::max(governing.vertical_psi, governing.horizontal_psi);
        result.unit = "psi";
        result.ratio = governing.ratio;
        result.status = Status::fails;
        result.note = "The block is too slender to bend on edge: it buckles sideways (NDS 2018 3.3.3.7, 3.9.2).";
        return result;
    }
    if (allowed.critical_psi > 0.0) {
        result.steps.push_back({"F_bE", "critical stress of sideways buckling on edge", "1.20 E_min'/R_B^2",
                                allowed.critical_psi, "psi", "NDS 2018 3.3.3.8"});
    }
    result.steps.push_back({"R", "both together", interaction(block), governing.ratio, "", "NDS 2018 Eq. 3.9-3"});
    result.demand = governing.ratio;
    result.capacity = 1.0;
    conclude(result);
    return result;
}

std::vector<CheckResult> block_bending(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t index : loaded_blocks(input)) results.push_back(bending_of(input, index));
    return results;
}

const RegisterCheck registered{{"block-bending", "Bending of the block", "NDS 2018 3.9.2",
                                "The block as a simple beam between its joists, bent up or down and sideways by the "
                                "anchors and the plate.",
                                block_bending}};

}  // namespace
}  // namespace toehold::checks
