#pragma once
// What one solved frame says of a post, of a stretch of rail and of a wall's connection: each keeps the larger of what
// it had and what this frame gives.
#include "demand/line/influence.h"

namespace toehold::demand {

/// One corner, solved.
struct SolvedCorner {
    const LineFrame& frame;
    const LoadedRail& rail;
    LineCorner corner;
};

void raise_post(PostShares& post, const SolvedCorner& solved, std::size_t index);

/// Level loads: moments times true over level length.
void raise_span(LineSpan& span, const SolvedCorner& solved, std::size_t index);
/// Upright loads, of a frame on rigid posts.
void raise_upright(LineSpan& span, const SolvedCorner& solved, std::size_t index);
void raise_upright_post(PostShares& post, const SolvedCorner& solved, std::size_t index);

enum class WallSide { first, last };
void raise_wall(ConnectionForces& wall, const SolvedCorner& solved, WallSide side);

}  // namespace toehold::demand
