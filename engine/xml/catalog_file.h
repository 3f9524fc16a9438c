#pragma once
// Reading the catalogs of a data folder (data/catalog/*.xml and data/plates/*.xml).
#include "catalog/catalog.h"
#include "model/problem.h"

#include <filesystem>

namespace toehold::xml {

struct CatalogRead {
    catalog::Catalog catalog;
    model::Problems problems;
};

/// `data` is the folder that holds `catalog/` and `plates/`.
[[nodiscard]] CatalogRead read_catalog(const std::filesystem::path& data);

}  // namespace toehold::xml
