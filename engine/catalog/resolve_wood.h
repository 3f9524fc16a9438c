#pragma once
// The part of `resolve` that finds the wood of a member.
#include "catalog/resolve.h"

#include <optional>
#include <string_view>

namespace toehold::catalog {

/// A sawn member as a detail describes it.
struct WoodMember {
    std::string_view species, grade;
    double width_in = 0.0;
    double depth_in = 0.0;
};

/// Species and grade for the member's section, whichever way up it lies. Absent, with a problem, when an id is
/// unknown, when the species has no such grade, or when the grade is not listed for that section.
[[nodiscard]] std::optional<MemberMaterial> resolve_wood(const WoodMember& member, const Catalog& catalog,
                                                         std::string_view element, model::Problems& problems);

}  // namespace toehold::catalog
