#pragma once
// Where the nodes of the post stand.
#include "mechanics/side_post/side_post.h"

#include <span>
#include <vector>

namespace toehold::mechanics::side_post {

/// Lowest and highest place of what holds the post.
struct HeldHeight {
    double from_in = 0.0, to_in = 0.0;
    [[nodiscard]] double middle_in() const { return 0.5 * (from_in + to_in); }
};
[[nodiscard]] HeldHeight held_height(const SidePost& post);

/// Heights, upward, at least two: of every fastener, bearing's edge and load, the middle of what holds the post, and as
/// many between as the bending along each bearing needs. Places closer than a twentieth of such a step share one node,
/// which keeps every piece long enough to compute with.
[[nodiscard]] std::vector<double> node_heights(const SidePost& post, std::span<const PostLoad> loads, double fineness);

}  // namespace toehold::mechanics::side_post
