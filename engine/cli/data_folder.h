#pragma once
// Where the catalogs are, and reading them.
#include "catalog/catalog.h"

#include <filesystem>
#include <optional>
#include <string>

namespace toehold::cli {

/// The folder named on the command line, else by TOEHOLD_DATA (either is taken as it is); else the first that exists
/// of: the installed one, the one in the source, and ../share/toehold beside the program. Empty: there is none.
[[nodiscard]] std::filesystem::path find_data_folder(const std::string& named);

/// The catalogs; absent, with every problem said on standard error, when they cannot be used.
[[nodiscard]] std::optional<catalog::Catalog> load_catalog(const std::string& named);

}  // namespace toehold::cli
