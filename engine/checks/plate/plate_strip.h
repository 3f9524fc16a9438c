#pragma once
// Strips of a plate that carry forces beyond a section back to it: the strip method (common practice). Each anchor
// spreads at 45 degrees; anchors whose spreads overlap share one strip. Bearing spreads at 45 degrees from the length
// it is spread over. Pull and bearing bend the plate opposite ways and are never set off against each other.
#include "checks/plate/plate_bearing_bound.h"
#include "checks/plate/plate_section.h"
#include "demand/demand.h"

#include <vector>

namespace toehold::checks {

/// One anchor's pull beyond a section.
struct Pull {
    std::size_t anchor = 0;
    double tension_lb = 0.0;
    double arm_in = 0.0;
};

struct Strip {
    Interval span;  ///< before the plate's edges and holes cut it
    double moment_lb_in = 0.0;
    double width_in = 0.0;    ///< of metal
    std::vector<Pull> pulls;  ///< empty: bearing
    BearingBeyond bearing;
    std::vector<SupportBearing> supports;  ///< the bearing at most, support by support; empty: of a plane pressure

    /// Moment per inch of width; infinite where no metal is left to carry one.
    [[nodiscard]] double intensity_lb() const;
};

/// `places`: of the anchors, in their order.
[[nodiscard]] std::vector<Strip> anchor_strips(const PlateSection& section, const demand::State& state,
                                               const std::vector<model::Position>& places);
/// The worse, to the inch of width, of two readings of the bearing: a plane pressure over each support, and the most
/// that its resultant and highest pressure allow. Never worse than the highest pressure on all of the area beyond.
[[nodiscard]] Strip bearing_strip(const PlateSection& section, const std::vector<AreaAtSection>& areas,
                                  const demand::State& state, const std::vector<Pressure>& plane);

}  // namespace toehold::checks
