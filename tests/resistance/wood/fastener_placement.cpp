// Least distances in wood, how they stand to each other, and the geometry factor between them and the full ones.
#include "resistance/wood/fastener_placement.h"

#include "support/compare.h"

using namespace toehold::resistance;

TEST_CASE("A 3/8 in lag screw in withdrawal needs 9/16 in of edge and 1-1/2 in of end and spacing", "[published]") {
    // NDS 2018 Table 12.5.1E, read in a public transcription: 1.5 D, 4 D, 4 D.
    CHECK(withdrawal_edge_in(0.375) == 0.5625);
    CHECK(withdrawal_end_in(0.375) == 1.5);
    CHECK(withdrawal_spacing_in(0.375) == 1.5);
}

TEST_CASE("Edges are 1.5 D, and 4 D where loaded across the grain", "[published]") {
    // Both numbers read in a public quotation of the commentary to NDS Table 12.5.1C.
    CHECK(unloaded_edge_in(0.5) == 0.75);
    CHECK(loaded_edge_in(0.5) == 2.0);
}

TEST_CASE("A slender fastener loaded along the grain keeps half the row spacing to the edge", "[published]") {
    // The publisher's words on NDS Table 12.5.1C in a public mail archive: l/D <= 6: 1.5 D; above: or half the spacing
    // between rows, whichever is more. D = 3/8: 1.5 D = 0.5625, l/D = 6 at 2.25 in.
    CHECK(edge_loaded_along_in(0.375, 2.25, 4.0) == 0.5625);
    CHECK(edge_loaded_along_in(0.375, 2.5, 4.0) == 2.0);
    CHECK(edge_loaded_along_in(0.375, 2.5, 1.0) == 0.5625);
    CHECK(edge_loaded_along_in(0.375, 2.5, 0.0) == 0.5625);
}

TEST_CASE("Minimum ends and spacing are half and three quarters of the full values", "[published]") {
    // NDS 2018 Tables 12.5.1A and B, read in a public transcription: full 7 D along (softwood), 4 D across, 4 D in a
    // row.
    CHECK(end_loaded_along_in(0.5) == 0.5 * 7.0 * 0.5);
    CHECK(end_loaded_across_in(0.5) == 0.5 * 4.0 * 0.5);
    CHECK(spacing_in_row_in(0.5) == 0.75 * 4.0 * 0.5);
}

TEST_CASE("Rows loaded across the grain stand further apart the slenderer the fastener", "[published]") {
    // NDS 2018 Table 12.5.1D, read in a public transcription. D = 1/2: l/D 2 -> 1.25; l/D 4 -> (10 + 5)/8 = 1.875; l/D
    // >= 6 -> 2.5.
    CHECK(rows_loaded_across_in(0.5, 0.25) == 1.25);
    CHECK(rows_loaded_across_in(0.5, 1.0) == 1.25);
    CHECK(rows_loaded_across_in(0.5, 2.0) == 1.875);
    CHECK(rows_loaded_across_in(0.5, 3.0) == 2.5);
    CHECK(rows_loaded_across_in(0.5, 5.5) == 2.5);
}

TEST_CASE("A screw under 1/4 in follows the commentary's distances", "[memory]") {
    // NDS Commentary, from memory: 2.5 D, 10 D, 10 D along and 5 D across, with lead holes.
    CHECK_CLOSE(small_screw_edge_in(0.242), 0.605, 1e-12, 0.0);
    CHECK_CLOSE(small_screw_end_in(0.242), 2.42, 1e-12, 0.0);
    CHECK_CLOSE(small_screw_spacing_along_in(0.242), 2.42, 1e-12, 0.0);
    CHECK_CLOSE(small_screw_spacing_across_in(0.242), 1.21, 1e-12, 0.0);
}

TEST_CASE("Reduced end distances lower the value in proportion down to half", "[published]") {
    // NDS 2018 Table 12.5.1A, softwoods, read in a public text: D = 1/2 in.
    CHECK(end_distance_factor(3.5, 0.5, EndLoading::toward) == 1.0);                     // 7 D
    CHECK_CLOSE(end_distance_factor(2.625, 0.5, EndLoading::toward), 0.75, 1e-14, 0.0);  // 5.25 D
    CHECK_CLOSE(end_distance_factor(1.75, 0.5, EndLoading::toward), 0.5, 1e-14, 0.0);    // 3.5 D, the least
    CHECK(end_distance_factor(1.74, 0.5, EndLoading::toward) == 0.0);
    CHECK(end_distance_factor(2.0, 0.5, EndLoading::away) == 1.0);  // 4 D
    CHECK_CLOSE(end_distance_factor(1.0, 0.5, EndLoading::perpendicular), 0.5, 1e-14, 0.0);
    CHECK(end_distance_factor(0.99, 0.5, EndLoading::perpendicular) == 0.0);
}

TEST_CASE("Reduced spacing lowers the value down to three quarters", "[published]") {
    // NDS 2018 Table 12.5.1B, read in a public text: full 4 D, least 3 D.
    CHECK(spacing_factor(4.0, 0.5) == 1.0);
    CHECK_CLOSE(spacing_factor(1.75, 0.5), 0.875, 1e-14, 0.0);
    CHECK_CLOSE(spacing_factor(1.5, 0.5), 0.75, 1e-14, 0.0);
    CHECK(spacing_factor(1.49, 0.5) == 0.0);
}

TEST_CASE("Thin fasteners have no geometry factor", "[unit]") {
    CHECK(end_distance_factor(0.1, 0.242, EndLoading::toward) == 1.0);
    CHECK(spacing_factor(0.1, 0.242) == 1.0);
    // From 1/4 in on they have.
    CHECK_CLOSE(spacing_factor(0.75, 0.25), 0.75, 1e-14, 0.0);
    CHECK_CLOSE(end_distance_factor(0.875, 0.25, EndLoading::toward), 0.5, 1e-14, 0.0);
}
