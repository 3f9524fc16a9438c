#pragma once
// A demo that holds, made light to solve: a rigid plate on a bed and anchors of fixed stiffness.
#include "catalog/resolve.h"
#include "support/shipped.h"

namespace toehold::test {

/// The anchors' largest tension is in proportion to the push's moment: straight up or down pulls far less.
[[nodiscard]] inline catalog::Resolved light_resolved() {
    model::BaseDetail detail = demo_detail("heron-landing-lags-in-deep-blocks");
    detail.basis.plate = model::PlateBehaviour::rigid;
    detail.basis.stiffness = model::FixedStiffness{20000.0, 40000.0, "round numbers for a test"};
    return resolved_by_shipped(detail);
}

}  // namespace toehold::test
