#pragma once
// The most that bearing can do beyond a section, whatever the shape of its pressure. A plate that bends does not press
// in a plane, and a solution gives of each support only its force F, the distance s of its resultant beyond the section
// and its highest pressure p. in, lb, psi.
//
// The lever arm of pressure is its distance beyond the section, nothing short of it. Over any straight line m (s + d)
// the arm stands out at most at the support's two ends, by Q when summed over the area. So the moment about the section
// is at most F m (s + d) + p Q: the line's part is that of the resultant, and on the rest lies at most the highest
// pressure. Every line is on the safe side; the least of many is taken.
#include "mechanics/plate_strip/bearing_pressure.h"

#include <cstddef>
#include <span>
#include <vector>

namespace toehold::mechanics {

/// A part of a support's area, cut off by a line parallel to a section.
struct CutArea {
    double distance_in = 0.0;  ///< of the cut from the section, away from it, >= 0
    double area_in2 = 0.0;     ///< outside the cut
    double moment_in3 = 0.0;   ///< of that area about the section, >= 0
    double along_in = 0.0;     ///< place of its centroid along the section
    Interval extent;           ///< along the section
};

/// A line m (s + d) over a support, and how far the lever arm stands out over it.
struct LeverLine {
    double slope = 0.0, offset_in = 0.0;  ///< m, d
    double above_in3 = 0.0;               ///< Q
    std::size_t pressed = 0;              ///< number of the cut ahead past which the highest pressure lies
};

/// A support's area about a section, cut ever farther from it.
struct AreaAtSection {
    double total_in2 = 0.0;
    double ahead_in = 0.0;              ///< how far it reaches beyond; negative where all of it lies short
    double back_in = 0.0;               ///< how far it reaches short; negative where all of it lies beyond
    std::vector<CutArea> ahead;         ///< from the section outwards to the far end
    std::vector<CutArea> back;          ///< from the section to the near end
    std::vector<LeverLine> lines = {};  ///< through every cut ahead and every cut back; none where all lies short
};
[[nodiscard]] AreaAtSection area_at_section(const PlateSection& section, const Shape& patch);

/// One support's share, at most.
struct SupportBearing {
    std::size_t support = 0;
    double force_lb = 0.0;   ///< F, of the whole support
    double arm_in = 0.0;     ///< s; may be negative
    double peak_psi = 0.0;   ///< p
    double beyond_lb = 0.0;  ///< of the force, beyond the section
    double moment_lb_in = 0.0;
    double line_slope = 0.0;      ///< m
    double line_offset_in = 0.0;  ///< d
    double above_line_in3 = 0.0;  ///< Q
    CutArea pressed;              ///< what the highest pressure lies over, beyond the section
};
[[nodiscard]] SupportBearing greatest_bearing(const PlateSection& section, const AreaAtSection& area,
                                              const PatchForce& force);

/// The same with p on all of the area beyond the section (m = 0): no pressure is larger anywhere.
[[nodiscard]] SupportBearing even_bearing(const AreaAtSection& area, const PatchForce& force);

enum class BearingBound {
    least,  ///< of all lines
    even,   ///< the highest pressure on all of the area beyond
};

/// All supports together; along the section, where the highest pressure lies. `areas`: one for every support; empty
/// where the supports' outlines are not known, and nothing comes back.
struct GreatestBearing {
    BearingBeyond total;
    std::vector<SupportBearing> supports;  ///< those that bear beyond the section
};
[[nodiscard]] GreatestBearing greatest_bearing(const PlateSection& section, std::span<const AreaAtSection> areas,
                                               std::span<const PatchForce> supports, BearingBound bound);

/// The total of `BearingBound::even` alone.
[[nodiscard]] BearingBeyond even_beyond(std::span<const AreaAtSection> areas, std::span<const PatchForce> supports);

}  // namespace toehold::mechanics
