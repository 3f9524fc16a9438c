// Where anchors stand, and anchors that miss the framing.
#include "checks/member/framing_example.h"
#include "checks/run_check.h"
#include "model/placement.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>
#include <cmath>

using namespace toehold;
using checks::Status;
using test::run_check;
using test::step_value;

namespace {

std::vector<checks::CheckResult> seats(const catalog::Resolved& resolved) {
    return run_check("anchor-seat", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
}

const checks::CheckResult& without_path(const std::vector<checks::CheckResult>& results) {
    const auto found = std::find_if(results.begin(), results.end(),
                                    [](const auto& result) { return result.status == Status::no_path; });
    REQUIRE(found != results.end());
    return *found;
}

}  // namespace

TEST_CASE("An anchor that lands says in which member and where", "[unit]") {
    const auto results = seats(test::example_resolved());
    REQUIRE(results.size() == 4);
    CHECK(results[0].status == Status::holds);
    CHECK(results[0].demand == 0.1875);  // half of 3/8
    CHECK(results[0].capacity == 1.75);
    CHECK(step_value(results[0], "b") == 3.5);
    CHECK(step_value(results[0], "d") == 5.5);
    CHECK(step_value(results[0], "e") == 1.75);
    CHECK(step_value(results[0], "e_n") == 5.25);
    CHECK(step_value(results[0], "p_e") == 4.625);
    CHECK(format::english(results[0].steps.at(0).meaning) == "width of block B1");
}

TEST_CASE("In a doubled joist the anchor stands in one of its pieces", "[unit]") {
    auto resolved = test::framed_example();
    resolved.detail.framing.joists->members[0].plies = 2;
    resolved.anchors[0].seat = model::Seat{2, 0.75, 12.0};
    const auto results = seats(resolved);
    CHECK(results.at(0).status == Status::holds);
    CHECK(step_value(results.at(0), "b") == 1.5);
    CHECK(format::english(results.at(0).steps.at(0).meaning) == "width of the piece of joist J1 that the anchor is in");
}

TEST_CASE("A hole in a seam, a face or an end holds nothing", "[unit]") {
    auto resolved = test::framed_example();
    resolved.detail.framing.joists->members[0].plies = 2;
    for (const model::Seat& seat : {model::Seat{2, 0.18, 12.0}, model::Seat{2, 0.75, 0.1}}) {
        resolved.anchors[0].seat = seat;
        const auto results = seats(resolved);
        CHECK(results.at(0).status == Status::no_path);
        CHECK(test::says(results.at(0).note, "not wholly in one piece of joist J1"));
        for (const char* check : {"anchor-spacing", "anchor-withdrawal", "anchor-lateral", "member-tension-perp"}) {
            for (const auto& result :
                 run_check(check, resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {})))
                CHECK(test::about(result) != "anchor A");
        }
    }
    resolved.anchors[0].seat = model::Seat{2, 0.125, 12.0};
    CHECK(test::says(seats(resolved).at(0).note, "its center is 1/8 in from the nearest face"));
    resolved.detail.framing.joists->members[0].plies = 2;
    CHECK(test::says(seats(resolved).at(0).note, "its center is 1/8 in from the nearest face"));
    resolved.detail.framing.joists->members[0].plies = 1;
    resolved.anchors[0].seat = model::Seat{2, 0.1875, 12.0};  // just whole
    CHECK(seats(resolved).at(0).status == Status::holds);
}

TEST_CASE("An anchor over no block has no path for its tension", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[1].seat.reset();
    resolved.anchors[1].embedment_in = resolved.anchors[1].thread_in_block_in = 0.0;
    const auto results = seats(resolved);
    const checks::CheckResult& result = without_path(results);
    CHECK(test::about(result) == "anchor B");
    CHECK(result.demand == 1000.0);
    CHECK(result.capacity == 0.0);
    CHECK(std::isinf(result.ratio));
    CHECK(test::says(result.note, "misses the framing"));
    CHECK_CLOSE(result.direction_deg.value(), 90.0, 0.0, 1e-9);
}

