// Wood and metal rows of data/catalog against numbers that stand elsewhere.
#include "catalog/catalog.h"
#include "support/compare.h"
#include "support/shipped.h"

using namespace toehold;
using test::row;
using test::shipped_catalog;

namespace {

struct Grade {
    const char* species;
    double depth_in;  ///< dressed
    double bending, tension, shear, compression_perp, compression, modulus, modulus_min;
    bool size_factor_applies;
};
// NDS Supplement 2018 Tables 4A (before CF) and 4B (CF included), grade No. 2, psi.
constexpr Grade number_2[] = {
    {"douglas-fir-larch", 3.5, 900, 575, 180, 625, 1350, 1.6e6, 580e3, true},
    {"douglas-fir-larch", 11.25, 900, 575, 180, 625, 1350, 1.6e6, 580e3, true},
    {"hem-fir", 7.25, 850, 525, 150, 405, 1300, 1.3e6, 470e3, true},
    {"spruce-pine-fir", 9.25, 875, 450, 135, 425, 1150, 1.4e6, 510e3, true},
    {"southern-pine", 3.5, 1100, 675, 175, 565, 1450, 1.4e6, 510e3, false},
    {"southern-pine", 5.5, 1000, 600, 175, 565, 1400, 1.4e6, 510e3, false},
    {"southern-pine", 7.25, 925, 550, 175, 565, 1350, 1.4e6, 510e3, false},
    {"southern-pine", 9.25, 800, 475, 175, 565, 1300, 1.4e6, 510e3, false},
    {"southern-pine", 11.25, 750, 450, 175, 565, 1250, 1.4e6, 510e3, false},
};

void check_grade(const Grade& expected) {
    INFO(expected.species << " No. 2, " << expected.depth_in << " in");
    const catalog::LumberGrade* const grade =
        catalog::find_grade(shipped_catalog(), expected.species, "no-2", expected.depth_in);
    REQUIRE(grade != nullptr);
    CHECK(grade->bending_psi == expected.bending);
    CHECK(grade->tension_psi == expected.tension);
    CHECK(grade->shear_psi == expected.shear);
    CHECK(grade->compression_perp_psi == expected.compression_perp);
    CHECK(grade->compression_psi == expected.compression);
    CHECK(grade->modulus_psi == expected.modulus);
    CHECK(grade->modulus_min_psi == expected.modulus_min);
    CHECK(grade->size_factor_applies == expected.size_factor_applies);
}

void check_metal(const char* id, double yield_psi, double ultimate_psi) {
    INFO(id);
    CHECK(row(shipped_catalog().metals, id).yield_psi == yield_psi);
    CHECK(row(shipped_catalog().metals, id).ultimate_psi == ultimate_psi);
}

}  // namespace

TEST_CASE("Species have the assigned specific gravities of NDS Table 12.3.3A", "[catalog][published]") {
    // NDS 2018 Table 12.3.3A.
    const std::pair<const char*, double> assigned[] = {{"douglas-fir-larch", 0.50},
                                                       {"douglas-fir-larch-north", 0.49},
                                                       {"douglas-fir-south", 0.46},
                                                       {"hem-fir", 0.43},
                                                       {"hem-fir-north", 0.46},
                                                       {"southern-pine", 0.55},
                                                       {"mixed-southern-pine", 0.51},
                                                       {"spruce-pine-fir", 0.42},
                                                       {"spruce-pine-fir-south", 0.36},
                                                       {"western-cedars", 0.36},
                                                       {"redwood", 0.37},
                                                       {"eastern-hemlock-tamarack", 0.41},
                                                       {"northern-species", 0.35},
                                                       {"red-oak", 0.67},
                                                       {"ponderosa-pine", 0.43}};
    REQUIRE(shipped_catalog().species.size() == std::size(assigned));
    for (const auto& [id, specific_gravity] : assigned) {
        INFO(id);
        CHECK(row(shipped_catalog().species, id).specific_gravity == specific_gravity);
    }
}

TEST_CASE("No. 2 lumber has the reference design values of the NDS Supplement", "[catalog][published]") {
    for (const Grade& grade : number_2) check_grade(grade);
}

TEST_CASE("Emin of the lumber rows follows from E", "[catalog][memory]") {
    // NDS 2018 Eq. D-4 (from memory; it gives the Emin printed beside the E of every No. 2 row above): Emin = E (1
    // - 1.645 COV) 1.03 / 1.66 with COV 0.25 for visually graded lumber; the printed values are rounded to 10,000 psi.
    for (const catalog::LumberGrade& grade : shipped_catalog().grades) {
        INFO(grade.species << " " << grade.id);
        const double computed = grade.modulus_psi * (1.0 - 1.645 * 0.25) * 1.03 / 1.66;
        CHECK(test::prints_as(computed, grade.modulus_min_psi, 10000.0));
    }
}

