#pragma once
// Numbers that make no post.
#include "mechanics/side_post/side_post.h"

#include <span>

namespace toehold::mechanics::side_post {

/// Throws std::invalid_argument, with what is wrong, as side_post.h says.
void check_input(const SidePost& post, std::span<const PostLoad> loads, double fineness);

}  // namespace toehold::mechanics::side_post
