// What a strip needs at most, against the strip.
#include "mechanics/plate_strip/strip.h"

#include "mechanics/shapes.h"
#include "support/compare.h"

#include <random>

using namespace toehold;
using namespace toehold::mechanics;

namespace {

const FootOutline foot{false, 2.0, 2.0};
const PlateShape plate{test::rectangle(-4.0, 4.0, -4.0, 4.0), {{{0.0, 2.5}, {0.0, 2.5}, 0.3}}};

/// Blocks under the toe and under the heel.
std::vector<Shape> blocks() {
    return {Shape(test::rectangle(-4.0, 4.0, 1.5, 4.0)), Shape(test::rectangle(-4.0, 4.0, -4.0, -1.5))};
}

}  // namespace

TEST_CASE("The highest pressure on all of the area beyond a face needs its moment on the width that spreads",
          "[closed-form]") {
    // 100 psi from y = 1.5 to 4 over 8 in, about y = 1: 2000 lb, 1.75 in off: 3500 lb in on the 8 in of the section.
    const std::vector<Shape> patches = blocks();
    const PlateSection section = tangent_sections(foot, plate).at(2);
    REQUIRE(section.normal_y == 1.0);
    std::vector<AreaAtSection> areas;
    for (const Shape& patch : patches) areas.push_back(area_at_section(section, patch));
    const std::vector<PatchForce> forces{{1500.0, {0.0, 3.2}, 100.0, {0.0, 4.0}, 20.0}, {}};
    CHECK_CLOSE(greatest_intensity_lb(section, areas, forces), 3500.0 / 8.0, 1e-9, 0.0);
    CHECK(greatest_intensity_lb(section, areas, {}) == std::numeric_limits<double>::infinity());
}

TEST_CASE("No strip of bearing needs more than it may at most", "[property]") {
    const std::vector<Shape> patches = blocks();
    std::mt19937 random(1931);
    std::uniform_real_distribution<double> x(-3.5, 3.5), away(1.6, 3.9), force(10.0, 2000.0), more(1.0, 4.0);
    for (const PlateSection& section : tangent_sections(foot, plate)) {
        std::vector<AreaAtSection> areas;
        for (const Shape& patch : patches) areas.push_back(area_at_section(section, patch));
        for (int trial = 0; trial < 50; ++trial) {
            const Point toe{x(random), away(random)}, heel{x(random), -away(random)};
            const std::vector<PatchForce> forces{{force(random), toe, more(random) * 60.0, toe, 1.0},
                                                 {force(random), heel, more(random) * 60.0, heel, 1.0}};
            const PlateStrip strip = bearing_strip(section, areas, forces, plane_pressures(forces, patches));
            CHECK(strip.intensity_lb() <= greatest_intensity_lb(section, areas, forces) * (1.0 + 1e-12));
        }
    }
}
