#pragma once
// The part of `resolve` that finds the metal of a post, a rail, a plate.
#include "catalog/catalog.h"
#include "model/post.h"
#include "model/problem.h"

#include <optional>
#include <string>
#include <string_view>

namespace toehold::catalog {

/// A metal with strengths of its own; an empty row where the id is unknown. A problem there, and where its standard
/// guarantees no strength.
[[nodiscard]] Metal resolve_metal(const std::string& id, const Catalog& catalog, std::string_view element,
                                  model::Problems& problems);

/// A tube's, whose certificate may give what its standard does not. A certificate stands in for strengths a standard
/// does not give; it does not raise those it gives.
[[nodiscard]] Metal resolve_tube_metal(const std::string& id, const std::optional<model::Certificate>& certificate,
                                       const Catalog& catalog, const std::string& element, model::Problems& problems);

}  // namespace toehold::catalog
