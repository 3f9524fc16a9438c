#pragma once
// What the review of a project says of a line of guard: how much of a push each post sees, whether the rail carries
// what is asked of it, how far it moves, and what counting on the neighbors rests on.
#include "checks/rail/rail.h"
#include "checks/result.h"
#include "format/phrase.h"
#include "model/line_geometry.h"
#include "review/facts.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::review {

/// A place on the rail, where a push stood.
struct PushPlace {
    std::string from, to;        ///< ids of the posts of that span, in the line's order; empty: a wall
    double along_in = 0.0;       ///< from `from`, level
    double span_in = 0.0;        ///< level, > 0
    double direction_rad = 0.0;  ///< of the push, in the project's plan
    friend bool operator==(const PushPlace&, const PushPlace&) = default;
};

/// A post of the line under a push on the rail.
struct PostShare {
    std::string post;
    model::PostRole role = model::PostRole::line;
    double share = 1.0;  ///< largest part of a push anywhere on this line's rail that reaches the post's top
    PushPlace stood;     ///< where that push stood
    /// What the post's review counts of the concentrated load, of all lines it is in: 1, or its share.
    double counted = 1.0;
    double line_length_in = 0.0;  ///< of rail whose line load it takes by the rail's continuity, at worst
    double half_spans_in = 0.0;   ///< half of the spans beside it, in this line
    double reviewed_in = 0.0;     ///< length of rail its review counts, all lines together; 0: no load asks for one
    /// With sharing: what the review says of the post under the whole push by itself.
    std::optional<Verdict> lone_verdict = std::nullopt;
    std::optional<Governing> lone = std::nullopt;
};

/// How far one place of the rail moves under the push there.
struct LineMovementAt {
    model::PartId part;  ///< a post, or a span's middle
    checks::RailMovement movement;
    std::optional<double> limit_in = std::nullopt;  ///< absent: the file invokes none
};

/// How well the line's solve balances.
struct LineProof {
    int frames = 0;         ///< solved: every end of what is known of stiffness
    double residual = 0.0;  ///< largest lack of balance, relative, at most `demand::largest_line_residual`
};

struct LineReview {
    std::string id;
    bool sharing = false;                     ///< counted on
    bool rail = false;                        ///< described; without one nothing below is known but roles
    bool continuous = false;                  ///< the rail is in one piece over its posts
    double push_lb = 0.0;                     ///< on the rail, without its load factor
    bool load_along = false;                  ///< a load along the rail, or wind, is asked for: lengths of rail matter
    std::optional<LineProof> proof;           ///< absent: not solved
    std::vector<PostShare> posts;             ///< in the line's order
    std::vector<LineMovementAt> movements;    ///< posts, then spans; empty where not solved
    std::vector<checks::CheckResult> checks;  ///< of the rail and its connections, worst first
    format::Phrase unsolved;                  ///< why no share is given; empty: they are
    Verdict verdict = Verdict::adequate;      ///< of the rail, as far as it is described
    std::optional<CheckFact> cause;           ///< of a verdict that is not adequate; absent: `unsolved` is
    std::vector<format::Phrase> rests_on;     ///< what counting on the neighbors rests on, or would
    std::vector<format::Phrase> assumptions;
};

/// How many of the line's posts stand in it, at a corner, at an end.
[[nodiscard]] std::vector<model::RoleCount> roles_of(const LineReview& line);

/// The first line whose verdict is this one; nullptr: none.
[[nodiscard]] const LineReview* line_with(const std::vector<LineReview>& lines, Verdict verdict);

}  // namespace toehold::review
