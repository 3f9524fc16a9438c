#pragma once
// The data folder with the catalogs and the stock plates (catalog/*.xml, plates/*.xml): where it is, and reading it.
#include "catalog/catalog.h"
#include "model/problem.h"

#include <filesystem>
#include <string>

namespace toehold::xml {

/// The folder named by the user, else by TOEHOLD_DATA (either is taken as it is); else the first that exists of: the
/// installed one, the one in the source, and ../share/toehold beside the program. Empty: there is none.
[[nodiscard]] std::filesystem::path find_data_folder(const std::string& named);
/// Whether the folder has the shape of a data folder.
[[nodiscard]] bool holds_catalogs(const std::filesystem::path& folder);

struct CatalogRead {
    catalog::Catalog catalog;
    model::Problems problems;
};

/// `data` is the folder that holds `catalog/` and `plates/`.
[[nodiscard]] CatalogRead read_catalog(const std::filesystem::path& data);

}  // namespace toehold::xml
