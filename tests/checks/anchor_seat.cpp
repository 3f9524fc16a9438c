// Anchors that miss the blocking.
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/example.h"

#include <cmath>

using namespace toehold;
using checks::Status;
using test::run_check;

TEST_CASE("Anchors that land on a block need no word", "[unit]") {
    const auto resolved = test::example_resolved();
    CHECK(run_check("anchor-seat", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {})).empty());
}

TEST_CASE("An anchor over no block has no path for its tension", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[1].seat.reset();
    resolved.anchors[1].embedment_in = resolved.anchors[1].thread_in_block_in = 0.0;
    const auto results = run_check("anchor-seat", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    REQUIRE(results.size() == 1);
    CHECK(results[0].subject == "anchor B");
    CHECK(results[0].status == Status::no_path);
    CHECK(results[0].demand == 1000.0);
    CHECK(results[0].capacity == 0.0);
    CHECK(std::isinf(results[0].ratio));
    CHECK(results[0].note.find("decking only") != std::string::npos);
    CHECK_CLOSE(results[0].direction_deg.value(), 90.0, 0.0, 1e-9);
}

TEST_CASE("An anchor too short to reach the block has no path", "[unit]") {
    auto resolved = test::example_resolved();
    resolved.anchors[0].length_in = 1.25;  // 3/8 plate and 1 in decking lie above
    resolved.anchors[0].embedment_in = resolved.anchors[0].thread_in_block_in = 0.0;
    const auto results = run_check("anchor-seat", resolved, test::example_demand(resolved, {1000.0, 0.0, 50.0}, {}));
    REQUIRE(results.size() == 1);
    CHECK(results[0].status == Status::no_path);
    CHECK(results[0].note == "anchor A is 1.25 in long and 1.375 in lie above block B1: it does not reach the block.");
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
