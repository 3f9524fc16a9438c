#pragma once
// One end of one block, where it meets its joist: what the checks of block ends share, one function a way of joining.
// A push along the block is taken by the block bearing on the joist it is pushed to, so it loads neither end's
// fasteners; every result says so.
#include "checks/block/block_actions.h"

#include <cstddef>
#include <string>

namespace toehold::checks {

struct BlockEndPlace {
    std::size_t block = 0;
    bool upper = false;  ///< the `to` end
};

[[nodiscard]] const model::Block& block_at(const CheckInput& input, const BlockEndPlace& place);
[[nodiscard]] const model::BlockEnd& end_at(const CheckInput& input, const BlockEndPlace& place);
[[nodiscard]] EndForces forces_at(const CheckInput& input, const demand::State& state, const BlockEndPlace& place);

/// Subject, link and unit set. `by` names what joins the two.
[[nodiscard]] CheckResult end_result(const CheckInput& input, const BlockEndPlace& place, std::string by);
/// The governing state's direction, and the three forces it puts on the end, as steps.
void add_end_forces(CheckResult& result, const CheckInput& input, const BlockEndPlace& place, std::size_t state);
/// No path, whatever the size of the demand: nothing resists it.
void nothing_resists(CheckResult& result, double demand, std::string unit, std::string why);

/// Nails or wood screws through the joist into the block's end grain: lateral only, never withdrawal.
[[nodiscard]] CheckResult check_end_fasteners(const CheckInput& input, const BlockEndPlace& place,
                                              const model::EndGrainFasteners& fasteners);
/// Hardware with values from its report.
[[nodiscard]] CheckResult check_end_connector(const CheckInput& input, const BlockEndPlace& place,
                                              const model::ReportedConnector& connector);

}  // namespace toehold::checks
