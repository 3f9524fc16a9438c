#pragma once
// A line of guard made ready for the mechanics, and solved: before its posts are reviewed, since what it gives decides
// what they are reviewed under.
#include "demand/line/line_demand.h"
#include "model/project.h"
#include "review/project_review.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toehold::review {

/// Shares and lengths are known to this (`find_line_demand`), relative.
inline constexpr double solved_within = 2e-3;

/// A line as far as it could be solved. Points into the project and the rails it was solved from.
struct SolvedLine {
    const model::GuardLine* line = nullptr;
    const catalog::ResolvedRail* rail = nullptr;  ///< nullptr: not described
    std::vector<std::size_t> posts;               ///< numbers among the project's posts, in the line's order
    std::vector<model::Span> spans;               ///< in order, a wall's stretch too
    std::vector<double> half_spans_in;            ///< beside each post, along the rail
    /// What the file's own loads take for one post; absent: they state none. A post's detail may have more.
    std::optional<double> stated_length_in = std::nullopt;
    std::optional<demand::LineDemand> demand;  ///< absent: no rail, or `unsolved`
    format::Phrase unsolved;                   ///< why not; empty without a rail
    std::vector<format::Phrase> assumptions;   ///< on the stiffness it was solved with
};

/// Of every line of the project, in its order. `posts` in the project's order. `kept`: between bases alike in part.
[[nodiscard]] std::vector<SolvedLine> solve_lines(const model::Project& project, const std::vector<ResolvedPost>& posts,
                                                  const std::vector<ResolvedLine>& rails, demand::Kept& kept);

/// Whether a load along the rail, or wind, acts on a length of it.
[[nodiscard]] bool asks_for_a_length(const model::BaseDetail& detail);

/// What a post's lines change in its loads.
struct LoadsOfLines {
    double lone = 1.0;       ///< of the concentrated push, with no neighbor counted on: over 1 by the rail's leverage
    double counted = 1.0;    ///< the same with what its lines share
    std::string line;        ///< the line `counted` comes from
    double length_in = 0.0;  ///< of rail by continuity, all lines together; 0: no more than the loads say
};
/// `post`: number among the project's.
[[nodiscard]] LoadsOfLines loads_of_lines(const std::vector<SolvedLine>& lines, std::size_t post);

/// The detail under this part of the push, and with that length of rail where it is more than its own and a load along
/// the rail asks for it.
[[nodiscard]] model::BaseDetail loaded_by_lines(model::BaseDetail detail, double factor, const LoadsOfLines& loads);

}  // namespace toehold::review
