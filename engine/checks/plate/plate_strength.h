#pragma once
// What a strip of plate carries in bending, by its metal's standard.
#include "checks/basis/metal_basis.h"

namespace toehold::checks {

/// Usable moment over a width of plate, lb in. `welded`: the section lies beside a weld, which softens aluminum; the
/// whole width is then taken as softened. Steel: AISC 360-16 F11; aluminum: Aluminum Design Manual 2020 F.2 (from
/// memory).
[[nodiscard]] Capacity plate_moment(const catalog::Metal& metal, double width_in, double thickness_in, bool welded,
                                    const model::Basis& basis);

}  // namespace toehold::checks
