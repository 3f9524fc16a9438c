#pragma once
// The rail of a line in plan: pieces between nodes, hinges between nodes at one place, and which node is whose.
//
// A piece that slopes is laid out level. It bends under level loads as it does in space where its stiffness counts
// times (level over true length)^3, and its moments are then those in plan times true over level length.
#include "demand/line/line_input.h"

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace toehold::demand {

/// Between two nodes, straight.
struct RailPiece {
    std::size_t span = 0;
    std::size_t from = 0, to = 0;     ///< nodes
    double from_in = 0.0;             ///< of its start from the span's, level
    double plan_in = 0.0;             ///< level
    double true_over_plan = 1.0;      ///< >= 1
    double cosine = 1.0, sine = 0.0;  ///< of its heading
    bool sloping = false;
};

/// As `model::Span`. A wall's stretch that nothing holds has no pieces where it is hinged to its post.
struct LaidSpan {
    std::optional<std::size_t> from, to;      ///< posts
    double plan_in = 0.0;                     ///< level
    bool in_the_air = false;                  ///< its end that has no post is held by nothing
    std::size_t first_piece = 0, pieces = 0;  ///< numbers, in order
};

/// A rail's end at a post that joins each of them with a connection of its own.
struct JoinedNode {
    std::size_t post = 0;
    std::size_t node = 0;  ///< of the rail
};

struct LineLayout {
    std::vector<model::Position> nodes;
    std::vector<RailPiece> pieces;
    std::vector<std::pair<std::size_t, std::size_t>> hinges;
    std::vector<LaidSpan> spans;
    std::vector<std::size_t> post_nodes;  ///< which each post holds: the rail's, or its top's own where it has joints
    /// Where a rail that ends at its posts has connections that give; otherwise empty, and a connection's give is the
    /// post's.
    std::vector<JoinedNode> joints;
    bool jointed = false;  ///< at every post each side's rail has an end and joint of its own
    std::optional<std::size_t> first_wall, last_wall;  ///< nodes that a wall holds
};

/// Slopes and changes of slope below this are level: ours, 1 in 100.
inline constexpr double level_slope = 0.01;

/// `corners_hinged`: whatever the rail's corners are, for loads that bend it upright.
[[nodiscard]] LineLayout lay_out(const LineInput& input, bool corners_hinged);

}  // namespace toehold::demand
