#include "cli/data_folder.h"

#include "cli/console.h"
#include "xml/catalog_file.h"

#include <cstdlib>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;

fs::path beside_program() {
    std::error_code error;
    const fs::path program = fs::read_symlink("/proc/self/exe", error);
    return error ? fs::path() : program.parent_path().parent_path() / "share" / "toehold";
}

bool holds_catalogs(const fs::path& folder) {
    std::error_code error;
    return !folder.empty() && fs::is_directory(folder / "catalog", error);
}

}  // namespace

fs::path find_data_folder(const std::string& named) {
    if (!named.empty()) return named;
    const char* from_environment = std::getenv("TOEHOLD_DATA");
    if (from_environment != nullptr && *from_environment != '\0') return from_environment;
    for (const fs::path& folder : {fs::path(TOEHOLD_INSTALLED_DATA), fs::path(TOEHOLD_SOURCE_DATA), beside_program()}) {
        if (holds_catalogs(folder)) return folder;
    }
    return {};
}

std::optional<catalog::Catalog> load_catalog(const std::string& named) {
    const fs::path folder = find_data_folder(named);
    if (folder.empty()) {
        complain("the catalogs were not found; name their folder with --data DIR or the variable TOEHOLD_DATA");
        return std::nullopt;
    }
    if (!holds_catalogs(folder)) {
        complain("\"" + folder.string() + "\" is no data folder: it holds no folder named catalog");
        return std::nullopt;
    }
    xml::CatalogRead read = xml::read_catalog(folder);
    complain(read.problems);
    if (!read.problems.empty()) return std::nullopt;
    return std::move(read.catalog);
}

}  // namespace toehold::cli
