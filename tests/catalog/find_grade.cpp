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
    const catalog::LumberGrade* const row = catalog::find_grade(catalog, species, id, depth_in);
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
