#pragma once
// The plate's straight sections, and the strip that is worst on them under any push.
#include "checks/post/foot.h"
#include "checks/registry.h"
#include "mechanics/plate_strip/strip.h"

#include <cstddef>
#include <span>
#include <vector>

namespace toehold::checks {

/// A section with what every push meets there.
struct StripPlace {
    mechanics::PlateSection section;
    std::vector<mechanics::AreaAtSection> areas;
};

struct PlateStrips {
    mechanics::FootOutline foot;
    mechanics::PlateShape plate;
    std::vector<StripPlace> places;
    std::vector<mechanics::AnchorFootprint> anchors;
    std::vector<mechanics::Polygon> patches;  ///< outlines of the supports; empty where they are not known
};
/// A washer or head carries the plate around a hole that it covers; the holes that none covers are openings.
[[nodiscard]] std::vector<mechanics::PlateHole> open_holes(const PlateStrips& strips);
[[nodiscard]] PlateStrips plate_strips(const CheckInput& input, const PostFoot& foot);

struct GoverningStrip {
    mechanics::PlateStrip strip;
    const mechanics::PlateSection* section = nullptr;  ///< none: nothing bends the plate there
    std::size_t state = 0;
};
struct WorstStrips {
    GoverningStrip anchors, bearing, beyond_anchors;
};
/// Over the states named. Sections point into `strips`.
[[nodiscard]] WorstStrips worst_strips(const CheckInput& input, const PlateStrips& strips,
                                       std::span<const std::size_t> states);

[[nodiscard]] std::vector<mechanics::PatchForce> bearing_of(const demand::State& state);
[[nodiscard]] std::vector<double> tensions_of(const demand::State& state);

}  // namespace toehold::checks
