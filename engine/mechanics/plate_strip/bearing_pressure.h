#pragma once
// The bearing pressure under a plate, found again from each support's resultant, and the part of it beyond a section.
// in, lb, psi.
#include "mechanics/plane/shape.h"
#include "mechanics/plate_strip/section.h"
#include "mechanics/rigid_plate/rigid_plate.h"

#include <optional>
#include <span>
#include <vector>

namespace toehold::mechanics {

/// Pressure over one support, linear in plan where it is above 0. A plate that stays plane on an even bed has this
/// shape, and one resultant has one such pressure.
struct PlanePressure {
    std::optional<ShapePart> loaded;  ///< of the support's outline; absent: the whole force acts at one point
    LinearField psi;
    double force_lb = 0.0;
    Point at;  ///< of its resultant; of a force at one point, where it presses most, on the safe side
};

/// One for every support that bears. `patches`: the supports' outlines under the plate, in their order, which outlive
/// the result; a support without one has its force at a point.
[[nodiscard]] std::vector<PlanePressure> plane_pressures(std::span<const PatchForce> supports,
                                                         std::span<const Shape> patches);

/// Bearing beyond a section.
struct BearingBeyond {
    double force_lb = 0.0;
    double moment_lb_in = 0.0;  ///< about the section, >= 0
    double along_in = 0.0;      ///< place of the resultant along the section
    Interval extent;            ///< of the loaded area, along the section
};
[[nodiscard]] BearingBeyond bearing_beyond(const PlateSection& section, std::span<const PlanePressure> pressures);

}  // namespace toehold::mechanics
