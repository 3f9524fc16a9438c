#include "xml/catalog/rows.h"
#include "xml/catalog/wood_values.h"

#include <array>

namespace toehold::xml {
namespace {

using format::phrase;

using catalog::DeckingKind;
using units::Kind;

using catalog::SizeFactor;
using catalog::WoodUse;

constexpr std::array<Word<SizeFactor>, 4> size_factor_words{{{"applies", SizeFactor::table_4a},
                                                             {"included", SizeFactor::included},
                                                             {"stud", SizeFactor::stud},
                                                             {"none", SizeFactor::none}}};
constexpr std::array<Word<WoodUse>, 2> timber_words{
    {{"beams-and-stringers", WoodUse::beams_and_stringers}, {"posts-and-timbers", WoodUse::posts_and_timbers}}};
constexpr std::array<Word<DeckingKind>, 3> decking_kinds{{{"wood", DeckingKind::wood},
                                                          {"plastic-composite", DeckingKind::plastic_composite},
                                                          {"metal", DeckingKind::metal}}};

catalog::Species read_species(ElementReader& row, CatalogIndex&) {
    catalog::Species species;
    species.id = row.id();
    species.name = row.text("name");
    species.specific_gravity = row.number("specific-gravity", Sign::positive);
    // The heaviest woods sink; nothing a deck is built of is heavier than 1.3 times water.
    expect(row, species.specific_gravity < 1.3, phrase("no wood is this heavy"), "specific-gravity");
    species.treated_without_incising = row.optional_yes_no("treated-without-incising").value_or(false);
    species.source = read_source(row);
    return species;
}

void read_values(ElementReader& size, catalog::LumberGrade& grade) {
    read_wood_values(size, grade);
    grade.source = read_source(size);
}

void read_size(ElementReader& size, catalog::LumberGrade& grade) {
    grade.depth_min_in = size.quantity("depth-above", Kind::length, Sign::not_negative);
    grade.depth_max_in = size.quantity("depth-to", Kind::length, Sign::positive);
    grade.use = WoodUse::dimension_lumber;
    grade.timber_flat_use = 1.0;
    grade.wet_included = false;
    read_values(size, grade);
    expect(size, grade.depth_max_in > grade.depth_min_in, phrase("the size class holds no depth"), "depth-to");
}

/// 5 in and thicker, nominal; its two uses have values of their own.
void read_timber(ElementReader& timber, catalog::LumberGrade& grade) {
    constexpr double largest_in = 24.0;
    grade.depth_min_in = 4.0;
    grade.depth_max_in = largest_in;
    grade.use = timber.choice<WoodUse>("use", timber_words);
    grade.timber_flat_use = 1.0;
    if (grade.use == WoodUse::beams_and_stringers)
        grade.timber_flat_use = timber.optional_number("flat-use", Sign::positive).value_or(1.0);
    grade.wet_included = timber.optional_yes_no("wet-included").value_or(false);
    read_values(timber, grade);
}

/// Size classes of one grade may meet but share no depth, or the first one found would win.
void check_overlap(ElementReader& size, const catalog::LumberGrade& added,
                   const std::vector<catalog::LumberGrade>& grades) {
    for (const catalog::LumberGrade& other : grades) {
        if (other.species != added.species || other.id != added.id || other.use != added.use) continue;
        expect(size, added.depth_min_in >= other.depth_max_in || added.depth_max_in <= other.depth_min_in,
               phrase("the size class overlaps another of this grade"), "depth-above");
    }
}

void read_grade(ElementReader& row, const std::string& species, std::vector<catalog::LumberGrade>& grades) {
    catalog::LumberGrade grade;
    grade.species = species;
    grade.id = row.id();
    grade.name = row.text("name");
    grade.size_factor = row.choice<SizeFactor>("size-factor", size_factor_words);
    std::vector<ElementReader> sizes = row.children("size", "depth-above");
    std::vector<ElementReader> timbers = row.children("timber", "use");
    if (sizes.empty() && timbers.empty())
        row.report(phrase("the grade has no values"), {}, phrase("one or more <size> or <timber> elements"));
    for (ElementReader& size : sizes) {
        read_size(size, grade);
        check_overlap(size, grade, grades);
        grades.push_back(grade);
    }
    for (ElementReader& timber : timbers) {
        read_timber(timber, grade);
        grades.push_back(grade);
    }
}

void read_lumber(ElementReader& root, CatalogIndex& index, std::vector<catalog::LumberGrade>& grades) {
    for (ElementReader& lumber : root.children("lumber", "species")) {
        const std::string species = lumber.id("species");
        index.refer(lumber, Named::species, species);
        for (ElementReader& grade : lumber.children("grade")) {
            index.add(grade);
            read_grade(grade, species, grades);
        }
    }
}

catalog::DeckingMaterial read_decking(ElementReader& row, CatalogIndex& index) {
    catalog::DeckingMaterial material;
    material.id = row.id();
    material.name = row.text("name");
    material.kind = row.choice<DeckingKind>("kind", decking_kinds);
    material.modulus_perp_psi = row.quantity("modulus-perp", Kind::stress, Sign::positive);
    material.may_bear = row.yes_no("may-bear");
    material.bearing_psi = row.optional_quantity("bearing", Kind::stress, Sign::positive).value_or(0.0);
    material.source = read_source(row);
    if (material.kind == DeckingKind::wood) {
        material.species = row.id("species");
        index.refer(row, Named::species, material.species);
    }
    return material;
}

}  // namespace

void read_wood(ElementReader& root, CatalogIndex& index, catalog::Catalog& catalog) {
    read_rows(root, "species", index, catalog.species, read_species);
    read_lumber(root, index, catalog.grades);
    read_rows(root, "decking", index, catalog.decking, read_decking);
}

}  // namespace toehold::xml
