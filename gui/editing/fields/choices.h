#pragma once
// Rows of the catalogs as choices: the id, and a label that can be searched by size, name or standard.
#include "catalog/catalog.h"
#include "editing/fields.h"

#include <string>
#include <vector>

namespace toehold::editing {

/// `lag-3/8: 3/8 in lag screw, ASME B18.2.1`.
[[nodiscard]] Choice row_choice(const std::string& id, const std::string& name, const catalog::Source& source);

template <class Row>
[[nodiscard]] std::vector<Choice> row_choices(const std::vector<Row>& rows) {
    std::vector<Choice> choices;
    choices.reserve(rows.size());
    for (const Row& row : rows) choices.push_back(row_choice(row.id, row.name, row.source));
    return choices;
}

/// Each grade once, of the species; of all where the species has none.
[[nodiscard]] std::vector<Choice> grade_choices(const catalog::Catalog& catalog, const std::string& species);
[[nodiscard]] std::vector<Choice> id_choices(const std::vector<std::string>& ids);

/// The row whose diameter comes nearest; nullptr where the catalog has none.
template <class Row>
[[nodiscard]] const Row* nearest_size(const std::vector<Row>& rows, double diameter_in) {
    const Row* nearest = nullptr;
    for (const Row& row : rows) {
        const double away = row.diameter_in - diameter_in;
        if (nearest != nullptr) {
            const double least = nearest->diameter_in - diameter_in;
            if (away * away >= least * least) continue;
        }
        nearest = &row;
    }
    return nearest;
}

/// `wanted` where the catalog has it, else its first row, else `wanted` all the same.
template <class Row>
[[nodiscard]] std::string id_or_first(const std::vector<Row>& rows, const std::string& wanted) {
    return catalog::find(rows, wanted) != nullptr || rows.empty() ? wanted : rows.front().id;
}

}  // namespace toehold::editing
