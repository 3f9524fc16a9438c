#pragma once
// Spaces small enough to be judged whole by the whole engine, and what it says of each candidate.
#include "search/judge/judge.h"
#include "search/space/space.h"

#include <vector>

namespace toehold::test {

/// 48 candidates on a rigid plate, which is quickly solved: plate thickness, anchor, its length, depth of the blocks.
/// Some do not go together, some cannot be built, some hold.
[[nodiscard]] search::Space rigid_space();
/// 6 candidates on a plate that bends: its thickness and the length of its screws.
[[nodiscard]] search::Space flexible_space();
/// Nothing in it holds: screws too short to reach.
[[nodiscard]] search::Space hopeless_space();

/// Whether `check` would say ADEQUATE: by review::evaluate alone, without a stage before it.
[[nodiscard]] bool is_adequate(const search::Space& space, search::Candidate candidate);

/// The judgements of every candidate, in order.
[[nodiscard]] std::vector<search::Judgement> judge_all(const search::Space& space);

}  // namespace toehold::test
