#pragma once
// A load path for people: links between the same kinds of things, of which there may be many, as one.
#include "review/review.h"

#include <vector>

namespace toehold::review {

struct PathStep {
    review::PathLink worst;  ///< of those alike: the gravest status, then the largest ratio
    std::size_t count = 1;   ///< links alike
};

/// What makes two links alike: the kinds of the things they join, or also what joins them.
enum class Alike { things, things_and_means };

/// The order down the path is kept.
[[nodiscard]] std::vector<PathStep> path_steps(const std::vector<review::PathLink>& path, Alike by);

}  // namespace toehold::review
