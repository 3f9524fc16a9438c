#include "cli/review_file.h"

#include "catalog/catalog.h"
#include "cli/console.h"

namespace toehold::cli {

std::string name_of(const std::string& file) { return file == standard_input ? "standard input" : file; }

xml::DetailRead read_named(const std::string& file) {
    if (file != standard_input) return xml::read_detail(file);
    const auto text = read_standard_input();
    if (text) return xml::read_detail_text(*text, name_of(file));
    xml::DetailRead unread;
    unread.problems.push_back({name_of(file), 0, {}, {}, {}, format::phrase("cannot be read")});
    return unread;
}

ResolvedFile resolve_file(const std::string& file, const catalog::Catalog& catalog) {
    xml::DetailRead read = read_named(file);
    if (!read.detail || !read.problems.empty()) return {std::nullopt, {}, std::move(read.problems)};
    catalog::Resolution resolution = catalog::resolve(*read.detail, catalog);
    if (!resolution.resolved) xml::locate(resolution.problems, name_of(file), read.lines);
    return {std::move(resolution.resolved), std::move(read.sha256), std::move(resolution.problems)};
}

}  // namespace toehold::cli
