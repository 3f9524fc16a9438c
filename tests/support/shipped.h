#pragma once
// What data/ ships: the catalogs, read once, and the demo details by their file's name without `.xml`.
#include "catalog/catalog.h"
#include "catalog/resolve.h"

#include <stdexcept>
#include <string>
#include <vector>

namespace toehold::test {

[[nodiscard]] const catalog::Catalog& shipped_catalog();

/// Throws std::runtime_error where no row has the id.
template <class Row>
[[nodiscard]] const Row& row(const std::vector<Row>& rows, const std::string& id) {
    const Row* const found = catalog::find(rows, id);
    if (found == nullptr) throw std::runtime_error("the shipped catalogs have no row " + id);
    return *found;
}

[[nodiscard]] std::vector<std::string> demo_names();  ///< in alphabetical order
/// Throws std::runtime_error where there is no such detail; the next two also where a catalog lacks what it names.
[[nodiscard]] model::BaseDetail demo_detail(const std::string& name);
[[nodiscard]] catalog::Resolved resolved_by_shipped(const model::BaseDetail& detail);
[[nodiscard]] catalog::Resolved shipped_detail(const std::string& name);

}  // namespace toehold::test
