// The fastener rows of data/catalog against numbers that stand elsewhere.
#include "catalog/catalog.h"
#include "support/compare.h"
#include "support/shipped.h"

#include <numbers>

using namespace toehold;
using test::row;
using test::shipped_catalog;

namespace {

// ASME B18.2.1: thread depth 0.385 of the pitch. Threads per inch and basic head sizes as in the same standard's
// table of hexagon lag screws; root diameters are also NDS 2018 Table L2.
struct LagRow {
    const char* id;
    double diameter_in, root_in, threads_per_in, flats_in, head_in;
};
constexpr LagRow lag_rows[] = {
    {"lag-1/4", 0.25, 0.173, 10, 7.0 / 16, 11.0 / 64}, {"lag-5/16", 0.3125, 0.227, 9, 1.0 / 2, 7.0 / 32},
    {"lag-3/8", 0.375, 0.265, 7, 9.0 / 16, 1.0 / 4},   {"lag-7/16", 0.4375, 0.328, 7, 5.0 / 8, 19.0 / 64},
    {"lag-1/2", 0.5, 0.371, 6, 3.0 / 4, 11.0 / 32},    {"lag-5/8", 0.625, 0.471, 5, 15.0 / 16, 27.0 / 64},
    {"lag-3/4", 0.75, 0.579, 4.5, 9.0 / 8, 1.0 / 2},   {"lag-7/8", 0.875, 0.683, 4, 21.0 / 16, 37.0 / 64},
    {"lag-1", 1.0, 0.780, 3.5, 3.0 / 2, 21.0 / 32},
};

/// NDS 2018 Table I1, read in a public text: bending yield strength by diameter, psi.
double bending_yield_of_screws_psi(double diameter_in) {
    if (diameter_in <= 0.142) return 100000.0;
    if (diameter_in <= 0.177) return 90000.0;
    if (diameter_in <= 0.236) return 80000.0;
    if (diameter_in <= 0.273) return 70000.0;
    if (diameter_in <= 0.344) return 60000.0;
    return 45000.0;
}

}  // namespace

TEST_CASE("Lag screws have the diameters and heads of ASME B18.2.1", "[catalog][published]") {
    REQUIRE(shipped_catalog().lag_screws.size() == std::size(lag_rows));
    for (const LagRow& expected : lag_rows) {
        INFO(expected.id);
        const catalog::LagScrewSize& size = row(shipped_catalog().lag_screws, expected.id);
        CHECK(size.diameter_in == expected.diameter_in);
        CHECK(size.root_diameter_in == expected.root_in);
        CHECK(size.head_width_in == expected.flats_in);
        CHECK(size.head_height_in == expected.head_in);
    }
}

TEST_CASE("A lag screw's root is its diameter less two thread depths of 0.385 pitch", "[catalog][published]") {
    for (const LagRow& lag : lag_rows) {
        INFO(lag.id);
        const catalog::LagScrewSize& size = row(shipped_catalog().lag_screws, lag.id);
        CHECK_CLOSE(size.root_diameter_in, size.diameter_in - 2.0 * 0.385 / lag.threads_per_in, 0.0, 0.001);
    }
}

TEST_CASE("Lag screws have the bending yield strengths that NDS Table 12K is computed with", "[catalog][published]") {
    for (const catalog::LagScrewSize& size : shipped_catalog().lag_screws) {
        INFO(size.id);
        const double expected = size.diameter_in < 0.3 ? 70000.0 : size.diameter_in < 0.35 ? 60000.0 : 45000.0;
        CHECK(size.bending_yield_psi == expected);
    }
}

TEST_CASE("The tip of a 3/8 in lag screw is the 7/32 in that NDS Table 12.2A is printed with", "[catalog][published]") {
    CHECK(row(shipped_catalog().lag_screws, "lag-3/8").tip_length_in == 7.0 / 32);
}

// 0.5.0 had 3/8, 7/16, 1/2 and 9/16 in, which counted up to 1/8 in of thread that is not there.
TEST_CASE("Tips of large lag screws are those of NDS Table L2", "[catalog][published][A8]") {
    // Read in a public transcription of the table.
    CHECK(row(shipped_catalog().lag_screws, "lag-5/8").tip_length_in == 13.0 / 32);
    CHECK(row(shipped_catalog().lag_screws, "lag-3/4").tip_length_in == 1.0 / 2);
    CHECK(row(shipped_catalog().lag_screws, "lag-7/8").tip_length_in == 19.0 / 32);
    CHECK(row(shipped_catalog().lag_screws, "lag-1").tip_length_in == 11.0 / 16);
}

