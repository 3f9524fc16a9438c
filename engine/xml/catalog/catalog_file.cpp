#include "xml/catalog/catalog_file.h"

#include "xml/catalog/prices_file.h"
#include "xml/catalog/rows.h"
#include "xml/detail/plates_file.h"
#include "xml/document/file.h"
#include "xml/document/strict_document.h"

#include <algorithm>
#include <cstdlib>
#include <system_error>

namespace toehold::xml {
namespace {

using format::phrase;

std::filesystem::path beside_program() {
    std::error_code error;
    const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", error);
    return error ? std::filesystem::path() : program.parent_path().parent_path() / "share" / "toehold";
}

void append(model::Problems& all, const model::Problems& more) { all.insert(all.end(), more.begin(), more.end()); }

/// The folder's XML files by name, so that the order of rows and of problems is always the same.
std::vector<std::filesystem::path> xml_files(const std::filesystem::path& folder, model::Problems& problems) {
    std::vector<std::filesystem::path> files;
    std::error_code failure;
    std::filesystem::directory_iterator entry(folder, failure);
    while (!failure && entry != std::filesystem::directory_iterator()) {
        if (entry->path().extension() == ".xml") files.push_back(entry->path());
        entry.increment(failure);
    }
    if (failure) {
        problems.push_back(file_problem(folder, phrase("the folder cannot be read: {}", failure.message())));
    } else if (files.empty()) {
        problems.push_back(file_problem(folder, phrase("the folder holds no XML file")));
    }
    std::sort(files.begin(), files.end());
    return files;
}

void read_document(const StrictDocument& document, CatalogIndex& index, catalog::Catalog& catalog, Reading& reading) {
    append(reading.problems, document.problems);
    if (document.root == nullptr) return;
    std::optional<ElementReader> root = open_root(*document.root, "catalog", reading);
    if (!root) return;
    read_wood(*root, index, catalog);
    read_fasteners(*root, index, catalog);
    read_metals(*root, index, catalog);
}

void read_catalog_file(const std::filesystem::path& file, CatalogIndex& index, CatalogRead& read) {
    const TextRead text = read_text(file);
    append(read.problems, text.problems);
    if (!text.text) return;
    Reading reading;
    index.begin(file);
    read_document(parse_strictly(*text.text), index, read.catalog, reading);
    finish_reading(reading, file);
    append(read.problems, reading.problems);
}

void read_plate_file(const std::filesystem::path& file, CatalogIndex& index, CatalogRead& read) {
    const PlatesRead document = read_plates(file);
    append(read.problems, document.problems);
    index.begin(file);
    for (const model::Plate& plate : document.plates) {
        const std::string path = "plate[" + plate.id + "]";
        const auto place = document.lines.find(path);
        const int line = place == document.lines.end() ? 0 : place->second;
        index.add(path, line, read.problems);
        index.refer(path, line, Named::metal, plate.metal);
        read.catalog.stock_plates.push_back(plate);
    }
}

/// A data folder of one's own may be without prices.
void read_own_prices(const std::filesystem::path& data, CatalogRead& read) {
    std::error_code error;
    const std::filesystem::path file = prices_file(data);
    if (!read.problems.empty() || !std::filesystem::exists(file, error)) return;
    PricesRead prices = read_prices(file, read.catalog);
    append(read.problems, prices.problems);
    if (prices.prices) read.catalog.prices = std::move(*prices.prices);
}

}  // namespace

bool holds_catalogs(const std::filesystem::path& folder) {
    std::error_code error;
    return !folder.empty() && std::filesystem::is_directory(folder / "catalog", error);
}

std::filesystem::path find_data_folder(const std::string& named) {
    if (!named.empty()) return named;
    const char* from_environment = std::getenv("TOEHOLD_DATA");
    if (from_environment != nullptr && *from_environment != '\0') return from_environment;
    for (const std::filesystem::path& folder : {std::filesystem::path(TOEHOLD_INSTALLED_DATA),
                                                std::filesystem::path(TOEHOLD_SOURCE_DATA), beside_program()}) {
        if (holds_catalogs(folder)) return folder;
    }
    return {};
}

CatalogRead read_catalog(const std::filesystem::path& data) {
    CatalogRead read;
    CatalogIndex index;
    for (const std::filesystem::path& file : xml_files(data / "catalog", read.problems)) {
        read_catalog_file(file, index, read);
    }
    for (const std::filesystem::path& file : xml_files(data / "plates", read.problems)) {
        read_plate_file(file, index, read);
    }
    append(read.problems, index.unanswered(read.catalog));
    read_own_prices(data, read);
    return read;
}

}  // namespace toehold::xml
