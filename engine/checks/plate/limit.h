#pragma once
// What the whole plate needs by limit analysis, beside what its strips need: a moment field in equilibrium, which
// proves that so much suffices, and the weakest pattern of yield lines, below which it cannot stand.
#include "checks/plate/strips.h"
#include "mechanics/yield_line/yield_line.h"

#include <optional>

namespace toehold::checks {

/// Plastic moments per unit of width, lb.
struct PlateBounds {
    double field_lb = 0.0;            ///< suffices; infinite where none was found or the strip is as good as can be
    mechanics::YieldPattern pattern;  ///< is needed
};

/// The most that the tensions of any state need of any straight yield line, with each footprint as points on its rim.
struct LineNeed {
    double moment_lb = 0.0;  ///< plastic moment per unit of width
    std::size_t state = 0;
};
[[nodiscard]] LineNeed most_needed_of_a_line(const demand::Demand& demand, const PlateGeometry& geometry,
                                             const std::vector<mechanics::YieldLine>& lines);

class PlateLimit {
  public:
    /// `input` and `strips` outlive this. Where the strip or a field suffices with `good_enough_lb`, nothing better is
    /// looked for.
    PlateLimit(const CheckInput& input, const PlateStrips& strips, double good_enough_lb = 0.0);

    /// Of the state whose tensions need the most of a straight yield line.
    [[nodiscard]] std::size_t worst_state_of_tension() const;
    /// Under the tensions alone, and together with the bearing of the same state; the worse. Fields that suffice with
    /// `enough_lb` or less are not told from each other: what comes back of them is no more than that.
    [[nodiscard]] PlateBounds under_tension(const GoverningStrip& strip, double enough_lb = 0.0);
    /// Under the bearing alone: a plane pressure over each support, raised past the strip's section to what the strip
    /// counts there at most.
    [[nodiscard]] PlateBounds under_bearing(const GoverningStrip& strip);

  private:
    /// The field under these loads; none is looked for where the strip's `strip_lb` is good enough, or no more than
    /// the yield lines need under them: none could do better.
    [[nodiscard]] double field_lb(const std::vector<mechanics::PointLoad>& loads, double pattern_lb, double strip_lb,
                                  double enough_lb);

    const CheckInput& input_;
    const PlateStrips& strips_;
    double good_enough_lb_;
    mechanics::YieldPatterns patterns_;
    bool fields_made_ = false;                       ///< by the first that asks: many plates are never asked about
    std::optional<mechanics::MomentFields> fields_;  ///< absent: the plate cannot be meshed
};

}  // namespace toehold::checks
