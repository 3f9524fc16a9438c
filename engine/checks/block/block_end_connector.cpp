// Hardware at a block's end, with allowable values from its report. A torque about the block's axis becomes a pair of
// forces on the two lines of connectors, up on one and down on the other; each line has half of the end's values.
#include "checks/basis/wood_basis.h"
#include "checks/block/block_end.h"
#include "demand/worst.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace toehold::checks {
namespace {

using model::ReportedConnector;

constexpr double no_torque_lb_in = 1.0;
constexpr double no_force_lb = 1e-6;

/// One way the connector is loaded in one state: force against allowable, both of one line or of the whole end.
struct Use {
    const char* symbol = "";
    const char* meaning = "";
    double force_lb = 0.0;
    double allowable_lb = 0.0;
    [[nodiscard]] double ratio() const {
        if (force_lb <= no_force_lb) return 0.0;
        return allowable_lb > 0.0 ? force_lb / allowable_lb : std::numeric_limits<double>::infinity();
    }
};

struct Uses {
    Use uplift, down, lateral;
    /// Linear interaction: on the safe side, common practice.
    [[nodiscard]] double together() const { return std::max(uplift.ratio(), down.ratio()) + lateral.ratio(); }
};

double raised(double allowable_lb, const model::Basis& basis) {
    return reported_value(allowable_lb, "lb", basis).value;
}

Uses uses(const EndForces& forces, const ReportedConnector& connector, const model::Basis& basis) {
    const double pair_lb =
        connector.couple_arm_in > 0.0 ? std::abs(forces.torque_lb_in) / connector.couple_arm_in : 0.0;
    const double upper_line_lb = 0.5 * forces.up_lb + pair_lb;
    const double lower_line_lb = 0.5 * forces.up_lb - pair_lb;
    return {{"R_u", "up on one line: R_v/2 + T/arm", std::max({upper_line_lb, lower_line_lb, 0.0}),
             0.5 * raised(connector.uplift_lb, basis)},
            {"R_d", "down on the other line: T/arm - R_v/2", std::max({-upper_line_lb, -lower_line_lb, 0.0}),
             0.5 * raised(connector.down_lb, basis)},
            {"R_s", "sideways, across the block", std::abs(forces.across_lb), raised(connector.lateral_lb, basis)}};
}

void add_use(std::vector<Step>& steps, const Use& use, const char* allowable_formula) {
    steps.push_back({use.symbol, use.meaning, "", use.force_lb, "lb", "statics"});
    steps.push_back(
        {std::string(use.symbol) + "'", "allowable for it", allowable_formula, use.allowable_lb, "lb", "input"});
}

/// The way of loading the report gives no value for.
const Use& unresisted(const Uses& all) {
    for (const Use* use : {&all.uplift, &all.down}) {
        if (std::isinf(use->ratio())) return *use;
    }
    return all.lateral;
}

demand::Worst worst_torque(const CheckInput& input, const BlockEndPlace& place) {
    return demand::worst_state(input.demand, [&](const demand::State& state) {
        return std::abs(forces_at(input, state, place).torque_lb_in);
    });
}

void conclude_uses(CheckResult& result, const Uses& governing, bool lrfd) {
    const char* half = lrfd ? "half of the report's value, times 1.6" : "half of the report's value";
    add_use(result.steps, governing.uplift, half);
    add_use(result.steps, governing.down, half);
    add_use(result.steps, governing.lateral, lrfd ? "the report's value, times 1.6" : "the report's value");
    if (std::isinf(governing.together())) {
        const Use& missing = unresisted(governing);
        nothing_resists(result, missing.force_lb, "lb",
                        fmt::format("The connector is given no value for this force ({}).", missing.meaning));
        return;
    }
    result.steps.push_back(
        {"R", "all together", "max(R_u/R_u', R_d/R_d') + R_s/R_s'", governing.together(), "", "common practice"});
    result.demand = governing.together();
    result.capacity = 1.0;
    conclude(result);
}

}  // namespace

CheckResult check_end_connector(const CheckInput& input, const BlockEndPlace& place,
                                const ReportedConnector& connector) {
    const model::Basis& basis = input.resolved.detail.basis;
    const std::string name = connector.name.empty() ? "reported connector" : connector.name;
    CheckResult result = end_result(input, place, name);
    result.clause = connector.report.empty() ? "report not named" : "report: " + connector.report;
    const demand::Worst twist = worst_torque(input, place);
    if (connector.couple_arm_in <= 0.0 && twist.value > no_torque_lb_in) {
        add_end_forces(result, input, place, twist.state);
        nothing_resists(result, twist.value, "lb in",
                        "The connector resists no couple about the block's axis: use hardware on both sides of the "
                        "block, and state the distance between its two lines.");
        return result;
    }
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        return uses(forces_at(input, state, place), connector, basis).together();
    });
    add_end_forces(result, input, place, worst.state);
    conclude_uses(result, uses(forces_at(input, input.demand.states[worst.state], place), connector, basis),
                  basis.method == model::Method::lrfd);
    return result;
}

}  // namespace toehold::checks
