// Horizontal forces handed from block to block, held to statics worked by hand.
#include "demand/framing/lateral.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>

using namespace toehold;

namespace {

/// Block H between two joists along x, block K along y with its lower end on H's face; in the file in that order, or
/// the other way round.
catalog::Resolved block_on_block(bool holder_first) {
    catalog::Resolved resolved = test::example_resolved();
    std::vector<model::Block>& blocks = resolved.detail.framing.blocks;
    blocks[0].id = "H";
    blocks[0].across_in = 0.0;
    blocks[1] = blocks[0];
    blocks[1].id = "K";
    blocks[1].along = model::PlanAxis::y;
    blocks[1].from_in = 0.5 * blocks[0].width_in;
    blocks[1].to_in = blocks[1].from_in + 20.0;
    blocks[1].from_end.joist = "H";
    blocks[1].to_end.joist.clear();
    if (!holder_first) std::swap(blocks[0], blocks[1]);
    return resolved;
}

double across_at_ends(const demand::Frame& frame, const demand::FramingState& state, std::size_t member) {
    double sum = 0.0;
    for (std::size_t index = 0; index < frame.supports.size(); ++index) {
        if (frame.supports[index].member == member) sum += std::abs(state.reactions[index].across_lb);
    }
    return sum;
}

demand::FramingState pushed_against_holder(const demand::Frame& frame) {
    demand::FramingState state;
    state.members.resize(frame.members.size());
    state.reactions.resize(frame.supports.size());
    const std::size_t pushed = frame.members[0].id == "K" ? 0 : 1;
    demand::add_lateral(state, frame, {{pushed, 5.0, 0.0, -100.0}}, true);
    return state;
}

}  // namespace

TEST_CASE("a block pressed against another loads that one's ends by half each, whichever the file names first",
          "[closed-form]") {
    for (const bool holder_first : {true, false}) {
        const demand::Frame frame = demand::make_frame(block_on_block(holder_first));
        const std::size_t holder = holder_first ? 0 : 1;
        const demand::FramingState state = pushed_against_holder(frame);
        CHECK_CLOSE(across_at_ends(frame, state, holder), 100.0, 1e-12, 0.0);
        // 100 lb at the middle of 14.5 in: M = P L / 4, V = P / 2.
        CHECK_CLOSE(state.members[holder].horizontal_moment_lb_in, 100.0 * 14.5 / 4.0, 1e-9, 0.0);
        CHECK_CLOSE(state.members[holder].horizontal_shear_lb, 50.0, 1e-9, 0.0);
        CHECK_FALSE(demand::blocks_hold_in_a_ring(frame));
    }
}

TEST_CASE("blocks that end at each other in a ring are told apart", "[property]") {
    catalog::Resolved resolved = block_on_block(true);
    resolved.detail.framing.blocks[0].to_end.joist = "K";
    demand::Frame frame = demand::make_frame(resolved);
    for (demand::MemberSupport& support : frame.supports) {
        if (support.member == 0 && support.upper) support.holder = 1;
    }
    CHECK(demand::blocks_hold_in_a_ring(frame));
}
