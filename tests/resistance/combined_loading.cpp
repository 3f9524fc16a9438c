#include "resistance/wood/combined_loading.h"

#include "support/compare.h"

#include <array>
#include <numbers>

using namespace toehold::resistance;

namespace {
constexpr double degree = std::numbers::pi / 180.0;
}

TEST_CASE("Screws under combined load match an independent computation of Eq. 12.4-1", "[unit]") {
    // W'p 762.5 lb, Z' 270 lb, computed by an independent routine; equation from memory, to be confirmed.
    struct Entry {
        double angle_deg, value_lb;
    };
    constexpr std::array entries{Entry{0, 270.0},  Entry{15, 282.2}, Entry{30, 322.0}, Entry{45, 398.8},
                                 Entry{60, 523.7}, Entry{75, 679.5}, Entry{90, 762.5}};
    for (const Entry& entry : entries) {
        CAPTURE(entry.angle_deg);
        CHECK(toehold::test::prints_as(screw_combined_lb(762.5, 270.0, entry.angle_deg * degree), entry.value_lb, 0.1));
    }
}

TEST_CASE("Nails' linear form is never above the screws'", "[property]") {
    for (double angle = 0.0; angle <= 90.0; angle += 5.0) {
        CHECK(nail_combined_lb(762.5, 270.0, angle * degree) <= screw_combined_lb(762.5, 270.0, angle * degree) + 1e-9);
    }
    // 45 degrees: 1 / (0.707107 (1/762.5 + 1/270)) = 282.00
    CHECK_CLOSE(nail_combined_lb(762.5, 270.0, 45.0 * degree), 282.0, 1e-4, 0.0);
}

TEST_CASE("A resistance that is needed and missing leaves nothing", "[unit]") {
    CHECK(screw_combined_lb(0.0, 270.0, 30.0 * degree) == 0.0);
    CHECK(screw_combined_lb(762.5, 0.0, 30.0 * degree) == 0.0);
    CHECK(screw_combined_lb(762.5, 0.0, 90.0 * degree) == 762.5);
    CHECK(screw_combined_lb(0.0, 270.0, 0.0) == 270.0);
}
