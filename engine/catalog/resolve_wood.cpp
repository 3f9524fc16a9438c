#include "catalog/resolve_wood.h"

#include "catalog/closest_ids.h"
#include "units/quantity.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

namespace toehold::catalog {
namespace {

using format::phrase;

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
format::Phrase depths_of(const std::vector<const LumberGrade*>& grades, std::string_view grade, WoodUse use) {
    format::Listed depths;
    for (const LumberGrade* row : grades) {
        if (row->id != grade || row->use != use) continue;
        depths.items.push_back(
            phrase("over {} to {}", format::Dimension{row->depth_min_in}, format::Dimension{row->depth_max_in}));
    }
    return phrase("a wider face {}", std::move(depths));
}

bool lists(const std::vector<const LumberGrade*>& grades, std::string_view grade, WoodUse use) {
    return std::any_of(grades.begin(), grades.end(),
                       [&](const LumberGrade* row) { return row->id == grade && row->use == use; });
}

/// The grade has values, but none for so thick or so thin a piece.
model::Problem other_use(const WoodMember& member, const Section& section) {
    const bool timber = use_of(section) != WoodUse::dimension_lumber;
    model::Problem problem;
    problem.message =
        timber
            ? phrase("{} {} is listed for dimension lumber, and this member is a timber", member.species, member.grade)
            : phrase("{} {} is listed for timbers, and this member is dimension lumber", member.species, member.grade);
    problem.found =
        phrase("{} thick, {} wide", format::Dimension{section.thickness_in}, format::Dimension{section.width_in});
    problem.accepted = timber ? phrase("a thickness to 4 in, another grade, or a material of the framing's own")
                              : phrase("a thickness over 4 in, another grade, or a material of the framing's own");
    return problem;
}

model::Problem no_grade(const Catalog& catalog, const WoodMember& member, const Section& section) {
    const std::vector<const LumberGrade*> grades = grades_of(catalog, member.species);
    if (grades.empty()) {
        model::Problem problem = unknown_id(member.species, graded_species(catalog), "grade", {});
        problem.message = phrase("no design values of this species are in the catalogs");
        return problem;
    }
    std::vector<std::string> ids;
    ids.reserve(grades.size());
    for (const LumberGrade* row : grades) ids.push_back(row->id);
    if (std::find(ids.begin(), ids.end(), member.grade) == ids.end())
        return unknown_id(member.grade, ids, fmt::format("grade of {}", member.species), {});
    if (!lists(grades, member.grade, use_of(section))) return other_use(member, section);
    model::Problem problem;
    problem.message = phrase("{} {} is not listed for a member of this depth", member.species, member.grade);
    problem.found = phrase("{}", format::Dimension{section.width_in});
    problem.accepted = depths_of(grades, member.grade, use_of(section));
    return problem;
}

/// As a catalog's rows would hold it.
MemberMaterial own_wood(const model::OwnWood& wood) {
    const Source source{Evidence::published, wood.source};
    MemberMaterial material;
    material.species.id = wood.id;
    material.species.name = wood.name;
    material.species.specific_gravity = wood.specific_gravity;
    material.species.source = source;
    LumberGrade& grade = material.grade;
    grade.species = wood.id;
    grade.name = "by its report";
    grade.depth_max_in = std::numeric_limits<double>::max();
    grade.size_factor = SizeFactor::none;
    grade.bending_psi = wood.bending_psi;
    grade.tension_psi = wood.tension_psi;
    grade.shear_psi = wood.shear_psi;
    grade.compression_perp_psi = wood.compression_perp_psi;
    grade.compression_psi = wood.compression_psi;
    grade.modulus_psi = wood.modulus_psi;
    grade.modulus_min_psi = wood.modulus_min_psi;
    grade.source = source;
    grade.use = WoodUse::engineered;
    grade.engineered = EngineeredFactors{wood.bending_flat_psi, wood.volume, wood.volume_exponent, wood.wet_service};
    return material;
}

std::optional<MemberMaterial> graded_wood(const WoodMember& member, const Catalog& catalog, std::string_view element,
                                          model::Problems& problems) {
    const Species* const species = require(catalog.species, member.species, "species", element, problems);
    if (species == nullptr) return std::nullopt;
    const Section section{std::min(member.width_in, member.depth_in), std::max(member.width_in, member.depth_in)};
    const LumberGrade* const grade = find_grade(catalog, member.species, member.grade, section);
    if (grade != nullptr) return MemberMaterial{*species, *grade};
    problems.push_back(no_grade(catalog, member, section));
    problems.back().element = std::string(element);
    return std::nullopt;
}

}  // namespace

std::optional<MemberMaterial> resolve_wood(const WoodMember& member, const WoodSources& sources,
                                           std::string_view element, model::Problems& problems) {
    if (!member.grade.empty()) return graded_wood(member, sources.catalog, element, problems);
    const model::OwnWood* const wood = require(sources.materials, member.species, "material", element, problems);
    if (wood == nullptr) return std::nullopt;
    return own_wood(*wood);
}

void set_incising(MemberMaterial& wood, bool treated) {
    if (!treated) {
        wood.grade.incising = IncisedBy::untreated;
    } else if (wood.species.treated_without_incising) {
        wood.grade.incising = IncisedBy::species_needs_none;
    }
}

}  // namespace toehold::catalog