TEST_CASE("An anchor too short to reach the block has no path", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].length_in = 1.25;  // 3/8 plate and 1 in decking lie above
    resolved.anchors[0].embedment_in = resolved.anchors[0].thread_in_block_in = 0.0;
    const auto results = seats(resolved);
    CHECK(format::english(without_path(results).note) ==
          "Anchor A does not reach block B1: it is 1 1/4 in long and 1 3/8 in lie above the framing. Use a longer "
          "anchor.");
}

TEST_CASE("A missing seat is no path even where the anchor is not pulled", "[bad-input]") {
    auto resolved = test::example_resolved();
    for (auto& anchor : resolved.anchors) anchor.seat.reset();
    for (const double shear_lb : {0.0, 50.0}) {
        const auto results =
            run_check("anchor-seat", resolved, test::example_demand(resolved, {0.0, shear_lb, 0.0}, {}));
        REQUIRE(results.size() == 4);
        for (const auto& result : results) {
            CHECK(result.status == Status::no_path);
            CHECK(result.demand == shear_lb);
        }
    }
}

TEST_CASE("No check of an anchor over a joist or a rim speaks of a block", "[property]") {
    auto resolved = test::framed_example();
    for (catalog::Anchor& anchor : resolved.anchors)
        anchor.seat = model::Seat{anchor.at.y_in < 0.0 ? 2U : 4U, 0.75, 6.0};
    const auto demand = test::example_demand(resolved, {1000.0, 0.0, 50.0}, {});
    for (const checks::Check& check : checks::registered_checks()) {
        if (check.id.rfind("anchor", 0) != 0 && check.id != "member-tension-perp") continue;
        for (const auto& result : checks::run(check, {resolved, demand})) {
            std::string words = format::english(result.title) + format::english(result.note) + test::link_words(result);
            for (const auto& step : result.steps) words += format::english(step.meaning) + step.formula;
            INFO(result.id << ": " << words);
            CHECK(words.find("block") == std::string::npos);
        }
    }
}

TEST_CASE("A row over the joint of a doubled block is told to be moved by half a piece", "[unit][B15]") {
    // Two 2x6 in place of a 4x6, the anchors' row on their joint: 0.5.0 said only that the hole is not in one piece.
    auto resolved = test::example_resolved();
    model::Block& block = resolved.detail.framing.blocks[0];
    block.width_in = 1.5;
    block.plies = 2;
    resolved.anchors[0].seat = model::seat(resolved.detail.framing, {-2.0, block.across_in});
    REQUIRE(resolved.anchors[0].seat);
    CHECK(resolved.anchors[0].seat->edge_in < 1e-9);
    const auto results = seats(resolved);
    CHECK(results.at(0).status == Status::no_path);
    CHECK(test::says(results.at(0).note, "Move the member sideways by half a piece"));
    // Half a piece aside, the row stands in the middle of one.
    block.across_in += 0.75;
    CHECK(model::seat(resolved.detail.framing, {-2.0, block.across_in - 0.75})->edge_in == 0.75);
}

TEST_CASE("Solid infill takes an anchor in whichever piece is under it", "[unit]") {
    // Eight 2x6 on edge side by side, 12 in of them under an 8 in plate.
    auto resolved = test::example_resolved();
    resolved.detail.framing.blocks.resize(1);
    model::Block& block = resolved.detail.framing.blocks[0];
    block.across_in = 0.0;
    block.width_in = 1.5;
    block.plies = 8;
    for (const double y_in : {-2.25, 2.25}) {
        const auto seat = model::seat(resolved.detail.framing, {-2.0, y_in});
        REQUIRE(seat);
        CHECK(seat->member == 0);
        CHECK(seat->edge_in == 0.75);
    }
}
