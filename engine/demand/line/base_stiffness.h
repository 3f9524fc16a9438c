#pragma once
// How stiffly a whole base, plate and framing, holds its post against turning: between two ends each way, as a line of
// guard asks for it.
//
// The two ends come from solves of their own, not from the demand's states: what pulls hardest on an anchor is a soft
// bed with stiff anchors or the reverse, while what turns least is both stiff, and what turns most is both soft.
#include "format/phrase.h"

#include <optional>

namespace toehold::catalog {
struct Resolved;
}

namespace toehold::demand {

class Kept;

/// Moment of a push at the guard's top about the bearing plane, over the turn of the post's foot, lb in per rad, > 0,
/// by the way the push goes in the post's own axes: +y, -y, +x, -x. A base lifts off its bed one way and not the other.
struct BaseStiffness {
    double outward = 0.0, inward = 0.0;  ///< pushes along y
    double right = 0.0, left = 0.0;      ///< pushes along x
    friend bool operator==(const BaseStiffness&, const BaseStiffness&) = default;
};

/// Soft: bed and anchors at the soft ends of their ranges, on framing that gives. Central: at the centers, on framing
/// that gives. Stiff: at the stiff ends, on framing that stands still. Where the file fixes the stiffness of bed and
/// anchors the three differ by the framing alone.
struct BaseStiffnessRange {
    BaseStiffness soft, central, stiff;
    /// Why the framing's give is not wholly in `soft` and `central`, which are then not the softest the base may be: a
    /// sentence for people. Empty: all of it is in.
    format::Phrase framing_lacks;
};

struct BaseStiffnessOutcome {
    std::optional<BaseStiffnessRange> range;  ///< absent: `failure` says why no number can be given
    format::Phrase failure;
};

/// Whatever directions and loads the detail asks for: four pushes of the code's 200 lb at `model::lever_height_in`,
/// which is the height the moment is about. A base on one-way springs turns in proportion to its push, but for
/// tightened anchors, which hold it stiffer under a small one: the stiff end is therefore of a quarter of that push,
/// about the least that a post keeps for itself. Twelve solves of one plate on the mesh a probe has.
[[nodiscard]] BaseStiffnessOutcome find_base_stiffness(const catalog::Resolved& resolved, Kept* kept = nullptr);

}  // namespace toehold::demand
