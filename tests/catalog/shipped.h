#pragma once
// The catalogs as they are shipped, read once, and a row of them by its id.
#include "catalog/catalog.h"

#include <stdexcept>
#include <string>

namespace toehold::test {

[[nodiscard]] const catalog::Catalog& shipped_catalog();

template <class Row>
[[nodiscard]] const Row& row(const std::vector<Row>& rows, const std::string& id) {
    const Row* const found = catalog::find(rows, id);
    if (found == nullptr) throw std::runtime_error("the shipped catalogs have no row " + id);
    return *found;
}

}  // namespace toehold::test
