#include "catalog/catalog.h"

namespace toehold::catalog {

WoodUse use_of(const Section& section) {
    constexpr double thickest_dimension_lumber_in = 4.0;
    constexpr double square_or_nearly_in = 2.0;
    if (section.thickness_in <= thickest_dimension_lumber_in) return WoodUse::dimension_lumber;
    return section.width_in > section.thickness_in + square_or_nearly_in ? WoodUse::beams_and_stringers
                                                                         : WoodUse::posts_and_timbers;
}

const LumberGrade* find_grade(const Catalog& catalog, std::string_view species, std::string_view grade,
                              const Section& section) {
    const WoodUse use = use_of(section);
    const double depth_in = section.width_in;
    for (const LumberGrade& row : catalog.grades) {
        if (row.species != species || row.id != grade || row.use != use) continue;
        // Open below and closed above, so that classes that meet share no depth.
        if (depth_in > row.depth_min_in && depth_in <= row.depth_max_in) return &row;
    }
    return nullptr;
}

}  // namespace toehold::catalog
