// Each end of each loaded block must pass its forces to a joist: held down, held up, held across and held against
// turning. An end without a joist or without a described connection passes nothing.
#include "checks/block/block_end.h"
#include "demand/worst.h"

#include <cmath>
#include <variant>

namespace toehold::checks {
namespace {

CheckResult nothing_described(const CheckInput& input, const BlockEndPlace& place, const char* by, const char* why) {
    CheckResult result = end_result(input, place, by);
    const demand::Worst worst = demand::worst_state(input.demand, [&](const demand::State& state) {
        const EndForces forces = forces_at(input, state, place);
        return std::hypot(forces.up_lb, forces.across_lb);
    });
    add_end_forces(result, input, place, worst.state);
    nothing_resists(result, worst.value, "lb", why);
    return result;
}

CheckResult end_connection(const CheckInput& input, const BlockEndPlace& place) {
    const model::BlockEnd& end = end_at(input, place);
    if (end.joist.empty() || !input.resolved.detail.framing.joists || !input.resolved.joists) {
        return nothing_described(input, place, "no joist", "No joist is described at this end.");
    }
    if (const auto* fasteners = std::get_if<model::EndGrainFasteners>(&end.connection)) {
        return check_end_fasteners(input, place, *fasteners);
    }
    if (const auto* connector = std::get_if<model::ReportedConnector>(&end.connection)) {
        return check_end_connector(input, place, *connector);
    }
    return nothing_described(input, place, "nothing described",
                             "Nothing that joins this end to its joist is described.");
}

std::vector<CheckResult> block_end_connection(const CheckInput& input) {
    std::vector<CheckResult> results;
    for (const std::size_t block : loaded_blocks(input)) {
        results.push_back(end_connection(input, {block, false}));
        results.push_back(end_connection(input, {block, true}));
    }
    return results;
}

const RegisterCheck registered{{"block-end-connection", "Connection of the block's end to its joist",
                                "IRC 2021 R507.10.1; NDS 2018 12.3, 12.5.2",
                                "Uplift, download, sideways force and couple at each end of each block against what "
                                "joins it to the joist.",
                                block_end_connection}};

}  // namespace
}  // namespace toehold::checks
