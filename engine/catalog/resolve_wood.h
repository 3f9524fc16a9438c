#pragma once
// The part of `resolve` that finds the wood of a member.
#include "catalog/resolve.h"

#include <optional>
#include <string_view>
#include <vector>

namespace toehold::catalog {

/// A member of wood as a detail describes it.
struct WoodMember {
    std::string_view species, grade;  ///< no grade: the species is one of the file's own materials
    double width_in = 0.0;
    double depth_in = 0.0;
};

/// Where wood is looked up: the catalogs, and what the file brings.
struct WoodSources {
    const Catalog& catalog;
    const std::vector<model::OwnWood>& materials;
};

/// Species and grade for the member's section, whichever way up it lies. Absent, with a problem, when an id is
/// unknown, when the species has no such grade, or when the grade is not listed for that section.
[[nodiscard]] std::optional<MemberMaterial> resolve_wood(const WoodMember& member, const WoodSources& sources,
                                                         std::string_view element, model::Problems& problems);

/// Whether the piece is incised where the file does not say: by its species, and by whether it is treated.
void set_incising(MemberMaterial& wood, bool treated);

}  // namespace toehold::catalog
