#pragma once
// Whether lumber is incised for its preservative treatment: as the file states, else by species and treatment. The
// publisher of the NDS (awc.org, question on poor penetration of preservatives, read there) names Douglas fir, Hem-Fir
// and Spruce-Pine-Fir as commonly incised, and Southern Pine, Red Pine and Ponderosa Pine as species that take
// preservative readily and need none; of any other treated species incising is assumed, which is on the safe side.
#include "catalog/rows.h"
#include "checks/result.h"
#include "model/basis.h"
#include "resistance/wood/member_factors.h"

namespace toehold::checks {

/// Of sawn lumber. Throws nothing; a material of the file's own is not sawn, and never asked for.
[[nodiscard]] bool incised(const catalog::LumberGrade& grade, const model::Basis& basis);

/// C_i of a property that it touches: all but F_c,perp.
[[nodiscard]] Step incising_step(resistance::MemberProperty property, const catalog::LumberGrade& grade,
                                 const model::Basis& basis);

}  // namespace toehold::checks
