#pragma once
// What most commands on one base detail begin with: plug-ins, catalogs, the file.
#include "catalog/catalog.h"
#include "catalog/resolve.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::cli {

struct OpenedDetail {
    catalog::Catalog catalog;
    catalog::Resolved resolved;
    std::string sha256;  ///< of the file
};

/// `data`: folder of the catalogs, or empty. Absent, with the reasons said, where a plug-in, a catalog or the file
/// cannot be used.
[[nodiscard]] std::optional<OpenedDetail> open_detail(const std::string& file, const std::string& data,
                                                      const std::vector<std::string>& plugins,
                                                      const format::Locale& locale);

}  // namespace toehold::cli