TEST_CASE("A500 tubes have the strengths of their shape", "[catalog][published]") {
    // ASTM A500 before its 2021 edition, as in two public tables.
    check_metal("steel-a500-b", 46000.0, 58000.0);
    check_metal("steel-a500-b-round", 42000.0, 58000.0);
    check_metal("steel-a500-c", 50000.0, 62000.0);
    check_metal("steel-a500-c-round", 46000.0, 62000.0);
}

TEST_CASE("A36 steel bears at the 87 ksi that NDS Appendix I gives it", "[catalog][published]") {
    // Hot-rolled, 1/4 in and thicker: 1.5 Fu.
    CHECK(1.5 * row(shipped_catalog().metals, "steel-a36").ultimate_psi == 87000.0);
}

TEST_CASE("Aluminum extrusions have the strengths of an extruder's table", "[catalog][published]") {
    check_metal("aluminum-6061-t6", 35000.0, 38000.0);
    check_metal("aluminum-6063-t6", 25000.0, 30000.0);
    check_metal("aluminum-6063-t5", 16000.0, 22000.0);
    check_metal("aluminum-6005a-t61", 35000.0, 38000.0);
}

TEST_CASE("A weld takes the temper from aluminum and nothing from steel", "[catalog][property]") {
    for (const catalog::Metal& metal : shipped_catalog().metals) {
        INFO(metal.id);
        REQUIRE(metal.welded_yield_psi.has_value() == (metal.kind == catalog::MetalKind::aluminum));
        if (!metal.welded_yield_psi) continue;
        CHECK(*metal.welded_yield_psi < metal.yield_psi);
        CHECK(*metal.welded_ultimate_psi < metal.ultimate_psi);
    }
    // A 2000 engineers' list: the best weld in 6061-T6 loses about 40 % of the base metal's strength.
    const catalog::Metal& alloy = row(shipped_catalog().metals, "aluminum-6061-t6");
    CHECK_CLOSE(1.0 - *alloy.welded_ultimate_psi / alloy.ultimate_psi, 0.40, 0.0, 0.05);
}

TEST_CASE("Filler 4043 leaves 6061-T6 over 3/8 in at 11 ksi", "[catalog][published]") {
    // Aluminum Design Manual Table A.3.3, as quoted by an engineer in a public thread: 11 ksi with 4043, 15 with 5356.
    for (const char* id : {"aluminum-6061-t6", "aluminum-6061-t6-weld-5356"}) {
        INFO(id);
        const catalog::Metal& alloy = row(shipped_catalog().metals, id);
        REQUIRE(alloy.softer_weld);
        CHECK(alloy.softer_weld->filler == "er4043");
        CHECK(alloy.softer_weld->above_in == 0.375);
        CHECK(alloy.softer_weld->yield_psi == 11000.0);
        CHECK(alloy.welded_yield_psi == 15000.0);
    }
}

TEST_CASE("Wood layers are a twentieth as stiff across the grain as their lumber is along it", "[catalog][published]") {
    // Wood Handbook Table 5-1: ET/EL of Douglas-fir 0.050.
    const catalog::LumberGrade* const fir = catalog::find_grade(shipped_catalog(), "douglas-fir-larch", "no-2", 5.5);
    REQUIRE(fir != nullptr);
    CHECK_CLOSE(row(shipped_catalog().decking, "wood-douglas-fir").modulus_perp_psi, 0.050 * fir->modulus_psi, 1e-12,
                0.0);
    const catalog::LumberGrade* const pine = catalog::find_grade(shipped_catalog(), "southern-pine", "no-2", 5.5);
    REQUIRE(pine != nullptr);
    CHECK_CLOSE(row(shipped_catalog().decking, "wood-southern-pine").modulus_perp_psi, 0.050 * pine->modulus_psi, 1e-12,
                0.0);
    CHECK(row(shipped_catalog().decking, "wood-southern-pine").bearing_psi == pine->compression_perp_psi);
}

TEST_CASE("No plate may bear on a plastic or composite of no particular product", "[catalog][property]") {
    for (const catalog::DeckingMaterial& material : shipped_catalog().decking) {
        if (material.kind != catalog::DeckingKind::plastic_composite) continue;
        INFO(material.id);
        CHECK_FALSE(material.may_bear);
        CHECK(material.bearing_psi == 0.0);
    }
}
