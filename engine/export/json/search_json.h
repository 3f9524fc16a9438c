#pragma once
// What came of a search as JSON, schema `toehold.search/1`: names are only ever added. Weights in lb; an infinite ratio
// is null.
#include "search/run/run.h"

#include <string>

namespace toehold::exporting {

/// `file`: of the detail; `name`: of the space, as in the lines of its workers.
[[nodiscard]] std::string search_json(const std::string& file, const std::string& name, const search::Space& space,
                                      const search::Outcome& outcome, const std::string& currency);

}  // namespace toehold::exporting
