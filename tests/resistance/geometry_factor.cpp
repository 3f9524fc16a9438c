#include "resistance/wood/geometry_factor.h"

#include "support/compare.h"

using namespace toehold::resistance;

TEST_CASE("Reduced end distances lower the value in proportion down to half", "[published]") {
    // NDS 2018 Table 12.5.1A, softwoods (from memory, to be confirmed): D = 1/2 in.
    CHECK(end_distance_factor(3.5, 0.5, EndLoading::toward) == 1.0);                     // 7 D
    CHECK_CLOSE(end_distance_factor(2.625, 0.5, EndLoading::toward), 0.75, 1e-14, 0.0);  // 5.25 D
    CHECK_CLOSE(end_distance_factor(1.75, 0.5, EndLoading::toward), 0.5, 1e-14, 0.0);    // 3.5 D, the least
    CHECK(end_distance_factor(1.74, 0.5, EndLoading::toward) == 0.0);
    CHECK(end_distance_factor(2.0, 0.5, EndLoading::away) == 1.0);  // 4 D
    CHECK_CLOSE(end_distance_factor(1.0, 0.5, EndLoading::perpendicular), 0.5, 1e-14, 0.0);
    CHECK(end_distance_factor(0.99, 0.5, EndLoading::perpendicular) == 0.0);
}

TEST_CASE("Reduced spacing lowers the value down to three quarters", "[published]") {
    // NDS 2018 Table 12.5.1B (from memory, to be confirmed): full 4 D, least 3 D.
    CHECK(spacing_factor(4.0, 0.5) == 1.0);
    CHECK_CLOSE(spacing_factor(1.75, 0.5), 0.875, 1e-14, 0.0);
    CHECK_CLOSE(spacing_factor(1.5, 0.5), 0.75, 1e-14, 0.0);
    CHECK(spacing_factor(1.49, 0.5) == 0.0);
}

TEST_CASE("Thin fasteners have no geometry factor", "[unit]") {
    CHECK(end_distance_factor(0.1, 0.242, EndLoading::toward) == 1.0);
    CHECK(spacing_factor(0.1, 0.242) == 1.0);
}
