#pragma once
// What a point under the hand catches on: a step of length, other holes' lines, the post's axes, mirror images, the
// edge distance of another hole. Each direction catches for itself, on the nearest line within reach.
#include "drawing/scene/scene.h"
#include "format/phrase.h"
#include "model/base_detail.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

struct SnapRules {
    bool on = true;          ///< off: free (but see `step_in`)
    double step_in = 0.125;  ///< to multiples of this where nothing nearer catches; 0: none
    double reach_in = 0.1;   ///< how near a line must be to catch
};

/// A line drawn while the point is caught on it.
struct SnapLine {
    drawing::Point from, to;
    format::Phrase why;  ///< `in line with hole B`, `post's axis`, `mirror of hole A`, `1 1/2 in from the edge`
};

struct Snapped {
    drawing::Point at;
    std::vector<SnapLine> lines;  ///< at most one a direction
};

/// `moving`: the hole under the hand, left out of what it may catch on; empty: none.
[[nodiscard]] Snapped snap(drawing::Point to, const model::Plate& plate, const std::string& moving,
                           const SnapRules& rules);
/// The same for something new, on the holes and the outline of the detail's mount.
[[nodiscard]] Snapped snap(drawing::Point to, const model::BaseDetail& detail, const SnapRules& rules);
/// The nearest multiple of the step; the value itself where the step is 0.
[[nodiscard]] double to_step(double value_in, double step_in);

}  // namespace toehold::editing
