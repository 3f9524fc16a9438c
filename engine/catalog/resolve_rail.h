#pragma once
// The rail of a guard line with its catalog ids looked up.
#include "catalog/resolve.h"
#include "model/guard_line.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::catalog {

struct ResolvedRail {
    model::Rail rail;
    std::variant<Metal, MemberMaterial> material;  ///< a wood rail's: MemberMaterial
};

struct RailResolution {
    std::optional<ResolvedRail> rail;  ///< absent when there are problems
    model::Problems problems;          ///< an id no catalog knows, with the ids that come nearest
};

/// `element`: where a problem stands, `guard-lines/guard-line[L1]/rail`. A wood rail may be of one of the framing's own
/// materials, and counts as treated where the framing is.
[[nodiscard]] RailResolution resolve_rail(const model::Rail& rail, const model::Framing& framing,
                                          const Catalog& catalog, const std::string& element);

}  // namespace toehold::catalog
