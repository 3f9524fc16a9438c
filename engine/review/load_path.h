#pragma once
// The chain from the guard down to the supports of the joists: for each pair of neighbours, what joins them and the
// worst check that stands for it.
#include "review/review.h"

namespace toehold::review {

/// `results` sorted worst first. Only links that carry something, or that lack a path or evidence. A block, joist or
/// rim that something stands on and that nothing leads on from gets a link to no part, without a path.
[[nodiscard]] std::vector<PathLink> load_path(const std::vector<checks::CheckResult>& results);

// For people: links between the same kinds of things, of which there may be many, as one.
struct PathStep {
    review::PathLink worst;  ///< of those alike: the gravest status, then the largest ratio
    std::size_t count = 1;   ///< links alike
};

/// What makes two links alike: the kinds of the things they join, or also what joins them.
enum class Alike { things, things_and_means };

/// The order down the path is kept.
[[nodiscard]] std::vector<PathStep> path_steps(const std::vector<review::PathLink>& path, Alike by);

}  // namespace toehold::review
