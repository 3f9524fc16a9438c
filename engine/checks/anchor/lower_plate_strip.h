#pragma once
// A strip of metal under the wood that several bolts pull up: how the wood's pressure may lie along it, and what bends
// it. Each way of lying is in balance with the bolts as they pull, so the strip that neither crushes the wood nor
// yields under the best of them holds (lower bound theorem; the metal bends and the wood crushes without breaking). lb,
// in.
#include <vector>

namespace toehold::checks {

struct StripBolt {
    double at_in = 0.0;  ///< along the strip
    double tension_lb = 0.0;
};

/// An even pressure along part of the strip.
struct StripPressure {
    double from_in = 0.0, to_in = 0.0;
    double lb_per_in = 0.0;
};

/// Largest size of the strip's moment between its ends under the bolts and the pressures, which must balance.
[[nodiscard]] double strip_moment_lb_in(const std::vector<StripBolt>& bolts,
                                        const std::vector<StripPressure>& pressures);

struct StripStrength {
    double lb_per_in = 0.0;     ///< what the wood takes over the strip's width, > 0
    double moment_lb_in = 0.0;  ///< of the strip, > 0
};

struct StripUse {
    std::vector<StripPressure> pressures;  ///< empty: none in balance lies on the wood
    double lb_per_in = 0.0;                ///< the largest
    double moment_lb_in = 0.0;
    double ratio = 0.0;  ///< the larger of both over their strengths
};

/// The easiest of: one even pressure about the bolts' resultant, of any length that the strip between `from_in` and
/// `to_in` has on both sides; or an equal length under each bolt, evenly about it and clear of its neighbors'.
[[nodiscard]] StripUse best_strip(const std::vector<StripBolt>& bolts, double from_in, double to_in,
                                  const StripStrength& strength);

}  // namespace toehold::checks
