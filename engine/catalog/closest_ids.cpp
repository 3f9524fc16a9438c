#include "catalog/closest_ids.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <set>
#include <utility>

namespace toehold::catalog {
namespace {

constexpr std::size_t letters_compared = 64;

/// ASCII only, and never by the locale.
char small(char letter) { return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter; }

}  // namespace

std::size_t edit_distance(std::string_view from, std::string_view to) {
    from = from.substr(0, letters_compared);
    to = to.substr(0, letters_compared);
    // One row of the table of distances between beginnings of the two words.
    std::vector<std::size_t> row(to.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < from.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < to.size(); ++j) {
            const std::size_t changed = diagonal + (small(from[i]) == small(to[j]) ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({changed, row[j] + 1, row[j + 1] + 1});
        }
    }
    return row.back();
}

std::vector<std::string> closest_ids(std::string_view wanted, const std::vector<std::string>& known,
                                     std::size_t count) {
    std::set<std::pair<std::size_t, std::string>> by_distance;
    for (const std::string& id : known) by_distance.emplace(edit_distance(wanted, id), id);
    std::vector<std::string> nearest;
    for (const auto& [distance, id] : by_distance) {
        if (nearest.size() == count) break;
        nearest.push_back(id);
    }
    return nearest;
}

format::Phrase accepted_ids(std::string_view wanted, const std::vector<std::string>& known) {
    constexpr std::size_t most_listed = 5;
    std::vector<std::string> nearest = closest_ids(wanted, known, most_listed + 1);
    const bool is_cut = nearest.size() > most_listed;
    if (is_cut) nearest.pop_back();
    const std::string list = fmt::format("{}", fmt::join(nearest, ", "));
    if (list.empty()) return {};
    return is_cut ? format::phrase("closest: {}", list) : format::verbatim(list);
}

model::Problem unknown_id(std::string_view wanted, const std::vector<std::string>& known, std::string_view what,
                          std::string_view element) {
    model::Problem problem;
    problem.element = std::string(element);
    problem.found = format::verbatim(std::string(wanted));
    problem.accepted = accepted_ids(wanted, known);
    problem.message = format::phrase("no {} in the catalogs has this id", format::Phrase(std::string(what), {}));
    return problem;
}

}  // namespace toehold::catalog
