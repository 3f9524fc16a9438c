#pragma once
// Three posts on one rail, each on the base of the example detail: P1, P2, P3 at 0, 48 and 96 in, the rail a pipe in
// one piece. Nothing is read from a file.
#include "review/line/review_line.h"

#include <vector>

namespace toehold::test {

struct LineExample {
    model::Project project;
    std::vector<review::ResolvedPost> posts;
    catalog::ResolvedRail rail;
};
[[nodiscard]] LineExample line_example(bool sharing);

/// What a solve might have given: the middle post sees six tenths of a push, the outer ones eight; the middle takes 60
/// in of the load along the rail.
[[nodiscard]] demand::LineDemand made_up_demand();

/// The example's line with that.
[[nodiscard]] review::SolvedLine made_up_line(const LineExample& example);

}  // namespace toehold::test
