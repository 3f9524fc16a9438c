#pragma once
// What a builder is willing to vary of a post on a member's side, beside anchors, screw lengths, what the nuts bear on
// and block ends, which every mount shares. Plain values; a list left empty leaves that thing as the base has it.
#include "search/changes/side_rows.h"

#include <string>
#include <vector>

namespace toehold::search {

/// Under the heads on the post.
struct HeadChoice {
    enum class Kind { washer, plate };
    Kind kind = Kind::washer;   ///< wide, of the fastener's size
    double side_in = 0.0;       ///< of a square plate
    double thickness_in = 0.0;  ///< of a plate, > 0
    friend bool operator==(const HeadChoice&, const HeadChoice&) = default;
};

struct SideRanges {
    std::vector<int> plies;               ///< of the rim or joist the post is fastened to, 1 to 4
    std::vector<std::string> behind;      ///< block behind it by nominal size; empty: as it is
    std::vector<double> rim_ends_lb;      ///< hardware from the rim to its joists, its force up and down; 0: as it is
    std::vector<std::string> post_sizes;  ///< of a wood post, nominal
    std::vector<double> post_bottoms_in;  ///< below the member's top, > 0
    std::vector<bool> unnotched;          ///< true: a post without its notch; false: as it is
    std::vector<double> brackets_in;      ///< thickness of the plate a metal post is welded to
    std::vector<RowHeights> heights;      ///< of the uppermost and the lowest row of fasteners
    std::vector<HeadChoice> heads;
    std::vector<double> ties_lb;          ///< allowable pull of a tie at every row, not chosen yet; 0: as it is
    std::vector<std::string> next_joist;  ///< blocks to the next joist by nominal size; empty: as it is
    [[nodiscard]] bool empty() const { return *this == SideRanges{}; }
    friend bool operator==(const SideRanges&, const SideRanges&) = default;
};

}  // namespace toehold::search
