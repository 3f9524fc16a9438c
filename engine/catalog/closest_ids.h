#pragma once
// Ids that resemble one no catalog knows, so that a slip of the pen answers itself.
#include "catalog/catalog.h"
#include "model/problem.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::catalog {

/// How many letters must be put in, taken out or changed to turn one word into the other. Capitals count as small
/// letters. Of each word only the first 64 letters count, which bounds the work for an id of any length.
[[nodiscard]] std::size_t edit_distance(std::string_view from, std::string_view to);

/// At most `count` of the ids, nearest first, equally near ones in alphabetical order; each once.
[[nodiscard]] std::vector<std::string> closest_ids(std::string_view wanted, const std::vector<std::string>& known,
                                                   std::size_t count = 5);

/// Which of `known` would do: all of them where they are few, else the closest, and that is said.
[[nodiscard]] format::Phrase accepted_ids(std::string_view wanted, const std::vector<std::string>& known);

/// `no WHAT has this id`, with what was found and the ids that come nearest.
[[nodiscard]] model::Problem unknown_id(std::string_view wanted, const std::vector<std::string>& known,
                                        std::string_view what, std::string_view element);

template <class Row>
[[nodiscard]] std::vector<std::string> ids_of(const std::vector<Row>& rows) {
    std::vector<std::string> ids;
    ids.reserve(rows.size());
    for (const Row& row : rows) ids.push_back(row.id);
    return ids;
}

/// The row with this id; nullptr, with a problem, when there is none.
template <class Row>
[[nodiscard]] const Row* require(const std::vector<Row>& rows, std::string_view id, std::string_view what,
                                 std::string_view element, model::Problems& problems) {
    const Row* const row = find(rows, id);
    if (row == nullptr) problems.push_back(unknown_id(id, ids_of(rows), what, element));
    return row;
}

}  // namespace toehold::catalog
