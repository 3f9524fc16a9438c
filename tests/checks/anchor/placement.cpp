// Placement of the example's anchors: 3/8 in lag screws, 1.75 in from the edge of a 3.5 in wide block along x, 5.25 in
// from its end, 4 in apart along the grain, two in each block.
#include "checks/anchor/bolt_example.h"
#include "checks/anchor/placement_rules.h"
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

#include <cmath>

using namespace toehold;
using catalog::FastenerKind;
using checks::Status;
using test::run_check;

namespace {

constexpr demand::AnchorForce pull_and_across{800.0, 0.0, 50.0};  // y is across the grain of the example's blocks
constexpr demand::AnchorForce pull_only{800.0, 0.0, 0.0};

checks::CheckResult result_of(const catalog::Resolved& resolved, const demand::AnchorForce& force,
                              const std::string& aspect) {
    for (const auto& result : run_check("anchor-spacing", resolved, test::example_demand(resolved, force, {})))
        if (test::about(result) == "anchor A" && result.aspect == aspect) return result;
    FAIL("no result " << aspect);
    return {};
}

}  // namespace

TEST_CASE("The example's anchors keep every least distance", "[unit]") {
    const auto resolved = test::example_resolved();
    const auto all = run_check("anchor-spacing", resolved, test::example_demand(resolved, pull_and_across, {}));
    REQUIRE(all.size() == 12);  // edge, end, spacing of four anchors
    for (const auto& result : all) {
        CHECK(result.status == Status::holds);
        CHECK(result.unit == "in");
    }
}

TEST_CASE("Pulled only, an anchor keeps 1.5 D of edge and 4 D of end and spacing", "[published]") {
    // NDS 2018 Table 12.5.1E, read in a public transcription: 0.5625, 1.5, 1.5 in.
    const auto resolved = test::example_resolved();
    CHECK(result_of(resolved, pull_only, "edge").demand == 0.5625);
    CHECK(result_of(resolved, pull_only, "edge").capacity == 1.75);
    CHECK(result_of(resolved, pull_only, "end").demand == 1.5);
    CHECK(result_of(resolved, pull_only, "end").capacity == 5.25);
    CHECK(result_of(resolved, pull_only, "spacing").demand == 1.5);
    CHECK(result_of(resolved, pull_only, "spacing").capacity == 4.0);
}

TEST_CASE("Force across the grain makes the edge a loaded one: 4 D", "[published]") {
    // The 4 D of NDS Table 12.5.1C was read in a public quotation of its commentary. 4 x 3/8 = 1.5 <= 1.75.
    auto resolved = test::example_resolved();
    const auto wide = result_of(resolved, pull_and_across, "edge");
    CHECK(wide.demand == 1.5);
    CHECK(wide.status == Status::holds);
    CHECK(wide.clause == "NDS 2018 Table 12.5.1C");
    resolved.anchors[0].seat->edge_in = 0.75;  // a 1.5 in block on edge
    const auto narrow = result_of(resolved, pull_and_across, "edge");
    CHECK(narrow.status == Status::fails);
    CHECK_CLOSE(narrow.ratio, 2.0, 1e-12, 0.0);
    CHECK_FALSE(narrow.note.empty());
    CHECK(result_of(resolved, pull_only, "edge").status == Status::holds);
}

TEST_CASE("An edge distance met exactly holds in inches and in millimeters, and one missed by 0.001 in does not",
          "[unit][A18]") {
    auto resolved = test::example_resolved();
    // 7/16 in: 4 D = 1.75 in = 44.45 mm, where the edge's distance comes of a sum and of a change of unit.
    resolved.anchors[0].diameter_in = 11.1125 / 25.4;
    const double met[] = {1.75, 44.45 / 25.4, 100.0 / 25.4 - 55.55 / 25.4, 1.75 * (1.0 - 1e-9)};
    for (const double edge_in : met) {
        resolved.anchors[0].seat->edge_in = edge_in;
        CHECK(result_of(resolved, pull_and_across, "edge").status == Status::holds);
    }
    resolved.anchors[0].seat->edge_in = 1.749;
    CHECK(result_of(resolved, pull_and_across, "edge").status == Status::fails);
}

