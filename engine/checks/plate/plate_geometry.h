#pragma once
// The plate, the post's foot on it and what presses on it, as the mechanics sees them.
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "mechanics/plate_strip/strip.h"

#include <vector>

namespace toehold::checks {

struct PlateGeometry {
    mechanics::FootOutline foot;
    mechanics::PlateShape plate;
    std::vector<mechanics::AnchorFootprint> anchors;
};
[[nodiscard]] PlateGeometry plate_geometry(const catalog::Resolved& resolved, const PostFoot& foot);

/// A washer or head carries the plate around a hole that it covers; the holes that none covers are openings.
[[nodiscard]] std::vector<mechanics::PlateHole> open_holes(const PlateGeometry& geometry);

[[nodiscard]] std::vector<mechanics::PatchForce> bearing_of(const demand::State& state);
[[nodiscard]] std::vector<double> tensions_of(const demand::State& state);

}  // namespace toehold::checks
