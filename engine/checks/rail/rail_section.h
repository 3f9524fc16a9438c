#pragma once
// A metal rail's section as the strengths of a post's see it: width level across the rail, depth upright.
#include "catalog/resolve_rail.h"
#include "checks/post/metal_strength.h"

namespace toehold::checks {

/// Of a metal rail; throws std::bad_variant_access for a wood one. `free_in`: that nothing holds sideways.
[[nodiscard]] MetalSection rail_section(const catalog::ResolvedRail& rail, double free_in);
/// Nullptr: a metal rail.
[[nodiscard]] const model::WoodRail* wood_rail(const catalog::ResolvedRail& rail);
/// Of a wood rail; throws std::bad_variant_access for a metal one.
[[nodiscard]] const catalog::LumberGrade& rail_grade(const catalog::ResolvedRail& rail);

}  // namespace toehold::checks
