#include "editing/snap/face_lines.h"

#include "editing/parts/anchor_places.h"
#include "editing/parts/measures.h"
#include "editing/parts/side_fasteners.h"
#include "editing/snap/catch_lines.h"
#include "units/quantity.h"

#include <cmath>

namespace toehold::editing {
namespace {

constexpr int rank_in_line = 0;
constexpr int rank_of_far_edge = 1;
constexpr double on_axis_in = 1e-9;

/// Upright lines.
std::vector<CatchLine> lines_of_x(const std::vector<AnchorPlace>& others) {
    std::vector<CatchLine> lines{{0.0, {0.0, 0.0}, phrase("post's axis"), rank_in_line}};
    for (const AnchorPlace& other : others) {
        const drawing::Point at = point(other.at);
        lines.push_back({at.x, at, phrase("in line with fastener {}", other.id), rank_in_line});
        if (std::abs(at.x) > on_axis_in)
            lines.push_back({-at.x, {-at.x, at.y}, phrase("mirror of fastener {}", other.id), rank_in_line});
    }
    return lines;
}

/// Level lines.
std::vector<CatchLine> lines_of_height(const std::vector<AnchorPlace>& others, const model::BaseDetail& detail) {
    std::vector<CatchLine> lines;
    const std::optional<double> depth_in = member_depth_in(detail);
    for (const AnchorPlace& other : others) {
        const drawing::Point at = point(other.at);
        lines.push_back({at.y, at, phrase("in line with fastener {}", other.id), rank_in_line});
        if (!depth_in || -at.y >= *depth_in) continue;
        lines.push_back({-*depth_in - at.y,
                         {at.x, -*depth_in},
                         phrase("{} from the bottom edge", units::fraction_in(-at.y)),
                         rank_of_far_edge});
    }
    return lines;
}

}  // namespace

Snapped snap_on_face(drawing::Point to, const model::BaseDetail& detail, const std::string& moving,
                     const SnapRules& rules) {
    if (!is_finite(to)) return {{bounded(to.x), bounded(to.y)}, {}};
    std::vector<AnchorPlace> others = places_of_anchors(detail);
    std::erase_if(others, [&](const AnchorPlace& place) { return place.id == moving; });
    return snap_to(to, lines_of_x(others), lines_of_height(others, detail), rules);
}

}  // namespace toehold::editing
