#include "catalog/catalog.h"

namespace toehold::catalog {

const LumberGrade* find_grade(const Catalog& catalog, std::string_view species, std::string_view grade,
                              double depth_in) {
    for (const LumberGrade& row : catalog.grades) {
        if (row.species != species || row.id != grade) continue;
        // Open below and closed above, so that classes that meet share no depth.
        if (depth_in > row.depth_min_in && depth_in <= row.depth_max_in) return &row;
    }
    return nullptr;
}

}  // namespace toehold::catalog
