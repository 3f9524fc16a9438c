#pragma once
// The drawings of one detail. Each draws what there is: a detail that is not resolved, or not valid yet, is drawn
// without what it lacks, so that a sheet never goes blank under an edit.
#include "drawing/scene/scene.h"
#include "format/phrase.h"
#include "model/framing.h"
#include "model/part.h"

#include <vector>

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::model {
struct BaseDetail;
}

namespace toehold::drawing {

struct Overlay;
struct PolarCurve;

struct Subject {
    const model::BaseDetail& detail;
    const catalog::Resolved* resolved = nullptr;  ///< of this detail; fasteners are drawn to size where it is there
    const Overlay* overlay = nullptr;
    format::Locale locale = {};
};

struct PlanOptions {
    bool dimensions = true;  ///< to edges and between holes
    bool framing = true;     ///< what lies below, as hidden edges
    std::vector<model::PartId>
        measured;  ///< parts whose distances to the plate's edges are dimensioned (under the hand)
};
/// The plate from above; x to the right, y (outward) up. Of a post on a member's side the member's face, where its
/// anchors stand: x to the right, z up, 0 at the member's top edge.
[[nodiscard]] Scene plan(const Subject& subject, const PlanOptions& options);

/// An upright plane; along y (x = at) it shows y to the right, along x (y = at) it shows x to the right. z is up.
struct SectionPlane {
    model::PlanAxis along = model::PlanAxis::y;
    double at_in = 0.0;
};
/// Through the row of anchors nearest to `part`'s, across the blocks where they run across that row; else through the
/// first anchor.
/// Of a post on a member's side: through the post, outward.
[[nodiscard]] SectionPlane section_plane(const model::BaseDetail& detail, const model::PartId& part);
/// Plate, layers, blocking and joists cut by the plane, with each anchor of its row: shank, thread, tip against the
/// block's depth, the embedment dimensioned. Of a post on a member's side: through the post's axis, whatever the plane.
[[nodiscard]] Scene section(const Subject& subject, const SectionPlane& plane);

/// What a mount shows from above besides its plan: of a post on a member's side the joint with what backs it, boards
/// off; no items for a plate, whose plan it is.
[[nodiscard]] Scene from_above(const Subject& subject);

/// The guard seen along the rail: y (outward) to the right, z up; post, plate and framing small, the push at its height
/// with the lever arm dimensioned.
[[nodiscard]] Scene elevation(const Subject& subject);

/// Tension of each anchor against the direction of the push, with the push shown as a pointer (the push is a part).
/// Radius in inches of the scene is the tension over the largest of all, so that the outer circle is 1.
[[nodiscard]] Scene polar_envelope(const std::vector<PolarCurve>& curves, const Overlay& overlay,
                                   const model::PartId& selected_part);

}  // namespace toehold::drawing
