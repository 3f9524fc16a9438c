#pragma once
// The rail of a guard line between two posts, and its connection to them. A rail is no part of one post's detail, so
// that these are plain functions and not registered checks; `review/line` asks them for every span and post of a line.
// Lengths in, forces lb, moments lb in. In a rail's section x is level across it and y upright: a level push bends it
// about y.
#include "catalog/resolve_rail.h"
#include "checks/result.h"
#include "model/basis.h"

#include <optional>
#include <vector>

namespace toehold::checks {

/// What pushes on a rail, each alone, factored for the basis; both >= 0.
struct RailLoads {
    double push_lb = 0.0;         ///< at any point
    double line_lb_per_in = 0.0;  ///< over any stretch; 0: none is asked for
    bool any_direction = true;    ///< across the rail; false: level or upright, nothing between
    std::string push_clause, line_clause;
    /// Wind on the infill that reaches the rail, level and square to it, at once with the others, factored, >= 0.
    double wind_lb_per_in = 0.0;
    std::string wind_clause = {};
};

/// The largest in a span where the line was solved with its posts, under the same loads.
struct SolvedRail {
    double level_moment_lb_in = 0.0, level_shear_lb = 0.0;      ///< level loads: about y
    double upright_moment_lb_in = 0.0, upright_shear_lb = 0.0;  ///< loads straight down or up: about x
    double wind_moment_lb_in = 0.0, wind_shear_lb = 0.0;        ///< wind, beside the level loads
};

/// A stretch of rail from post to post.
struct RailSpan {
    model::PartId part;
    double length_in = 0.0;                           ///< along the rail, between the posts' axes, > 0
    std::optional<SolvedRail> solved = std::nullopt;  ///< absent: the line was not solved
    bool held_at_one_end = false;                     ///< it reaches past its last post, and nothing holds its end
};

struct RailInput {
    const catalog::ResolvedRail& rail;
    const RailLoads& loads;
    const model::Basis& basis;
};

/// Bending: as a simple span, P L/4 and w L^2/8 (held at one end, P L and w L^2/2) in every direction across the rail,
/// and with the largest moments of the solved line, level and upright; whichever is worse. Steel AISC 360-16 F,
/// aluminum ADM 2020 F (from memory), wood NDS 2018 3.9.2. Nothing is counted on to hold the rail sideways between its
/// posts. A rail continuous over its posts is taken as welded there, which weakens aluminum. Lacks evidence where the
/// metal has no strengths or no clause covers it.
[[nodiscard]] CheckResult rail_bending(const RailInput& input, const RailSpan& span);

/// Shear beside a post: the push there, w L/2, or the largest of the solved line. AISC 360-16 G4, G5 (from memory);
/// wood NDS 2018 3.4.2, 3/2 V/(b d).
[[nodiscard]] CheckResult rail_shear(const RailInput& input, const RailSpan& span);

/// Largest forces of a rail on one post, factored, >= 0.
struct RailForces {
    double across_lb = 0.0, along_lb = 0.0, vertical_lb = 0.0;
    double wind_across_lb = 0.0, wind_along_lb = 0.0;  ///< at once with those
};
/// One result a direction, by `aspect`: `across`, `along`, `vertical`; each alone, against the reported allowable
/// force. `required`: a direction without a value lacks evidence; otherwise it is left out.
[[nodiscard]] std::vector<CheckResult> rail_connection(const std::optional<model::RailConnection>& connection,
                                                       const model::PartId& part, const RailForces& forces,
                                                       bool required, const model::Basis& basis);

/// How far the rail moves level under the push alone at that place, without its load factor, by what gives, in.
struct RailMovement {
    double rail_in = 0.0, connection_in = 0.0, posts_in = 0.0, bases_in = 0.0;  ///< the last with the framing
    [[nodiscard]] double total_in() const { return rail_in + connection_in + posts_in + bases_in; }
    friend bool operator==(const RailMovement&, const RailMovement&) = default;
};
/// Of ASTM E985, withdrawn in 2015; only for who invokes it: h/24 + L/96.
[[nodiscard]] double rail_deflection_limit_in(double guard_height_in, double span_in);
/// Against that limit.
[[nodiscard]] CheckResult rail_deflection(const RailSpan& span, const RailMovement& movement, double guard_height_in);
/// Where that limit was read, and that it is withdrawn.
[[nodiscard]] const char* rail_deflection_clause();

/// Stiffness of a rail, lb, in: E A, E I for level and for upright bending.
struct RailStiffness {
    double axial_lb = 0.0;
    double level_lb_in2 = 0.0, upright_lb_in2 = 0.0;
};
/// Steel with its design wall, aluminum and bars as drawn, wood with E'.
[[nodiscard]] RailStiffness rail_stiffness(const catalog::ResolvedRail& rail, const model::Basis& basis);

}  // namespace toehold::checks
