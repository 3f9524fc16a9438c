#pragma once
// The plate's straight sections, and the strip that is worst on them under any push. What a strip needs at most is
// known for next to nothing (the highest pressure on all of the area beyond; every anchor's moment on the narrowest
// strip), so only those that may be worst are worked out.
#include "checks/plate/plate_geometry.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace toehold::checks {

/// A section with what every push meets there.
struct StripPlace {
    mechanics::PlateSection section;
    std::vector<mechanics::AreaAtSection> areas;
    /// Of a section at the post: what a strip needs at most for a pound on each anchor, 1.
    std::vector<double> at_most_for_tension = {};
};

struct PlateStrips {
    PlateGeometry geometry;
    std::vector<mechanics::Shape> patches;  ///< outlines of the supports; empty where they are not known
    std::vector<StripPlace> places;
};
[[nodiscard]] PlateStrips plate_strips(const CheckInput& input, const PostFoot& foot);

struct GoverningStrip {
    mechanics::PlateStrip strip;
    std::optional<mechanics::PlateSection> section;  ///< absent: nothing bends the plate there
    std::size_t state = 0;
};
struct WorstStrips {
    GoverningStrip anchors, bearing, beyond_anchors;
};
/// Of all states; of equal ones the first state's.
[[nodiscard]] WorstStrips worst_strips(const demand::Demand& demand, const PlateStrips& strips);
/// Of one state's anchors.
[[nodiscard]] GoverningStrip worst_anchor_strip(const demand::Demand& demand, const PlateStrips& strips,
                                                std::size_t state);

}  // namespace toehold::checks
