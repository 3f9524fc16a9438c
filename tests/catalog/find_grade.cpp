// Which size class of a grade holds a member.
#include "catalog/catalog.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

catalog::LumberGrade grade(const std::string& species, const std::string& id, double above_in, double to_in,
                           double bending_psi) {
    catalog::LumberGrade row;
    row.species = species;
    row.id = id;
    row.depth_min_in = above_in;
    row.depth_max_in = to_in;
    row.bending_psi = bending_psi;
    return row;
}

/// Two classes that meet at 4 in, listed the larger first, beside another species and another grade.
catalog::Catalog two_classes() {
    catalog::Catalog catalog;
    catalog.grades = {grade("pine", "no-2", 4.0, 6.0, 1000.0), grade("pine", "no-2", 1.0, 4.0, 1100.0),
                      grade("fir", "no-2", 1.0, 12.0, 900.0), grade("pine", "no-1", 1.0, 4.0, 1500.0)};
    return catalog;
}

double bending_psi(const char* species, const char* id, double depth_in) {
    const catalog::Catalog catalog = two_classes();
    const catalog::LumberGrade* const row = catalog::find_grade(catalog, species, id, {1.5, depth_in});
    return row == nullptr ? 0.0 : row->bending_psi;
}

}  // namespace

TEST_CASE("A depth where two size classes meet belongs to the smaller class alone", "[catalog][unit]") {
    CHECK(bending_psi("pine", "no-2", 3.5) == 1100.0);
    CHECK(bending_psi("pine", "no-2", 4.0) == 1100.0);
    CHECK(bending_psi("pine", "no-2", 4.0001) == 1000.0);
    CHECK(bending_psi("pine", "no-2", 6.0) == 1000.0);
}

TEST_CASE("A depth outside every size class has no grade", "[catalog][unit]") {
    CHECK(bending_psi("pine", "no-2", 1.0) == 0.0);
    CHECK(bending_psi("pine", "no-2", 6.0001) == 0.0);
    CHECK(bending_psi("pine", "no-2", 0.0) == 0.0);
}

TEST_CASE("A grade is looked up by species, id and depth together", "[catalog][unit]") {
    CHECK(bending_psi("fir", "no-2", 3.5) == 900.0);
    CHECK(bending_psi("pine", "no-1", 3.5) == 1500.0);
    CHECK(bending_psi("pine", "no-1", 5.5) == 0.0);
    CHECK(bending_psi("oak", "no-2", 3.5) == 0.0);
    CHECK(bending_psi("Pine", "no-2", 3.5) == 0.0);
}

TEST_CASE("A timber has a use by its shape, and rows of its own", "[catalog][unit]") {
    // NDS Supplement 2018 Table 4D: 5 in and thicker, nominal; beams and stringers are more than 2 in wider than thick.
    using catalog::WoodUse;
    CHECK(catalog::use_of({3.5, 11.25}) == WoodUse::dimension_lumber);
    CHECK(catalog::use_of({4.5, 4.5}) == WoodUse::posts_and_timbers);
    CHECK(catalog::use_of({5.5, 5.5}) == WoodUse::posts_and_timbers);
    CHECK(catalog::use_of({5.5, 7.5}) == WoodUse::posts_and_timbers);
    CHECK(catalog::use_of({5.5, 9.25}) == WoodUse::beams_and_stringers);
    catalog::Catalog catalog = two_classes();
    CHECK(catalog::find_grade(catalog, "fir", "no-2", {5.5, 5.5}) == nullptr);
    catalog::LumberGrade post = grade("fir", "no-2", 4.0, 24.0, 750.0);
    post.use = WoodUse::posts_and_timbers;
    catalog.grades.push_back(post);
    const catalog::LumberGrade* const found = catalog::find_grade(catalog, "fir", "no-2", {5.5, 5.5});
    REQUIRE(found != nullptr);
    CHECK(found->bending_psi == 750.0);
    CHECK(catalog::find_grade(catalog, "fir", "no-2", {1.5, 5.5})->bending_psi == 900.0);
}
