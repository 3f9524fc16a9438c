#pragma once
// The usual ways to mend what holds a base, as changes of a detail. Each returns nothing where it does not apply.
#include "catalog/resolve.h"

#include <optional>

namespace toehold::review {

/// One 4x8 block on edge under every row of anchors, in place of the blocks the anchors stand in.
[[nodiscard]] std::optional<model::BaseDetail> upright_blocks(const catalog::Resolved& resolved);
/// A block like the first under every row of anchors that has none.
[[nodiscard]] std::optional<model::BaseDetail> second_block(const catalog::Resolved& resolved);
/// Bolts through the framing with a backing plate below each, as thick as the holes take.
[[nodiscard]] std::optional<model::BaseDetail> through_bolts(const catalog::Resolved& resolved);
/// Steel angles on both sides of every block's ends, bolted through block and joist: up to three 3/8 in bolts a leg, as
/// many as the block's depth takes with 4 D to its edges.
[[nodiscard]] std::optional<model::BaseDetail> end_angles(const catalog::Resolved& resolved);
/// Hardware with stated least values at every block's ends.
[[nodiscard]] std::optional<model::BaseDetail> end_hardware(const catalog::Resolved& resolved);
/// Every loaded block carried on into the next bay.
[[nodiscard]] std::optional<model::BaseDetail> next_bay(const catalog::Resolved& resolved);

}  // namespace toehold::review
