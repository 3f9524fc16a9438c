#pragma once
// A thin line from words to what they speak of, with an arrow's head.
#include "drawing/scene/scene.h"

namespace toehold::paper::shop {

/// `mm_per_in`: mm of lettering for an inch of the thing drawn, so that the head points along the line.
void add_leader(drawing::Scene& scene, const drawing::Place& from, const drawing::Place& tip, double mm_per_in);

}  // namespace toehold::paper::shop
