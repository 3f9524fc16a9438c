#pragma once
// How strong a plate can be at most: the kinematic (upper bound) theorem of limit analysis, K.W. Johansen's yield-line
// method. A pattern of straight hinges makes a mechanism of the plate; the plate cannot carry loads whose work on it is
// more than the hinges take, their plastic moment times length times turn. The worst of many patterns counts:
//   - straight lines across the plate that leave the post on one side, at every angle, at the post and beyond it, and
//     through every hole, whose lengths are taken off;
//   - patterns round the post: a ring of hinges between the post and a plate that tilts about any line as one piece.
// The post's foot holds the plate clamped. in, lb; a moment per inch of width is lb.
#include "mechanics/plate_limit/moment_field.h"
#include "mechanics/plate_strip/section.h"

#include <cstddef>
#include <span>
#include <vector>

namespace toehold::mechanics {

enum class YieldShape { across, around };

struct YieldPattern {
    YieldShape shape = YieldShape::across;
    double moment_needed_lb = 0.0;  ///< plastic moment per inch below which the loads turn this mechanism
    double normal_rad = 0.0;        ///< across: square to the line, away from the post; around: the way it tilts
    double offset_in = 0.0;         ///< across: of the line from the post's axis; around: of the line it tilts about
    double length_in = 0.0;         ///< across: of metal on the line
    double spread_in = 0.0;         ///< around: of the ring's outer hinges from the post
};

/// A straight hinge that leaves the post on the near side.
struct YieldLine {
    double normal_rad = 0.0;
    double normal_x = 0.0, normal_y = 0.0;
    double offset_in = 0.0;
    double metal_in = 0.0;  ///< length less holes, >= 0
};

/// Every straight line that is searched.
[[nodiscard]] std::vector<YieldLine> yield_lines(const FootOutline& foot, const PlateShape& plate);
/// What is needed against the turning of all that lies past the line; loads that oppose each other count against each
/// other. Infinite on a line without metal.
[[nodiscard]] double moment_needed_lb(const YieldLine& line, std::span<const PointLoad> loads);

/// A band round the post, outside of which the plate tilts as one piece.
struct YieldBand {
    FootOutline foot;
    double way_rad = 0.0;
    Point way;  ///< unit: the plate lifts by way . p - offset
    double offset_in = 0.0;
    double width_in = 0.0;
    double taken_in = 0.0;  ///< work of its hinges for a plastic moment of one and a tilt of one
};
/// Every band that is searched, within the plate's outline; none where the plate leaves no room for one.
[[nodiscard]] std::vector<YieldBand> yield_bands(const FootOutline& foot, const PlateShape& plate);

/// What loads do on a tilt about any line, of all bands of one width: force and moments of what each gets of the tilt.
struct BandLoad {
    double force_lb = 0.0;
    double about_y_lb_in = 0.0, about_x_lb_in = 0.0;  ///< force times x, force times y
};
[[nodiscard]] BandLoad work_of(const FootOutline& foot, double width_in, std::span<const PointLoad> loads);
[[nodiscard]] double moment_needed_lb(const YieldBand& band, const BandLoad& load);

/// Every pattern searched on one plate.
struct YieldPatterns {
    std::vector<YieldLine> lines;
    std::vector<YieldBand> bands;
};
[[nodiscard]] YieldPatterns yield_patterns(const FootOutline& foot, const PlateShape& plate);
[[nodiscard]] YieldPattern worst_pattern(const YieldPatterns& patterns, std::span<const PointLoad> loads);

}  // namespace toehold::mechanics
