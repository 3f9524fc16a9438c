#include "support/shipped.h"

#include "xml/catalog/catalog_file.h"
#include "xml/detail/detail_file.h"

#include <algorithm>
#include <filesystem>

namespace toehold::test {
namespace {

std::filesystem::path demo_folder() { return std::filesystem::path(TOEHOLD_DATA_FOLDER) / "demo"; }

}  // namespace

const catalog::Catalog& shipped_catalog() {
    static const catalog::Catalog catalog = xml::read_catalog(TOEHOLD_DATA_FOLDER).catalog;
    return catalog;
}

std::vector<std::string> demo_names() {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(demo_folder())) {
        if (xml::document_kind(entry.path()) == xml::DocumentKind::detail)
            names.push_back(entry.path().stem().string());
    }
    std::sort(names.begin(), names.end());
    return names;
}

model::BaseDetail demo_detail(const std::string& name) {
    const xml::DetailRead read = xml::read_detail(demo_folder() / (name + ".xml"));
    if (!read.detail) throw std::runtime_error("cannot read the demo detail " + name);
    return *read.detail;
}

catalog::Resolved resolved_by_shipped(const model::BaseDetail& detail) {
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    if (!resolution.resolved)
        throw std::runtime_error("the shipped catalogs lack what this detail names: " + detail.name);
    return *resolution.resolved;
}

catalog::Resolved shipped_detail(const std::string& name) { return resolved_by_shipped(demo_detail(name)); }

}  // namespace toehold::test
