#pragma once
// Strips of a plate that carry forces beyond a section back to it: the strip method (common practice). Each anchor
// spreads at 45 degrees from its center or, close to the section, from the edge of its washer or head; anchors whose
// spreads overlap share one strip. Bearing spreads at 45 degrees from the length
// it is spread over. Tension and bearing bend the plate opposite ways and are never set off against each other. in, lb.
#include "mechanics/plate_strip/bearing_bound.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

/// Where an anchor presses on the plate: under the rim of its washer or head.
struct AnchorFootprint {
    Point center;
    double radius_in = 0.0;  ///< >= 0; 0: at the center alone
};

/// One anchor's tension beyond a section.
struct StripAnchor {
    std::size_t anchor = 0;
    double tension_lb = 0.0;
    double arm_in = 0.0;  ///< moment over tension: mean distance beyond the section, nothing short of it, of the rim
    bool across = false;  ///< the section passes under the washer or head
};

struct PlateStrip {
    Interval span;  ///< before the plate's edges and holes cut it
    double moment_lb_in = 0.0;
    double width_in = 0.0;             ///< of metal
    std::vector<StripAnchor> anchors;  ///< empty: bearing
    BearingBeyond bearing;
    std::vector<SupportBearing> supports;  ///< the bearing at most, support by support; empty: of a plane pressure

    /// Moment per inch of width; infinite where no metal is left to carry one.
    [[nodiscard]] double intensity_lb() const;
};

/// Mean over a rim, whose center lies `beyond_in` past a line, of the distance past the line, nothing short of it: the
/// distance itself where all of the rim lies past it, radius / pi where the line halves it.
[[nodiscard]] double mean_distance_beyond_in(double beyond_in, double radius_in);
/// Strips of the anchors that pull and press on the plate beyond the section. `tension_lb` and `anchors` in one order.
[[nodiscard]] std::vector<PlateStrip> anchor_strips(const PlateSection& section, std::span<const double> tension_lb,
                                                    std::span<const AnchorFootprint> anchors);
/// The worse, to the inch of width, of two readings of the bearing: a plane pressure over each support, and the most
/// that its resultant and highest pressure allow. Never worse than the highest pressure on all of the area beyond.
/// `areas`: one for every support, or none, where their outlines are not known.
[[nodiscard]] PlateStrip bearing_strip(const PlateSection& section, std::span<const AreaAtSection> areas,
                                       std::span<const PatchForce> supports, std::span<const PlanePressure> plane);
/// What the bearing's strip can need of the plate at most, lb: the highest pressure on all of the area beyond. Costs
/// next to nothing; infinite where the supports' outlines are not known.
[[nodiscard]] double greatest_intensity_lb(const PlateSection& section, std::span<const AreaAtSection> areas,
                                           std::span<const PatchForce> supports);

}  // namespace toehold::mechanics
