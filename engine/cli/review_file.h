#pragma once
// From a file's name to its detail and its review, with what is wrong as problems. Nothing is printed here, and nothing
// is shared but the catalog, so that several threads may do this at once.
#include "catalog/resolve.h"
#include "review/review.h"
#include "xml/detail/detail_file.h"

#include <optional>
#include <string>

namespace toehold::cli {

inline constexpr std::string_view standard_input = "-";

/// `standard input` for `-`.
[[nodiscard]] std::string name_of(const std::string& file);

/// From a file, or from standard input, which can be read once.
[[nodiscard]] xml::DetailRead read_named(const std::string& file);

struct ResolvedFile {
    std::optional<catalog::Resolved> resolved;  ///< absent when there are problems
    std::string sha256;
    model::Problems problems;
};
[[nodiscard]] ResolvedFile resolve_file(const std::string& file, const catalog::Catalog& catalog);

}  // namespace toehold::cli
