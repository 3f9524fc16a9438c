#include "cli/size/input.h"

#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/plugins.h"
#include "cli/review_file.h"
#include "search/ranges/ranges.h"
#include "search/run/judged.h"
#include "xml/catalog/catalog_file.h"
#include "xml/catalog/prices_file.h"
#include "xml/document/file.h"

#include <algorithm>
#include <filesystem>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;

using format::Locale;
using format::phrase;

/// The digests of the files a data folder holds, by name.
std::string digests(const fs::path& data) {
    std::vector<fs::path> files;
    for (const char* below : {"catalog", "plates"}) {
        std::error_code none;
        for (const auto& entry : fs::directory_iterator(data / below, none)) {
            if (entry.path().extension() == ".xml") files.push_back(entry.path());
        }
    }
    std::sort(files.begin(), files.end());
    std::string all;
    for (const fs::path& file : files)
        all += file.filename().string() + " " + xml::sha256(xml::read_text(file).text.value_or("")) + "\n";
    return all;
}

/// Prices decide no judgement, but a change of the program, a catalog or a plug-in may.
std::string context_of(const SizeCommand& command) {
    std::string context = "toehold " TOEHOLD_VERSION "\n" + digests(xml::find_data_folder(command.data));
    for (const std::string& plugin : command.plugins) context += fs::path(plugin).filename().string() + "\n";
    return context;
}

/// The catalogs, with the user's price table where one is named.
std::optional<catalog::Catalog> catalog_of(const SizeCommand& command, const Locale& locale) {
    auto catalog = load_catalog(command.data, locale);
    if (!catalog || command.prices.empty()) return catalog;
    xml::PricesRead read = xml::read_prices(command.prices, *catalog);
    complain(read.problems, locale);
    if (!read.prices) return std::nullopt;
    catalog->prices = std::move(*read.prices);
    return catalog;
}

/// The ranges asked for, or those a shop would try; absent, with the reason said, where they cannot be used.
std::optional<search::Ranges> ranges_of(const SizeCommand& command, const catalog::Resolved& base,
                                        const catalog::Catalog& catalog, const Locale& locale) {
    if (command.vary.empty()) return search::default_ranges(base, catalog);
    search::Ranges ranges;
    model::Problems problems;
    for (const std::string& text : command.vary) {
        for (model::Problem& problem : search::parse_range(text, catalog, ranges))
            problems.push_back(std::move(problem));
    }
    if (problems.empty()) problems = search::problems(base, ranges, catalog);
    if (problems.empty()) return ranges;
    complain(problems, locale);
    return std::nullopt;
}

/// Whether it is neither empty nor too large to be searched at once.
bool is_searchable(const search::Space& space, const Locale& locale) {
    try {
        const search::Candidate count = search::size(space);
        if (count > 0 && count <= search::most_candidates) return true;
        complain(count == 0 ? phrase("the ranges hold no candidate")
                            : phrase("the ranges hold {} candidates, and {} are the most; give fewer values", count,
                                     search::most_candidates),
                 locale);
    } catch (const std::overflow_error&) {
        complain(phrase("the ranges hold too many candidates; give fewer values"), locale);
    }
    return false;
}

}  // namespace

std::optional<SizeInput> size_input(const SizeCommand& command, const Locale& locale) {
    if (!load_plugins(command.plugins, locale)) return std::nullopt;
    auto catalog = catalog_of(command, locale);
    if (!catalog) return std::nullopt;
    ResolvedFile base = resolve_file(command.file, *catalog);
    complain(base.problems, locale);
    if (!base.resolved) return std::nullopt;
    const std::optional<search::Ranges> ranges = ranges_of(command, *base.resolved, *catalog, locale);
    if (!ranges) return std::nullopt;
    SizeInput input{std::move(*catalog), {}, context_of(command)};
    input.space = search::make_space(*base.resolved, *ranges, input.catalog);
    if (!is_searchable(input.space, locale)) return std::nullopt;
    return input;
}

}  // namespace toehold::cli
