#include "cli/data_folder.h"

#include "cli/console.h"
#include "xml/catalog/catalog_file.h"

namespace toehold::cli {

std::optional<catalog::Catalog> load_catalog(const std::string& named, const format::Locale& locale) {
    const std::filesystem::path folder = xml::find_data_folder(named);
    if (folder.empty()) {
        complain(format::phrase("catalogs not found. Name their folder with --data DIR or the variable TOEHOLD_DATA."),
                 locale);
        return std::nullopt;
    }
    if (!xml::holds_catalogs(folder)) {
        complain(format::phrase("\"{}\" is not a data folder: it has no folder named catalog", folder.string()),
                 locale);
        return std::nullopt;
    }
    xml::CatalogRead read = xml::read_catalog(folder);
    complain(read.problems, locale);
    if (!read.problems.empty()) return std::nullopt;
    return std::move(read.catalog);
}

}  // namespace toehold::cli
