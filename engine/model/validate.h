#pragma once
// Everything that is wrong with a detail's or a plate's geometry and numbers, at once. What a code asks of a
// sound detail is for the checks; this is for what cannot be built or computed at all.
#include "model/base_detail.h"
#include "model/problem.h"

#include <cstddef>

namespace toehold::model {

/// Of one kind in a detail: joists, rims, supports, blocks, pieces of packing.
inline constexpr std::size_t most_members = 50;
/// Whether the framing has more of one kind, which `validate` refuses without looking at any: neither a review nor a
/// window is made for it.
[[nodiscard]] bool too_many_members(const Framing& framing);

[[nodiscard]] Problems validate(const Plate& plate);
[[nodiscard]] Problems validate(const BaseDetail& detail);

}  // namespace toehold::model
