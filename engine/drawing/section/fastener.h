#pragma once
// The look of a fastener from its side, whichever way it lies: in coordinates of its own, across its axis (0 on it) and
// along it against its way, 0 at the face its stations are measured from.
#include "drawing/scene/scene.h"

#include <functional>
#include <vector>

namespace toehold::catalog {
struct Anchor;
}

namespace toehold::drawing {

/// Stations along the axis, against its way: what is nearer to the head is higher.
struct AnchorStations {
    double head_top_in = 0.0;
    double head_in = 0.0;    ///< underside of the head
    double thread_in = 0.0;  ///< where the thread begins
    double tip_in = 0.0;     ///< lowest point; of a through-bolt its end below the nut
    double seat_in = 0.0;    ///< of a through-bolt: what the nut, or what is under it, bears on from below
    double below_in = 0.0;   ///< of a through-bolt: thickness of what is between nut and wood
};

/// What is under head and nut: its size across the axis as the drawing sees it, and its thickness.
struct Bearer {
    double width_in = 0.0, thickness_in = 0.0;
};

/// Heights of heads and nuts as is usual for the diameter (common practice); no check reads them.
[[nodiscard]] double head_height_in(const catalog::Anchor& anchor);
[[nodiscard]] double nut_height_in(const catalog::Anchor& anchor);
/// Across the flats of a head; as is usual for the diameter where the row has none.
[[nodiscard]] double head_width_in(const catalog::Anchor& anchor);

/// Shank with thread and tip, or bolt with what is under its nut; then what is under the head, and the head.
[[nodiscard]] std::vector<Path> fastener_pieces(const catalog::Anchor& anchor, const AnchorStations& at,
                                                const Bearer& under_head, const Bearer& under_nut,
                                                const model::PartId& part);

/// The pieces where they stand on a drawing.
void add_placed(Scene& scene, std::vector<Path> pieces, const std::function<Point(Point)>& onto);

}  // namespace toehold::drawing
