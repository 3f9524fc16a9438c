#pragma once
// CDelta: how end distance and spacing between the least permitted and the full one lower a lateral value.
// NDS 2018 12.5.1, Tables 12.5.1A and 12.5.1B (from memory, to be confirmed). 1.0 for D < 1/4 in, whose placement the
// standard leaves to good practice. The least factor of any fastener in a group holds for the whole group (12.5.1.2).

namespace toehold::resistance {

/// How the fastener's force meets the end it is measured to.
enum class EndLoading {
    toward,  ///< a component along the grain presses towards this end ("parallel, tension"): full 7 D, least 3.5 D
    away,    ///< the component along the grain points away from it ("parallel, compression"): full 4 D, least 2 D
    perpendicular,  ///< none along the grain: full 4 D, least 2 D
};

/// End distance over the full one, at most 1; 0 below the least, where no value may be used. The full distance is
/// the softwoods' (hardwoods need 5 D instead of 7 D). A force at an angle takes the parallel limits: conservative.
[[nodiscard]] double end_distance_factor(double end_in, double diameter_in, EndLoading loading);

/// Spacing over the full 4 D, at most 1; 0 below 3 D. Taken for any direction of force and any two neighbours,
/// which is never more favorable than the tables.
[[nodiscard]] double spacing_factor(double spacing_in, double diameter_in);

}  // namespace toehold::resistance
