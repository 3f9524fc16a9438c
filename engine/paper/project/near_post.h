#pragma once
// One post of a project as whoever builds at it sees it: its detail with the blocks that are its own.
#include "model/project.h"

namespace toehold::paper {

/// `model::detail_of`, with only those blocks that stand nearer to this post than to any other (or as near, within
/// 1/2 in), those within 12 in of it, and whatever blocks hold these. Every block of the project is some post's. For
/// papers that say what to build, never for a calculation: the framing of a project is one.
[[nodiscard]] model::BaseDetail detail_at_post(const model::Project& project, const model::PlacedPost& post);

/// What a builder at the post can tell from another post's: the detail without names, notes, loads and ids, with places
/// from the post to 1/256 in and only what lies within 24 in of it. Equal for posts that are built alike.
[[nodiscard]] model::BaseDetail as_built(const model::BaseDetail& at_post);

}  // namespace toehold::paper