TEST_CASE("Two rows along the grain in one block keep half their spacing to the edge", "[unit]") {
    // All four anchors in a 7.5 in wide block B1, rows 4 in apart: 2 in needed (l/D = 12), 1.75 there.
    auto resolved = test::example_resolved();
    for (auto& anchor : resolved.anchors) {
        anchor.seat->member = 0;
        anchor.at.y_in *= 0.8;
    }
    const auto result = result_of(resolved, {800.0, 50.0, 0.0}, "edge");
    CHECK(result.demand == 2.0);
    CHECK(result.status == Status::fails);
    CHECK(result_of(resolved, pull_only, "edge").demand == 0.5625);
    resolved.anchors[1].at.y_in = 0.0;  // A stands in no row any more
    CHECK(result_of(resolved, {800.0, 50.0, 0.0}, "edge").demand == 0.5625);
}

TEST_CASE("Which way the block runs decides what is across its grain", "[property]") {
    auto resolved = test::example_resolved();
    resolved.detail.framing.blocks[0].along = model::PlanAxis::y;
    CHECK(result_of(resolved, pull_and_across, "edge").demand == 0.5625);
    CHECK(result_of(resolved, {800.0, 50.0, 0.0}, "edge").demand == 1.5);
}

TEST_CASE("An end closer than 4 D fails under withdrawal", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].seat->end_in = 1.4;
    CHECK(result_of(resolved, pull_only, "end").status == Status::fails);
    // Not pulled, loaded along the grain: least 3.5 D = 1.3125.
    const auto sideways = result_of(resolved, {0.0, 50.0, 0.0}, "end");
    CHECK(sideways.demand == 1.3125);
    CHECK(sideways.status == Status::holds);
}

TEST_CASE("Neighbours along the grain, loaded across it, are rows: up to 5 D apart", "[unit]") {
    // l/D = 4.625/0.375 > 6, so 5 D = 1.875 in along the grain (NDS 2018 Table 12.5.1D, from memory).
    auto resolved = test::example_resolved();
    resolved.anchors[0].at.x_in = 0.25;  // B stands at 2.0
    const auto close = result_of(resolved, pull_and_across, "spacing");
    CHECK(close.demand == 1.875);
    CHECK(close.capacity == 1.75);
    CHECK(close.status == Status::fails);
    CHECK(close.clause == "NDS 2018 Table 12.5.1D");
    CHECK(result_of(resolved, pull_only, "spacing").status == Status::holds);
}

TEST_CASE("The neighbour that leads is the one furthest from what it needs", "[property]") {
    auto resolved = test::example_resolved();
    for (auto& anchor : resolved.anchors) anchor.seat->member = 0;
    resolved.anchors[3].at = {-2.0, -1.5};  // D, 1 in across the grain from A: 4 D = 1.5 is missed
    const auto result = result_of(resolved, pull_only, "spacing");
    CHECK(result.demand == 1.5);
    CHECK(result.capacity == 1.0);
    CHECK(result.status == Status::fails);
}

TEST_CASE("Anchors in different blocks are no neighbours", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[1].seat->member = 1;
    const auto all = run_check("anchor-spacing", resolved, test::example_demand(resolved, pull_only, {}));
    CHECK(all.size() == 11);  // A has no spacing
}

TEST_CASE("Through-bolts answer to the lateral limits only", "[unit]") {
    const auto resolved = test::bolted_example();
    CHECK(result_of(resolved, pull_only, "edge").demand == 0.75);       // 1.5 D
    CHECK(result_of(resolved, pull_only, "end").demand == 1.0);         // 2 D
    CHECK(result_of(resolved, pull_only, "spacing").demand == 1.5);     // 3 D
    CHECK(result_of(resolved, pull_and_across, "edge").demand == 2.0);  // 4 D, against 1.75
    CHECK(result_of(resolved, pull_and_across, "edge").status == Status::fails);
}

