#pragma once
// What came of a search, for a terminal: the front as a table, or, where nothing holds, what stops it and the nearest
// miss.
#include "format/phrase.h"
#include "search/run/run.h"

#include <cstddef>
#include <string>

namespace toehold::exporting {

struct SearchTextOptions {
    format::Locale locale;
    std::size_t top = 10;  ///< results of the front shown
    std::string currency;  ///< of the costs; empty: there is no price table, and no cost is shown
};

/// `name`: of the detail, as the user named its file.
[[nodiscard]] std::string search_text(const std::string& name, const search::Space& space,
                                      const search::Outcome& outcome, const SearchTextOptions& options);

}  // namespace toehold::exporting
