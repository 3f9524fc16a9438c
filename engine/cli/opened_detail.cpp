#include "cli/opened_detail.h"

#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/plugins.h"
#include "cli/review_file.h"

#include <utility>

namespace toehold::cli {

std::optional<OpenedDetail> open_detail(const std::string& file, const std::string& data,
                                        const std::vector<std::string>& plugins, const format::Locale& locale) {
    if (!load_plugins(plugins, locale)) return std::nullopt;
    std::optional<catalog::Catalog> catalog = load_catalog(data, locale);
    if (!catalog) return std::nullopt;
    ResolvedFile input = resolve_file(file, *catalog);
    complain(input.problems, locale);
    if (!input.resolved) return std::nullopt;
    return OpenedDetail{std::move(*catalog), std::move(*input.resolved), std::move(input.sha256)};
}

}  // namespace toehold::cli
