#pragma once
// What a push and a line load on the rail do along a whole line of guard: to each post's top, to the rail and to what
// joins the two.
//
// Everything is per unit of load, 1 lb of a push and 1 lb/in of a line load, on a linear frame. How stiff bases, posts
// and wooden rails are is known between two ends, and shares depend on their ratios; so each number is the largest over
// corners of those ranges (`LineCorner`). Where a base is stiffer one way than the other, a post counts in a corner
// that has it stiff with its stiffer way both ways, and in one that has it soft with its softer: the frame is then
// linear, influence lines are exact, and what one-way bases would do lies between (tests hold it to that).
#include "demand/line/line_input.h"
#include "format/phrase.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::demand {

/// Which ends of the ranges a number was found with. Where `post` is named it has its own end and all others have
/// `others`. A post's own connection is rigid with the stiff end; a stated stiffness goes with the soft one.
struct LineCorner {
    std::optional<std::size_t> post = std::nullopt;  ///< index of a post; absent: all alike, at `others`
    bool post_stiff = false;                         ///< the named post's end
    bool others_stiff = false;
    bool rail_stiff = false;
    friend bool operator==(const LineCorner&, const LineCorner&) = default;
};

/// The largest of something, and where the load stood.
struct LineLargest {
    double value = 0.0;          ///< >= 0
    std::size_t span = 0;        ///< the stretch of rail the push stood on; of a line load: where most of it stood
    double along_in = 0.0;       ///< from that span's start, level
    double direction_rad = 0.0;  ///< of the load, in the project's plan
    LineCorner corner;
};

/// Movement under a level push of 1 lb at the place itself, in the direction that moves it furthest, all bases, posts,
/// connections and the rail at their soft ends; in/lb, along the movement. Play is not in it.
struct LineMovement {
    double rail_in = 0.0;        ///< the rail's bending and stretch between its posts; 0 at a post
    double connection_in = 0.0;  ///< of rail to post; 0 where rigid
    double post_in = 0.0;        ///< posts' bending
    double base_in = 0.0;        ///< bases and framing
    double direction_rad = 0.0;  ///< of the push
    [[nodiscard]] double total_in() const { return rail_in + connection_in + post_in + base_in; }
};

/// What one connection of the rail to a post (or to a wall) meets, along with where the load stood. Of a rail broken at
/// or let in between its posts each end is a connection of its own; the worse of the two is given.
struct ConnectionForces {
    LineLargest push_across, push_along;  ///< lb per lb of push, square to the rail and along it, level
    LineLargest line_across, line_along;  ///< in of rail: lb per lb/in
    LineLargest wind_across, wind_along;  ///< the same, of loads square to each stretch of rail, all on one side
};

struct PostShares {
    /// Largest level force on the post's top for a push of 1 lb anywhere on the rail. By statics it may exceed 1:
    /// beside a stretch that reaches past the last post, or at a corner whose rails force a post aside. At least 1
    /// where any other post of the line has play, since that post helps only after it has moved.
    LineLargest share;
    double force_direction_rad = 0.0;  ///< of that force on the post, in the project's plan
    /// Largest level force on the post's top for a line load of 1 lb/in on whatever stretches are worst: the length of
    /// rail that it takes. One direction for the whole load, or square to each stretch of rail, the worse. Of the
    /// corners where all posts are at the same end of their range, here and of all connections: a line load lies on
    /// many posts at once, and practice gives each half of its spans.
    LineLargest line_length_in;
    ConnectionForces connection;
    double upright_share = 0.0;  ///< largest force straight up or down on it for such a push of 1 lb; may exceed 1
    LineMovement movement;       ///< of the rail at the post
};

/// Largest in the rail, either sign; per lb of push: moment in lb in, forces in lb. Per lb/in of line load: in2 and in.
struct RailActions {
    LineLargest moment_lb_in, shear_lb;
    LineLargest axial_lb;  ///< tension or compression; 0 under upright loads
};

/// A stretch of rail between two posts, or between a post and a wall.
struct LineSpan {
    /// False: a stretch to a wall without a connection, hinged to its post. It can swing freely, and nothing below is
    /// known of it.
    bool held = true;
    /// Level loads, which bend the rail in plan, by the corners. Moments and shears are those of the sloping rail.
    RailActions push, line, wind;  ///< wind: of line loads square to each stretch of rail, all on one side
    /// Loads straight down or up, which bend it upright. Posts hold the rail, corners and changes of slope are hinges.
    RailActions upright_push, upright_line;
    /// Level, of its middle, or of its end where that is in the air. Of a sloping stretch: square to it alone.
    LineMovement movement;
};

struct LineDemand {
    std::vector<PostShares> posts;  ///< same order as the input's
    std::vector<LineSpan> spans;    ///< in order, a wall's stretch first and last where there is one
    std::optional<ConnectionForces> first_wall, last_wall;  ///< absent: no wall that holds
    int frames = 0;                                         ///< solved, the one of upright loads too
    /// Largest lack of balance of any frame, under level and under upright loads, relative; at most
    /// `largest_line_residual`.
    double residual = 0.0;
};

struct LineOutcome {
    std::optional<LineDemand> demand;  ///< absent: `failure` says why
    format::Phrase failure;            ///< for people: a part of the rail that nothing holds, by its posts
};

/// A line whose solve misses this is refused, never shown.
inline constexpr double largest_line_residual = 1e-7;

/// Throws std::invalid_argument for an input out of range: fewer than two posts, two at one place, a stiffness that is
/// not > 0, splices out of order or beyond the line, a stated connection stiffness not > 0.
///
/// What sharing rests on in the model:
///  - a rail broken at its posts or let in between them is hinged at each, a splice and a corner that is not rigid are
///    hinges, and so is every change of the rail's slope;
///  - a sloping stretch passes no force along itself, because with it would come an upright force that the posts are
///    not reviewed for; it bends over its true length;
///  - a wall without a connection holds nothing: a continuous rail reaches past its last post like a cantilever, one
///    with a joint there is not held beyond it (`LineSpan::held`).
/// Influence lines are cubic between joints and exact at every station, 17 between two joints; the largest lies between
/// two and is found by a parabola, which leaves less than 1e-3 of it.
[[nodiscard]] LineOutcome find_line_demand(const LineInput& input);

}  // namespace toehold::demand