TEST_CASE("Wood screw shanks follow their gauge: 0.060 in plus 0.013 in a number", "[catalog][published]") {
    // ASME B18.6.1: D = 0.060 + 0.013 N.
    REQUIRE(shipped_catalog().wood_screws.size() == 9);
    for (const int number : {8, 9, 10, 12, 14, 16, 18, 20, 24}) {
        const catalog::WoodScrewSize& size = row(shipped_catalog().wood_screws, "wood-screw-" + std::to_string(number));
        INFO(size.id);
        CHECK_CLOSE(size.diameter_in, 0.060 + 0.013 * number, 0.0, 1e-9);
        // The root of a cut thread: about 0.8 of the shank, NDS 2018 Table L3, read in a public text.
        CHECK_CLOSE(size.root_diameter_in / size.diameter_in, 0.795, 0.0, 0.02);
        CHECK(size.bending_yield_psi == bending_yield_of_screws_psi(size.diameter_in));
    }
}

TEST_CASE("Hexagon nuts have the widths across flats of ASME B18.2.2", "[catalog][published]") {
    // Largest width across flats, hex nuts.
    const std::pair<const char*, double> nuts[] = {{"bolt-1/4", 0.438},  {"bolt-5/16", 0.500}, {"bolt-3/8", 0.563},
                                                   {"bolt-7/16", 0.688}, {"bolt-1/2", 0.750},  {"bolt-5/8", 0.938},
                                                   {"bolt-3/4", 1.125},  {"bolt-7/8", 1.312},  {"bolt-1", 1.500}};
    REQUIRE(shipped_catalog().bolts.size() == std::size(nuts));
    for (const auto& [id, flats_in] : nuts) {
        INFO(id);
        const catalog::BoltSize& size = row(shipped_catalog().bolts, id);
        CHECK(test::prints_as(size.nut_width_in, flats_in, 0.002));
        CHECK(size.bending_yield_psi == 45000.0);  // NDS 2018 Table 12B
    }
}

TEST_CASE("A307 and A325 bolts have the stresses of AISC 360 Table J3.2", "[catalog][published]") {
    // AISC 360-10; the table of the 2005 edition is different.
    const catalog::BoltGrade& a307 = row(shipped_catalog().bolt_grades, "a307");
    CHECK(a307.nominal_tension_psi == 45000.0);
    CHECK(a307.nominal_shear_psi == 27000.0);
    const catalog::BoltGrade& a325 = row(shipped_catalog().bolt_grades, "a325-n");
    CHECK(a325.nominal_tension_psi == 90000.0);
    CHECK(a325.nominal_shear_psi == 54000.0);
}

TEST_CASE("A 3/8 in A307 bolt may carry 2.485 kip in tension and 1.491 kip in shear", "[catalog][published]") {
    // AISC 360-10 J3.6: nominal stress on the nominal area over 2.0.
    const catalog::BoltGrade& grade = row(shipped_catalog().bolt_grades, "a307");
    const double diameter_in = row(shipped_catalog().bolts, "bolt-3/8").diameter_in;
    const double area_in2 = 0.25 * std::numbers::pi * diameter_in * diameter_in;
    CHECK(test::prints_as(grade.nominal_tension_psi * area_in2 / 2.0, 2485.0, 1.0));
    CHECK(test::prints_as(grade.nominal_shear_psi * area_in2 / 2.0, 1491.0, 1.0));
}

TEST_CASE("Plain washers have the basic sizes of ASME B18.21.1 Type A", "[catalog][published]") {
    struct Washer {
        const char* id;
        double hole_in, outside_in, thickness_in;
    };
    // ASME B18.21.1-2009 (R2016) Table 1a, series N and W.
    const Washer washers[] = {
        {"washer-narrow-1/4", 0.281, 0.625, 0.065},  {"washer-wide-1/4", 0.312, 0.734, 0.065},
        {"washer-narrow-5/16", 0.344, 0.688, 0.065}, {"washer-wide-5/16", 0.375, 0.875, 0.083},
        {"washer-narrow-3/8", 0.406, 0.812, 0.065},  {"washer-wide-3/8", 0.438, 1.000, 0.083},
        {"washer-narrow-7/16", 0.469, 0.922, 0.065}, {"washer-wide-7/16", 0.500, 1.250, 0.083},
        {"washer-narrow-1/2", 0.531, 1.062, 0.095},  {"washer-wide-1/2", 0.562, 1.375, 0.109},
        {"washer-narrow-5/8", 0.656, 1.312, 0.095},  {"washer-wide-5/8", 0.688, 1.750, 0.134},
        {"washer-narrow-3/4", 0.812, 1.469, 0.134},  {"washer-wide-3/4", 0.812, 2.000, 0.148},
    };
    for (const Washer& expected : washers) {
        INFO(expected.id);
        const catalog::WasherSize& size = row(shipped_catalog().washers, expected.id);
        CHECK(size.hole_diameter_in == expected.hole_in);
        CHECK(size.outside_diameter_in == expected.outside_in);
        CHECK(size.thickness_in == expected.thickness_in);
    }
}
