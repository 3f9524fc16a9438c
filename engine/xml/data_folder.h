#pragma once
// Where the catalogs and the stock plates are.
#include <filesystem>
#include <string>

namespace toehold::xml {

/// The folder named by the user, else by TOEHOLD_DATA (either is taken as it is); else the first that exists of: the
/// installed one, the one in the source, and ../share/toehold beside the program. Empty: there is none.
[[nodiscard]] std::filesystem::path find_data_folder(const std::string& named);
/// Whether the folder has the shape of a data folder.
[[nodiscard]] bool holds_catalogs(const std::filesystem::path& folder);

}  // namespace toehold::xml
