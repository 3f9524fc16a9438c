#pragma once
#include "support/example.h"

namespace toehold::test {

/// The example on one block under the whole plate, with fixed stiffness, so that the bed is uniform.
inline catalog::Resolved uniform_bed(double bed_psi_per_in, double anchor_lb_per_in) {
    catalog::Resolved resolved = example_resolved();
    resolved.detail.framing.blocks = {resolved.detail.framing.blocks[0]};
    resolved.detail.framing.blocks[0].across_in = 0.0;
    resolved.detail.framing.blocks[0].width_in = 20.0;
    resolved.blocks.resize(1);
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat->member = 0;
    resolved.detail.basis.stiffness = model::FixedStiffness{bed_psi_per_in, anchor_lb_per_in, "test"};
    return resolved;
}

}  // namespace toehold::test
