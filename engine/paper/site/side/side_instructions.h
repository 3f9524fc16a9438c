#pragma once
// What the site sheet tells a builder of a post on a member's side: where post and holes go, what lies between, what
// goes back to the deck. Left and right as one sees them who stands before the post.
#include "paper/site/instructions.h"

namespace toehold::paper::site {

/// Post, bracket, layers and holes; then the ties.
[[nodiscard]] Instructions joint_instructions(const Reader& reader);
[[nodiscard]] Instructions tie_instructions(const Reader& reader);

/// Besides what is looked for, and not done, at any base.
[[nodiscard]] Instructions look_at_joint(const Reader& reader);
[[nodiscard]] Instructions do_not_at_joint(const Reader& reader);

}  // namespace toehold::paper::site
