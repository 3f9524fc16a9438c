#pragma once
// The bearing pressure under a plate, found again from each support's resultant, and the part of it beyond a section.
// in, lb, psi.
#include "mechanics/plate_strip/section.h"
#include "mechanics/rigid_plate/rigid_plate.h"

#include <span>
#include <vector>

namespace toehold::mechanics {

/// Pressure over one support, linear in plan over `loaded`. A plate that stays plane on an even bed has this shape, and
/// one resultant has one such pressure.
struct PlanePressure {
    Polygon loaded;
    LinearField psi;
    /// Without a polygon: the whole force at the point of highest pressure, on the safe side.
    double force_lb = 0.0;
    Point at;
};

/// One for every support that bears. `patches`: the supports' outlines under the plate, in their order; a support
/// without one has its force concentrated.
[[nodiscard]] std::vector<PlanePressure> plane_pressures(std::span<const PatchForce> supports,
                                                         std::span<const Polygon> patches);

/// Bearing beyond a section.
struct BearingBeyond {
    double force_lb = 0.0;
    double moment_lb_in = 0.0;  ///< about the section, >= 0
    double along_in = 0.0;      ///< place of the resultant along the section
    Interval extent;            ///< of the loaded area, along the section
};
[[nodiscard]] BearingBeyond bearing_beyond(const PlateSection& section, std::span<const PlanePressure> pressures);

}  // namespace toehold::mechanics
