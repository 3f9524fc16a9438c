// A line whose forces do not balance is refused, never shown.
#include "demand/line/line_frame.h"
#include "demand/line/lines.h"

#include <catch2/catch.hpp>

#include <string>

using namespace toehold;

TEST_CASE("a solve that loses its digits gives no number of a line, and says so", "[bad-input]") {
    demand::LineInput line = test::straight_line(4, 72.0, 1e6, 1e6);
    CHECK(test::line_demand_of(line).residual <= demand::largest_line_residual);
    // A rail ten orders stiffer than the posts that hold it: their part of the balance is rounded away.
    line.soft_rail = line.stiff_rail = {1e9, 1e16};
    const demand::LineOutcome outcome = demand::find_line_demand(line);
    CHECK_FALSE(outcome.demand);
    CHECK(format::english(outcome.failure).find("do not balance") != std::string::npos);
}

TEST_CASE("the frame of upright loads counts among those solved", "[unit]") {
    const demand::LineDemand demand = test::line_demand_of(test::straight_line(2, 72.0, 1e6, 1e6));
    CHECK(demand.frames == 2);
}
