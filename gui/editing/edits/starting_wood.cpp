#include "editing/edits/starting_wood.h"

#include <algorithm>

namespace toehold::editing {

StartingWood starting_wood(const catalog::Catalog& catalog, double width_in, const std::vector<double>& depths_in) {
    const auto in_all_sizes = [&](const catalog::LumberGrade& row) {
        return std::all_of(depths_in.begin(), depths_in.end(), [&](double depth_in) {
            return catalog::find_grade(catalog, row.species, row.id, {width_in, depth_in}) != nullptr;
        });
    };
    const auto wanted = std::find_if(catalog.grades.begin(), catalog.grades.end(), [&](const auto& row) {
        return row.species == "southern-pine" && row.id == "no-2" && in_all_sizes(row);
    });
    if (wanted != catalog.grades.end()) return {wanted->species, wanted->id};
    const auto first = std::find_if(catalog.grades.begin(), catalog.grades.end(), in_all_sizes);
    return first == catalog.grades.end() ? StartingWood{} : StartingWood{first->species, first->id};
}

}  // namespace toehold::editing
