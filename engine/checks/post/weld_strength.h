#pragma once
// What a fillet weld of the post's foot carries per inch, by its metals' standards.
#include "checks/basis/metal_basis.h"
#include "model/post.h"

namespace toehold::checks {

/// What the weld joins.
struct WeldParts {
    const catalog::Metal& post;
    double post_wall_in = 0.0;
    const catalog::Metal& plate;
    double plate_in = 0.0;
};

/// Usable force per inch of weld, lb/in: the least of filler and both base metals. Steel: AISC 360-16 J2.4; stainless
/// steel with the larger factors of AISC Design Guide 27 (from memory); aluminum: Aluminum Design Manual 2020 J.2.2
/// (from memory). `missing` where filler and metals do not belong together.
[[nodiscard]] Capacity weld_strength(const model::Weld& weld, const catalog::Filler& filler, const WeldParts& parts,
                                     const model::Basis& basis);

}  // namespace toehold::checks
