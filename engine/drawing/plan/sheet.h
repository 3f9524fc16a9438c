#pragma once
// What the plan's parts share, and the parts themselves, each in the file its name says.
#include "drawing/drawings.h"
#include "model/member.h"
#include "model/post.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {
struct Hole;
struct Slot;
}  // namespace toehold::model

namespace toehold::drawing {

struct PlanSheet {
    const Subject& subject;
    const PlanOptions& options;
    std::vector<Point> outline;  ///< of the plate; empty where there is none
    Box plate;                   ///< around the outline and the post
    Box shown;                   ///< what the plan shows of the framing
};
[[nodiscard]] PlanSheet plan_sheet(const Subject& subject, const PlanOptions& options);

/// Whether numbers and bars stand at the anchors.
[[nodiscard]] bool has_marks(const Subject& subject);

// plate.cpp
void add_plate_face(Scene& scene, const PlanSheet& sheet);
void add_plate_edge(Scene& scene, const PlanSheet& sheet);
void add_holes(Scene& scene, const PlanSheet& sheet);
[[nodiscard]] std::vector<Point> slot_contour(const model::Hole& hole, const model::Slot& slot);
[[nodiscard]] double across_in(const model::Hole& hole);  ///< of a round hole its diameter, of a slot its width
/// From the hole's centre to the edge of what covers it: the washer where it is known, else the hole.
[[nodiscard]] double covered_radius_in(const Subject& subject, const model::Hole& hole);

// post.cpp
void add_weld(Scene& scene, const PlanSheet& sheet);
void add_gussets(Scene& scene, const PlanSheet& sheet);
void add_post(Scene& scene, const PlanSheet& sheet);
void add_axes(Scene& scene, const PlanSheet& sheet);
struct PostFoot {
    double width_in = 0.0, depth_in = 0.0;  ///< outside, along x and y
    bool round = false;
};
[[nodiscard]] PostFoot post_foot(const model::Post& post);

// framing.cpp
void add_framing_below(Scene& scene, const PlanSheet& sheet);
// spacers.cpp
void add_spacers(Scene& scene, const PlanSheet& sheet);

// plan.cpp
/// A line under the drawing, at its right end, so far above the lower end of the scene's margin.
void add_plan_note(Scene& scene, const Box& shown, double up_mm, std::string words);
/// So that nobody takes one push's pulls for the largest. For a subject with marks.
[[nodiscard]] std::string pull_note(const Subject& subject);

// dimensions.cpp
void add_plan_dimensions(Scene& scene, const PlanSheet& sheet);

// measured.cpp
void add_measured(Scene& scene, const PlanSheet& sheet);

// marks.cpp
void add_letters(Scene& scene, const PlanSheet& sheet);
void add_shear_arrows(Scene& scene, const PlanSheet& sheet);
/// Where words about an anchor stand: level with its center, beside what covers it, and to which side they run.
struct MarkPlace {
    Place at;
    double side = 1.0;
};
/// The anchor's mark at `mark_at` where the overlay has one, else its letter at `letter_at`.
void add_letter_or_mark(Scene& scene, const Subject& subject, const std::string& id, const MarkPlace& mark_at,
                        const MarkPlace& letter_at);
/// The anchor's shear in its own plane. `right`: -1 where the drawing has x to the left.
void add_shear_arrow(Scene& scene, const Subject& subject, const std::string& id, const Place& from,
                     double right = 1.0);

// push.cpp
void add_push(Scene& scene, const PlanSheet& sheet);

// pressure.cpp
void add_pressure(Scene& scene, const PlanSheet& sheet);
/// A scale beside the drawing; makes room for it in the scene's bounds.
void add_pressure_scale(Scene& scene, const PlanSheet& sheet);

}  // namespace toehold::drawing
