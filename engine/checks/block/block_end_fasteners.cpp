// Nails or wood screws through the joist into the block's end grain, loaded across their axis by the block's vertical
// and horizontal forces and its torque. Withdrawal from end grain is not permitted (NDS 2018 12.2.2.2, 12.2.3.2, from
// memory) and is never counted.
#include "checks/anchor/anchor_seating.h"
#include "checks/basis/wood_basis.h"
#include "checks/block/block_end.h"
#include "demand/worst.h"
#include "resistance/wood/connection_factors.h"
#include "resistance/wood/single_shear.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::checks {
namespace {

using model::EndGrainFasteners;

constexpr double no_torque_lb_in = 1.0;
/// From here up NDS 2018 12.5.1 sets distances and 11.3.6 a group factor.
constexpr double least_thick_in = 0.25;

bool are_screws(const EndGrainFasteners& fasteners) { return fasteners.kind == EndGrainFasteners::Kind::wood_screw; }

/// Thread root over outside diameter of cut-thread wood screws: the least of NDS 2018 Table L3 (from memory).
double root_diameter_in(const EndGrainFasteners& fasteners) {
    constexpr double least_root_ratio = 0.78;
    return are_screws(fasteners) ? least_root_ratio * fasteners.diameter_in : 0.0;
}

/// Force on the outermost fastener of an even line for each lb in of torque: r_max / sum of r^2.
double outermost_per_torque(const EndGrainFasteners& fasteners) {
    if (fasteners.count < 2) return 0.0;
    const double n = fasteners.count;
    return 6.0 * (n - 1.0) / (fasteners.spread_in * n * (n + 1.0));
}

/// On the outermost fastener. The torque's part is added to the rest whatever their directions, so the result holds
/// for a line of any slope.
double outermost_lb(const EndForces& forces, const EndGrainFasteners& fasteners) {
    return std::hypot(forces.up_lb, forces.across_lb) / fasteners.count +
           std::abs(forces.torque_lb_in) * outermost_per_torque(fasteners);
}

resistance::SingleShear reference_value(const CheckInput& input, const BlockEndPlace& place,
                                        const EndGrainFasteners& fasteners) {
    resistance::WoodToWood connection;
    connection.diameter_in = fasteners.diameter_in;
    connection.root_diameter_in = root_diameter_in(fasteners);
    connection.length_in = fasteners.length_in;
    connection.side_thickness_in = input.resolved.detail.framing.joists.value().width_in;
    connection.side_specific_gravity = input.resolved.joists.value().species.specific_gravity;
    connection.main_specific_gravity = input.resolved.blocks.at(place.block).species.specific_gravity;
    connection.side_angle_rad = 0.5 * std::numbers::pi;  // the weaker direction in the joist, whatever the force's
    connection.main_end_grain = true;
    return resistance::single_shear_value(connection);
}

void add_value(CheckResult& result, const CheckInput& input, const EndGrainFasteners& fasteners,
               const resistance::SingleShear& reference) {
    LateralConditions conditions;
    conditions.diameter_in = fasteners.diameter_in;
    conditions.single_row_or_single_fastener = fasteners.count == 1;
    conditions.end_grain_factor = resistance::lateral_end_grain();
    const Adjusted adjusted = adjust_lateral(reference.value_lb, conditions, input.resolved.detail.basis);
    result.steps.push_back({"D", are_screws(fasteners) ? "screw diameter; root taken as 0.78 D" : "nail diameter",
                            "given", fasteners.diameter_in, "in", "input"});
    result.steps.push_back({"p", "penetration into the block, tip included", "length less the joist's width",
                            reference.penetration_in, "in", ""});
    result.steps.push_back({"Z", "reference lateral value, one fastener",
                            fmt::format("least of the yield modes: {}", resistance::name(reference.mode)),
                            reference.value_lb, "lb", "NDS 2018 12.3.1"});
    append(result.steps, adjusted.steps);
    result.steps.push_back(
        {"Z'", "adjusted lateral value", "Z times every factor", adjusted.value, "lb", "NDS 2018 Table 11.3.1"});
    result.capacity = adjusted.value;
}

demand::Worst worst_torque(const CheckInput& input, const BlockEndPlace& place) {
    return demand::worst_state(input.demand, [&](const demand::State& state) {
        return std::abs(forces_at(input, state, place).torque_lb_in);
    });
}

}  // namespace

CheckResult check_end_fasteners(const CheckInput& input, const BlockEndPlace& place,
                                const EndGrainFasteners& fasteners) {
    CheckResult result = end_result(
        input, place,
        fmt::format("{} {} {:.4g} in x {:.4g} in through the joist into end grain", fasteners.count,
                    are_screws(fasteners) ? "wood screws" : "nails", fasteners.diameter_in, fasteners.length_in));
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        return outermost_lb(forces_at(input, state, place), fasteners);
    });
    const demand::Worst twist = worst_torque(input, place);
    const bool helpless = fasteners.count < 2 && twist.value > no_torque_lb_in;
    add_end_forces(result, input, place, helpless ? twist.state : worst.state);
    if (helpless) {
        nothing_resists(result, twist.value, "lb in",
                        "One fastener resists no couple about the block's axis: use two or "
                        "more, spread over the block's depth.");
        return result;
    }
    if (fasteners.diameter_in >= least_thick_in) {
        lacks_evidence(result,
                       "Fasteners of 1/4 in and more in end grain need spacing, edge and group rules that are "
                       "not worked out here: state hardware with a report, or thinner nails or screws.");
        return result;
    }
    const model::Block& block = block_at(input, place);
    if (fasteners.spread_in > std::max(block.width_in, block.depth_in)) {
        nothing_resists(result, worst.value, "lb",
                        "The fasteners' spread is larger than the block's end: some miss it.");
        return result;
    }
    const resistance::SingleShear reference = reference_value(input, place, fasteners);
    if (!(reference.value_lb > 0.0)) {
        nothing_resists(
            result, worst.value, "lb",
            fmt::format("The fasteners enter the block {:.4g} in, less than the {:.4g} in (6 D) the standard "
                        "asks for: use longer ones.",
                        reference.penetration_in, reference.minimum_penetration_in));
        return result;
    }
    result.demand = worst.value;
    result.unit = "lb";
    result.steps.push_back({"P", "force across the outermost fastener", "sqrt(R_v^2 + R_h^2)/n + T r_max/sum(r^2)",
                            worst.value, "lb", "elastic group; common practice"});
    add_value(result, input, fasteners, reference);
    conclude(result);
    result.note = "Lateral load only; fasteners in end grain are given no withdrawal.";
    return result;
}

}  // namespace toehold::checks
