#pragma once
// The bearing pressure under a plate, found again from each support's resultant, and the part of it beyond a section.
#include "checks/plate/plate_section.h"
#include "demand/demand.h"
#include "mechanics/plane/geometry.h"

#include <vector>

namespace toehold::checks {

/// Pressure over one support: intercept + slope_x x + slope_y y, psi, over `loaded`. A plate that stays plane on an
/// even bed has this shape, and one resultant has one such pressure.
struct Pressure {
    mechanics::Polygon loaded;
    double intercept_psi = 0.0;
    double slope_x_psi_per_in = 0.0;
    double slope_y_psi_per_in = 0.0;
    /// Without a polygon: the whole force at the point of highest pressure, on the safe side.
    double force_lb = 0.0;
    model::Position at;
};

/// One for every support of the state that bears. `patches`: demand::find_bed's outlines, in the order of the supports.
[[nodiscard]] std::vector<Pressure> pressures(const demand::State& state,
                                              const std::vector<mechanics::Polygon>& patches);

/// Bearing beyond a section.
struct BearingBeyond {
    double force_lb = 0.0;
    double moment_lb_in = 0.0;  ///< about the section
    double along_in = 0.0;      ///< place of the resultant along the section
    Interval extent;            ///< of the loaded area, along the section
};
[[nodiscard]] BearingBeyond bearing_beyond(const PlateSection& section, const std::vector<Pressure>& pressures);

}  // namespace toehold::checks
