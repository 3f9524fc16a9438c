#pragma once
// The plate's three views for a shop, in third-angle projection: plan from above, front from -y, right side from +x.
// What stands off the plate on paper is given by `reach`, so that the sheet can make room for it.
#include "catalog/resolve.h"
#include "drawing/scene/scene.h"
#include "model/plate.h"
#include "paper/shop/chain.h"

#include <optional>

namespace toehold::paper::shop {

struct ViewSubject {
    const catalog::Resolved& resolved;
    Drafting drafting;
};

/// mm of lettering that a view's dimensions and words take beyond the plate.
inline constexpr double rows_reach_mm = 17.0;    ///< plan, to the left and above
inline constexpr double title_reach_mm = 8.0;    ///< plan, below, its title
inline constexpr double corners_reach_mm = 9.0;  ///< plan of a polygon, below and to the right, more
inline constexpr double stub_mm = 22.0;          ///< height of the post that the edge views show
inline constexpr double above_stub_mm = 10.0;    ///< edge views, above the stub
inline constexpr double below_edge_mm = 18.5;    ///< edge views, below

/// Of a plate, along x or y: where rows of dimensions stand.
struct RowAxis {
    drawing::Measure measure = drawing::Measure::across;
    double low_in = 0.0, high_in = 0.0;  ///< of the plate, along the axis
    double beside_in = 0.0;              ///< the edge the rows stand beside
    double sign = 1.0;                   ///< of the rows' offset from there
    std::optional<double> edge_in = {};  ///< where extension lines of the plate's edges begin; absent: beside_in
};
/// Edge to hole, hole to hole, hole to edge, and over them the whole.
void add_hole_rows(drawing::Scene& scene, const model::Plate& plate, const Drafting& drafting, const RowAxis& axis);
/// Inward of the hole and above its center, off edge and extension lines; over it, and small, on a crowded plate.
void add_hole_ids(drawing::Scene& scene, const std::vector<model::Hole>& holes, double mm_per_in);

[[nodiscard]] drawing::Scene plan_view(const ViewSubject& subject);
/// How far callouts reach to the right of the plate, mm.
[[nodiscard]] double callouts_reach_mm(const ViewSubject& subject);

/// What a hole takes along an axis, in.
struct Extent {
    double low_in = 0.0, high_in = 0.0;
};
[[nodiscard]] Extent extent(const model::Hole& hole, model::PlanAxis along);

/// Along x: the front view, with the weld's symbol and the thickness. Along y: the right side view.
[[nodiscard]] drawing::Scene edge_view(const ViewSubject& subject, model::PlanAxis along);
/// How far the weld's symbol reaches to the right of the post's axis in the front view, mm; 0 without a weld.
[[nodiscard]] double weld_symbol_reach_mm(const ViewSubject& subject);

/// A polygon with more corners than a triangle takes room for a row of their dimensions.
[[nodiscard]] bool has_inner_corners(const model::Outline& outline);
/// Whether the plan gives every corner's place; else a schedule must.
[[nodiscard]] bool corners_are_dimensioned(const ViewSubject& subject);

}  // namespace toehold::paper::shop
