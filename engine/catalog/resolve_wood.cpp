#include "catalog/resolve_wood.h"

#include "catalog/closest_ids.h"
#include "units/quantity.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::catalog {
namespace {

/// NDS Supplement 2018 Tables 4A and 4B: dimension lumber, 2 in to 4 in thick. Thicker pieces are timbers (Table 4D),
/// whose values are lower and which no catalog row holds.
constexpr double dimension_lumber_thickness_in = 4.0;

std::vector<const LumberGrade*> grades_of(const Catalog& catalog, std::string_view species) {
    std::vector<const LumberGrade*> grades;
    for (const LumberGrade& row : catalog.grades) {
        if (row.species == species) grades.push_back(&row);
    }
    return grades;
}

std::vector<std::string> graded_species(const Catalog& catalog) {
    std::vector<std::string> species;
    for (const LumberGrade& row : catalog.grades) species.push_back(row.species);
    return species;
}

/// `a wider face over 1 in to 4 in and over 4 in to 6 in`
format::Phrase depths_of(const std::vector<const LumberGrade*>& grades, std::string_view grade) {
    format::Listed depths;
    for (const LumberGrade* row : grades) {
        if (row->id != grade) continue;
        depths.items.push_back(format::phrase("over {} to {}", format::Dimension{row->depth_min_in},
                                              format::Dimension{row->depth_max_in}));
    }
    return format::phrase("a wider face {}", std::move(depths));
}

model::Problem no_grade(const Catalog& catalog, const WoodMember& member, double wider_face_in) {
    const std::vector<const LumberGrade*> grades = grades_of(catalog, member.species);
    if (grades.empty()) {
        model::Problem problem = unknown_id(member.species, graded_species(catalog), "grade", {});
        problem.message = format::phrase("no design values of this species are in the catalogs");
        return problem;
    }
    std::vector<std::string> ids;
    ids.reserve(grades.size());
    for (const LumberGrade* row : grades) ids.push_back(row->id);
    if (std::find(ids.begin(), ids.end(), member.grade) == ids.end()) {
        return unknown_id(member.grade, ids, fmt::format("grade of {}", member.species), {});
    }
    model::Problem problem;
    problem.message = format::phrase("{} {} is not listed for a member of this depth", member.species, member.grade);
    problem.found = format::phrase("{}", format::Dimension{wider_face_in});
    problem.accepted = depths_of(grades, member.grade);
    return problem;
}

model::Problem timber(const WoodMember& member, double thickness_in) {
    model::Problem problem;
    problem.message = format::phrase("{} {} is listed for dimension lumber, and this member is a timber",
                                     member.species, member.grade);
    problem.found = format::phrase("{}", format::Dimension{thickness_in});
    problem.accepted = format::phrase("a thickness to {}", format::Dimension{dimension_lumber_thickness_in});
    return problem;
}

}  // namespace

std::optional<MemberMaterial> resolve_wood(const WoodMember& member, const Catalog& catalog, std::string_view element,
                                           model::Problems& problems) {
    const Species* const species = require(catalog.species, member.species, "species", element, problems);
    if (species == nullptr) return std::nullopt;
    const double wider_face_in = std::max(member.width_in, member.depth_in);
    const double thickness_in = std::min(member.width_in, member.depth_in);
    const LumberGrade* const grade = find_grade(catalog, member.species, member.grade, wider_face_in);
    if (grade != nullptr && thickness_in <= dimension_lumber_thickness_in) return MemberMaterial{*species, *grade};
    problems.push_back(grade == nullptr ? no_grade(catalog, member, wider_face_in) : timber(member, thickness_in));
    problems.back().element = std::string(element);
    return std::nullopt;
}

}  // namespace toehold::catalog
