#pragma once
// Where the framing stands about the post, in plan: x along the rail, y outward, in.
#include "job/design.h"

#include <string>
#include <vector>

namespace toehold::job {

/// A joist bay that gets a block under each row of anchors.
struct Bay {
    std::string from_joist, to_joist;
    double from_in = 0.0, to_in = 0.0;  ///< its clear faces, along x
};

struct Layout {
    std::vector<model::Joist> joists;
    std::vector<Bay> bays;
    double joists_end_in = 0.0;  ///< at the rim, along y
    double rim_from_in = 0.0, rim_to_in = 0.0;
    double beam_at_in = 0.0;  ///< along y
    double ledger_at_in = 0.0;
};

/// From the post's axis to the line of a tie on each side of it, and from there to the joist's side (common practice).
inline constexpr double tie_at_in = 1.5, tie_off_joist_in = 0.75;
inline constexpr double beam_bearing_in = 3.0;  ///< a beam of two pieces

/// `span_in`: from ledger to beam.
[[nodiscard]] Layout lay_out(const Job& job, const Design& design, double span_in);

}  // namespace toehold::job
