#pragma once
// What has to find room around the post on top of the plate: distances to the post's faces and to the plate's edge, and
// the size of what lies on the plate at an anchor. Pure geometry in plan; in; the post stands centered on the origin. A
// slot counts along all of its length, wherever in it the anchor may stand.
#include "checks/post/foot.h"
#include "format/phrase.h"
#include "model/plate.h"

#include <optional>

namespace toehold::catalog {
struct Anchor;
struct Resolved;
}  // namespace toehold::catalog
namespace toehold::model {
struct Capsule;
struct Segment;
}  // namespace toehold::model

namespace toehold::checks {

// The post. Corners of rectangular tubes and shoes count as square.

/// From the outside face of the post, or of the shoe, to the nearest point of the segment; negative within the outline.
[[nodiscard]] double outside_face_in(const PostFoot& foot, const model::Segment& segment);
/// From the inside face to the point of the segment nearest to it, where all of the segment is in the hollow; negative
/// where some of it is not.
[[nodiscard]] double inside_face_in(const PostFoot& foot, const model::Segment& segment);
/// None of the hole lies under the post's outline.
[[nodiscard]] bool clear_of_post(const PostFoot& foot, const model::Capsule& hole);
/// All of the hole lies within the hollow.
[[nodiscard]] bool in_hollow(const PostFoot& foot, const model::Capsule& hole);
/// Leg of the fillet all around the foot; 0 where there is none.
[[nodiscard]] double weld_leg_in(const catalog::Resolved& resolved);
/// `post`, or `shoe`: what stands on the plate.
[[nodiscard]] format::Phrase foot_name(const PostFoot& foot);

// The plate.

/// From the plate's edge to the nearest point of the segment; negative outside. Round edges are exact.
[[nodiscard]] double plate_edge_in(const model::Outline& outline, const model::Segment& segment);
/// The plate's hole that the anchor stands in.
[[nodiscard]] model::Capsule hole_shape(const catalog::Resolved& resolved, const catalog::Anchor& anchor);

// The anchor.

/// What lies on top of the plate at an anchor: its washer, else its head.
struct TopPart {
    format::Phrase name;      ///< `Washer of anchor A`: a sentence begins with it
    double covers_in = 0.0;   ///< radius it covers however it is turned: the washer's, or half a hexagon's flats
    double reaches_in = 0.0;  ///< radius of its outermost point: the washer's, or half a hexagon's corners
};

/// Absent where there is no washer and the head's size is not known (a fastener from a report).
[[nodiscard]] std::optional<TopPart> top_part(const catalog::Anchor& anchor);
/// Across the corners of the hexagon that turns the anchor, flats times 2/sqrt(3); 0 for a screw that a bit turns.
[[nodiscard]] double across_corners_in(const catalog::Anchor& anchor);

}  // namespace toehold::checks