TEST_CASE("A screw under 1/4 in follows the commentary", "[unit]") {
    auto resolved = test::example_resolved();
    for (auto& anchor : resolved.anchors) {
        anchor.kind = FastenerKind::wood_screw;
        anchor.diameter_in = 0.242;
    }
    CHECK_CLOSE(result_of(resolved, pull_and_across, "edge").demand, 0.605, 1e-12, 0.0);
    CHECK_CLOSE(result_of(resolved, pull_and_across, "end").demand, 2.42, 1e-12, 0.0);
    CHECK_CLOSE(result_of(resolved, pull_and_across, "spacing").demand, 2.42, 1e-12, 0.0);
}

TEST_CASE("A reported fastener keeps the distances of its report, or the evidence is missing", "[bad-input]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].kind = FastenerKind::reported;
    resolved.anchors[0].reported = model::ReportedFastener{};
    for (const char* title : {"edge", "end", "spacing"})
        CHECK(result_of(resolved, pull_and_across, title).status == Status::missing_evidence);
    resolved.anchors[0].reported->minimum_edge_in = 2.0;
    resolved.anchors[0].reported->minimum_end_in = 4.0;
    resolved.anchors[0].reported->minimum_spacing_in = 4.5;
    CHECK(result_of(resolved, pull_and_across, "edge").status == Status::fails);
    CHECK(result_of(resolved, pull_and_across, "end").status == Status::holds);
    CHECK(result_of(resolved, pull_and_across, "spacing").status == Status::fails);
}

TEST_CASE("Two anchors in one place are a failure, not a division by nothing", "[bad-input]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].at = resolved.anchors[1].at;
    const auto result = result_of(resolved, pull_and_across, "spacing");
    CHECK(result.status == Status::no_path);
    CHECK(std::isinf(result.ratio));
}

TEST_CASE("An anchor in a doubled joist keeps its distance to the seam, and the words say joist", "[unit]") {
    // Across the grain of a joist along y is along x: 4 D = 1.5 in against 0.75 in to the seam.
    auto resolved = test::framed_example();
    resolved.detail.framing.joists->members[0].plies = 2;
    resolved.anchors[0].at = {-7.25, 0.0};
    resolved.anchors[0].seat = model::Seat{2, 0.75, 12.0};
    const auto edge = result_of(resolved, {800.0, 50.0, 0.0}, "edge");
    CHECK(edge.demand == 1.5);
    CHECK(edge.capacity == 0.75);
    CHECK(edge.status == Status::fails);
    CHECK(format::english(edge.note) == "Use a wider joist or a smaller anchor, or move the anchor.");
    CHECK(format::english(edge.steps.back().meaning) ==
          "anchor's center to the nearer long edge of its piece of joist J1, seams counted as edges");
    CHECK(format::english(result_of(resolved, pull_only, "end").steps.back().meaning) ==
          "anchor's center to the nearer end of joist J1");
}

TEST_CASE("Where the joists end is not guessed", "[bad-input]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].seat = model::Seat{2, 0.75, 1e4};
    CHECK(result_of(resolved, pull_only, "end").status == Status::missing_evidence);
}

TEST_CASE("Half a diameter across the grain is still one row", "[unit]") {
    CHECK(checks::rows_apart_in(0.5, {{{}, 4.0, 0.25}, {{}, 4.0, 0.26}}) == 0.26);
    CHECK(checks::rows_apart_in(0.5, {{{}, 4.0, 0.26}}) == 0.0);  // in no row
}

TEST_CASE("A reported fastener without its least distance still shows what there is", "[bad-input]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].kind = FastenerKind::reported;
    resolved.anchors[0].reported = model::ReportedFastener{};
    const auto edge = result_of(resolved, pull_only, "edge");
    CHECK(edge.status == Status::missing_evidence);
    CHECK(edge.capacity == 1.75);
}
