#pragma once
// What `size` works on: the space that a detail and the ranges asked for make.
#include "catalog/catalog.h"
#include "cli/size/command.h"
#include "format/phrase.h"
#include "search/space/space.h"

#include <optional>
#include <string>

namespace toehold::cli {

struct SizeInput {
    catalog::Catalog catalog;
    search::Space space;
    std::string context;  ///< what judgements depend on besides: program, catalogs and plug-ins, by their digests
};

/// Absent, with every reason said on standard error, where the detail, the ranges or the catalogs cannot be used.
[[nodiscard]] std::optional<SizeInput> size_input(const SizeCommand& command, const format::Locale& locale);

}  // namespace toehold::cli
