#pragma once
// What a block feels in one state of the demand: a beam between its two ends, which are held against lifting, sliding
// across and turning about its axis. Statics only, so each end's share is exact for a uniform block:
//   force at a from the lower end: (L - a)/L to the lower end, a/L to the upper; torque likewise.
// An anchor pulls up, the plate's bearing presses down at the centroid of its pressure. An anchor's horizontal force
// acts at the block's top, half its depth above its axis: across the block it adds a torque, along it a couple.
#include "checks/registry.h"

#include <cstddef>
#include <vector>

namespace toehold::checks {

/// lb and lb in. The block's own axes: along it from its lower end, across it, up.
struct BlockLoad {
    double at_in = 0.0;  ///< from the lower end, along the block
    double up_lb = 0.0;  ///< an anchor's pull > 0, bearing < 0
    double across_lb = 0.0;
    double along_lb = 0.0;
    double torque_lb_in = 0.0;  ///< about the block's axis
    double couple_lb_in = 0.0;  ///< in the vertical plane along the block: the push along it, at its top
};

/// What the block puts on the joist at one end.
struct EndForces {
    double up_lb = 0.0;  ///< > 0: the block is pulled up and its end must be held down
    double across_lb = 0.0;
    double torque_lb_in = 0.0;
};

struct BlockActions {
    EndForces from, to;
    double along_lb = 0.0;  ///< > 0: towards the upper end
    // Largest along the block, by size.
    double vertical_moment_lb_in = 0.0, horizontal_moment_lb_in = 0.0;
    double vertical_shear_lb = 0.0, horizontal_shear_lb = 0.0;
    double torque_lb_in = 0.0;
};

[[nodiscard]] double length_in(const model::Block& block);

[[nodiscard]] std::vector<BlockLoad> block_loads(const CheckInput& input, const demand::State& state,
                                                 std::size_t block);
/// Loads in any order, each within 0 to `span_in`; span > 0.
[[nodiscard]] BlockActions block_actions(std::vector<BlockLoad> loads, double span_in);
[[nodiscard]] BlockActions block_actions(const CheckInput& input, const demand::State& state, std::size_t block);

/// Whether an anchor is seated in the block or the plate bears on it.
[[nodiscard]] bool carries_load(const CheckInput& input, std::size_t block);
/// Indices of the blocks that carry load; none where the demand has no state.
[[nodiscard]] std::vector<std::size_t> loaded_blocks(const CheckInput& input);

}  // namespace toehold::checks
