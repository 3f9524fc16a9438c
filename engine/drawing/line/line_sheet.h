#pragma once
// What plan and elevation of a line share.
#include "drawing/line/line_drawings.h"
#include "model/line_geometry.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::drawing {

struct LinePostMark {
    std::string id;
    Point at;       ///< in plan
    Point outward;  ///< unit vector in plan: away from the walking surface, square to the rail or between its two ways
    double station_in = 0.0;  ///< along the rail in plan from the first post
    double rise_in = 0.0;
    double width_in = 0.0;  ///< of the post along the rail, as drawn
    double turn_rad = 0.0;  ///< of the rail there
    model::PostRole role = model::PostRole::line;
    std::optional<double> share;  ///< absent: not solved
};

struct LineSheet {
    const LineSubject& subject;
    std::vector<LinePostMark>
        posts;  ///< in the line's order; empty where the project lacks one of them, or there are fewer than two
    [[nodiscard]] bool jointed() const;  ///< a joint of the rail at each post
};
[[nodiscard]] LineSheet line_sheet(const LineSubject& subject);

/// Of the rail's upright depth; 0 without a rail.
[[nodiscard]] double rail_depth_in(const LineSubject& subject);

/// One line of small print.
[[nodiscard]] Text line_note(const Place& at, std::string words);

/// The rail in words: how it runs, whether it shares.
[[nodiscard]] std::string rail_note(const LineSheet& sheet);

/// `12 line posts, 2 corners, 2 ends`.
[[nodiscard]] std::string roles_note(const LineSheet& sheet);

/// A joint that carries force and no moment.
void add_joint(Scene& scene, const Place& at, const model::PartId& part);

/// Where the rail of the first or last span ends beyond its post; absent without a wall there.
[[nodiscard]] std::optional<double> wall_reach_in(const LineSubject& subject, bool first);

}  // namespace toehold::drawing
