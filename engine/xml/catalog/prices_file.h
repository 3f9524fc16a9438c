#pragma once
// A price table as a document of its own, `prices`: the one the data folder holds, or a user's in its place.
#include "catalog/catalog.h"
#include "catalog/prices.h"
#include "model/problem.h"

#include <filesystem>
#include <optional>
#include <string_view>

namespace toehold::xml {

struct PricesRead {
    std::optional<catalog::Prices> prices;  ///< absent when there is a problem
    model::Problems problems;               ///< `file` is set
};

/// Sizes, metals and grades are ids of this catalog.
[[nodiscard]] PricesRead read_prices(const std::filesystem::path& file, const catalog::Catalog& catalog);
[[nodiscard]] PricesRead read_prices_text(std::string_view text, const std::filesystem::path& file,
                                          const catalog::Catalog& catalog);

/// Where the data folder's own table is; it may have none.
[[nodiscard]] std::filesystem::path prices_file(const std::filesystem::path& data);

}  // namespace toehold::xml
