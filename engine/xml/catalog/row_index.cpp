#include "xml/catalog/row_index.h"

#include "catalog/closest_ids.h"

#include <algorithm>

namespace toehold::xml {

void CatalogIndex::begin(const std::filesystem::path& file) { file_ = file.string(); }

const CatalogIndex::Place* CatalogIndex::taken(const std::string& path, int line) {
    const auto [row, added] = rows_.emplace(path, Place{file_, line});
    // Twice in one file is for the element reader to say.
    return added || row->second.file == file_ ? nullptr : &row->second;
}

namespace {

format::Phrase taken_message(const std::string& file, int line) {
    return format::phrase("another catalog file already has this row: {}:{}", file, line);
}

}  // namespace

void CatalogIndex::add(ElementReader& row) {
    const Place* const other = taken(row.path(), row.line());
    if (other != nullptr) row.report(taken_message(other->file, other->line), "id", format::phrase("an id of its own"));
}

void CatalogIndex::add(const std::string& path, int line, model::Problems& problems) {
    const Place* const other = taken(path, line);
    if (other == nullptr) return;
    problems.push_back(
        {file_, line, path, {}, format::phrase("an id of its own"), taken_message(other->file, other->line)});
}

void CatalogIndex::refer(const ElementReader& row, Named kind, const std::string& id) {
    refer(row.path(), row.line(), kind, id);
}

void CatalogIndex::refer(const std::string& path, int line, Named kind, const std::string& id) {
    references_.push_back({{file_, line}, path, kind, id});
}

model::Problems CatalogIndex::unanswered(const catalog::Catalog& catalog) const {
    struct Rows {
        std::vector<std::string> ids;
        const char* word;
    };
    const std::map<Named, Rows> rows = {{Named::metal, {catalog::ids_of(catalog.metals), "metal"}},
                                        {Named::species, {catalog::ids_of(catalog.species), "species"}},
                                        {Named::filler, {catalog::ids_of(catalog.fillers), "filler"}}};
    model::Problems problems;
    for (const Reference& reference : references_) {
        const auto& [known, word] = rows.at(reference.kind);
        // An empty id is a problem already: the row did not name anything.
        if (reference.id.empty() || std::find(known.begin(), known.end(), reference.id) != known.end()) continue;
        model::Problem problem = catalog::unknown_id(reference.id, known, word, reference.path);
        problem.file = reference.from.file;
        problem.line = reference.from.line;
        problems.push_back(problem);
    }
    return problems;
}

}  // namespace toehold::xml
