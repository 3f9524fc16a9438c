#include "editing/fields/choices.h"

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

/// The standard and its table, without the remarks that follow them.
std::string standard(const catalog::Source& source) {
    if (source.evidence == catalog::Evidence::assumption) return {};
    std::size_t end = source.text.size();
    for (const std::string_view stop : std::array<std::string_view, 5>{",", ";", ":", " (", " and "}) {
        end = std::min(end, source.text.find(stop));
    }
    return source.text.substr(0, end);
}

}  // namespace

Choice row_choice(const std::string& id, const std::string& name, const catalog::Source& source) {
    const std::string from = standard(source);
    return {id, format::verbatim(id + ": " + name + (from.empty() ? "" : ", " + from))};
}

std::vector<Choice> grade_choices(const catalog::Catalog& catalog, const std::string& species) {
    const auto of_species = [&](const catalog::LumberGrade& grade) { return grade.species == species; };
    const bool known = std::any_of(catalog.grades.begin(), catalog.grades.end(), of_species);
    std::vector<Choice> choices;
    for (const catalog::LumberGrade& grade : catalog.grades) {
        if (known && !of_species(grade)) continue;
        const auto listed = [&](const Choice& choice) { return choice.value == grade.id; };
        if (std::any_of(choices.begin(), choices.end(), listed)) continue;
        choices.push_back(row_choice(grade.id, grade.name, grade.source));
    }
    return choices;
}

std::vector<Choice> id_choices(const std::vector<std::string>& ids) {
    std::vector<Choice> choices;
    choices.reserve(ids.size());
    for (const std::string& id : ids) choices.push_back({id, format::verbatim(id)});
    return choices;
}

}  // namespace toehold::editing
