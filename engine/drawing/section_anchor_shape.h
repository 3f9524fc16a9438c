#pragma once
// The look of fasteners from their side. Heights of heads and nuts, and the pitch of threads, are drawn as is usual for
// the diameter (common practice); no check reads them.
#include "drawing/section_sheet.h"

namespace toehold::drawing {

[[nodiscard]] double head_height_in(const catalog::Anchor& anchor);
[[nodiscard]] double nut_height_in(const catalog::Anchor& anchor);

/// Shank, thread and tip below the head, closed.
[[nodiscard]] std::vector<Point> screw_contour(const catalog::Anchor& anchor, const AnchorStations& at, double axis_in);

struct Heights {
    double low_in = 0.0, high_in = 0.0;
};
/// A hexagonal head or nut seen across its corners.
void add_hexagon(Scene& scene, double axis_in, Heights heights, double across_flats_in, const std::string& part);
void add_round_head(Scene& scene, double axis_in, Heights heights, double diameter_in, const std::string& part);

}  // namespace toehold::drawing
