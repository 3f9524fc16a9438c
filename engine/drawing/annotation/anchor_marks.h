#pragma once
// The mark of an anchor on a drawing, made in one place for papers and window: its forces, and what the review's checks
// say of it.
#include "drawing/annotation/overlay.h"

#include <string>

namespace toehold::demand {
struct AnchorEnvelope;
}
namespace toehold::review {
struct Review;
}

namespace toehold::drawing {

/// What one anchor carries under the push shown.
struct ShownForce {
    std::optional<double> tension_lb;  ///< absent: the method has no value for it
    double shear_x_lb = 0.0, shear_y_lb = 0.0;
    double largest_tension_lb = 0.0;  ///< over all pushes
};

/// Worst check, its status, the largest ratio, and the capacity that stands against the anchor's largest tension, from
/// the review; without one, or where no check is about the anchor, the mark has no status. A least distance that is
/// kept is no measure of how hard the anchor works, and is passed over.
[[nodiscard]] AnchorMark anchor_mark(const std::string& id, const ShownForce& force, const review::Review* review);

/// The anchor's envelope; nullptr without a demand, or where the review knows no such anchor.
[[nodiscard]] const demand::AnchorEnvelope* envelope_of(const review::Review& review, const std::string& id);

}  // namespace toehold::drawing
