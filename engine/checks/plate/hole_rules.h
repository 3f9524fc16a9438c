#pragma once
// A hole in a part of metal, whatever the part: its distance from the nearest edge, and its anchor's shear leaning on
// it. AISC 360-16 J3.4 and J3.10; Aluminum Design Manual 2020 J.3 (from memory).
#include "checks/basis/metal_basis.h"

namespace toehold::catalog {
struct Anchor;
}

namespace toehold::checks {

/// `clear_in`: metal left between the hole and the nearest edge. The standard measures from the center of a standard
/// hole; measured from the hole as it is, a wider hole or a slot needs no rule of its own.
[[nodiscard]] CheckResult hole_edge(const catalog::Anchor& anchor, const catalog::Metal& metal, double clear_in);

struct DrilledMetal {
    const catalog::Metal& metal;
    double thickness_in = 0.0;
    Welding welding;
    format::Phrase thickness_name;  ///< `plate thickness`
};
/// Bearing or tear-out towards the nearest edge, whichever way the force points, lb.
[[nodiscard]] Capacity hole_bearing(const catalog::Anchor& anchor, const DrilledMetal& part, double clear_in,
                                    const model::Basis& basis);

}  // namespace toehold::checks
