#pragma once
// Every row of the catalogs that a detail names, with where its numbers come from.
#include "catalog/resolve.h"

#include <string>
#include <vector>

namespace toehold::catalog {

struct NamedRow {
    std::string name;  ///< the row's, for people
    Source source;
};

/// In the order of the load path; a row named twice is here twice.
[[nodiscard]] std::vector<NamedRow> named_rows(const Resolved& resolved);

}  // namespace toehold::catalog
