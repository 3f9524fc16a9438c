#pragma once
#include "model/framing.h"

namespace toehold::test {

/// Nothing of it is symmetric: joists along y, a rim beyond their upper ends, a ledger, and a block each way.
inline model::Framing lopsided_framing() {
    model::Framing all;
    all.joists =
        model::Joists{model::PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -7.0}, {"J2", 9.0}}, -96.0, 6.0};
    model::Rim rim;
    rim.id = "R1";
    rim.at_in = 6.75;
    rim.from_in = -10.0;
    rim.to_in = 12.0;
    rim.width_in = 1.5;
    rim.depth_in = 9.25;
    all.rims = {rim};
    model::JoistSupport ledger;
    ledger.id = "S1";
    ledger.kind = model::JoistSupport::Kind::ledger;
    ledger.at_in = -96.0;
    all.supports = {ledger};
    model::Block across;
    across.id = "B1";
    across.from_in = -6.25;
    across.to_in = 8.25;
    across.across_in = 2.0;
    across.width_in = 3.5;
    across.depth_in = 7.25;
    across.from_end = {"J1", model::ToeNails{0.162, 3.5, 4, 0.0}};
    across.to_end = {"J2", {}};
    model::Block outward = across;
    outward.id = "B2";
    outward.along = model::PlanAxis::y;
    outward.from_in = 3.75;
    outward.to_in = 6.0;
    outward.across_in = -3.0;
    outward.from_end = {"B1", {}};
    outward.to_end = {"R1", {}};
    all.blocks = {across, outward};
    return all;
}

}  // namespace toehold::test
