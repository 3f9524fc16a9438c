#pragma once
// Reading the catalogs, with what is wrong said on standard error.
#include "catalog/catalog.h"
#include "format/phrase.h"

#include <optional>
#include <string>

namespace toehold::cli {

/// The catalogs; absent, with every problem said on standard error, when they cannot be used.
[[nodiscard]] std::optional<catalog::Catalog> load_catalog(const std::string& named, const format::Locale& locale);

}  // namespace toehold::cli
