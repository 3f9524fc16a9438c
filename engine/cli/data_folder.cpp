#include "cli/data_folder.h"

#include "cli/console.h"
#include "xml/catalog/catalog_file.h"

namespace toehold::cli {

std::optional<catalog::Catalog> load_catalog(const std::string& named) {
    const std::filesystem::path folder = xml::find_data_folder(named);
    if (folder.empty()) {
        complain("the catalogs were not found; name their folder with --data DIR or the variable TOEHOLD_DATA");
        return std::nullopt;
    }
    if (!xml::holds_catalogs(folder)) {
        complain("\"" + folder.string() + "\" is no data folder: it holds no folder named catalog");
        return std::nullopt;
    }
    xml::CatalogRead read = xml::read_catalog(folder);
    complain(read.problems);
    if (!read.problems.empty()) return std::nullopt;
    return std::move(read.catalog);
}

}  // namespace toehold::cli
