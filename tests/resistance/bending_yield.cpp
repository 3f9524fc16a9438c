#include "resistance/wood/bending_yield.h"

#include "support/compare.h"

using namespace toehold::resistance;

TEST_CASE("Bending yield strengths step down with diameter as in Table I1", "[published]") {
    // NDS 2018 Table I1, from memory, to be confirmed.
    CHECK(nail_bending_yield_psi(0.099) == 100000.0);
    CHECK(nail_bending_yield_psi(0.131) == 100000.0);  // 8d common
    CHECK(nail_bending_yield_psi(0.148) == 90000.0);   // 10d common
    CHECK(nail_bending_yield_psi(0.162) == 90000.0);   // 16d common
    CHECK(nail_bending_yield_psi(0.192) == 80000.0);   // 20d common
    CHECK(nail_bending_yield_psi(0.242) == 70000.0);   // No. 14 wood screw
    CHECK(nail_bending_yield_psi(0.320) == 60000.0);   // No. 20 wood screw
    CHECK(nail_bending_yield_psi(0.372) == 45000.0);   // No. 24 wood screw
}

TEST_CASE("Lag screws' bending yield strengths are those that reproduce Table 12K", "[published]") {
    CHECK(lag_bending_yield_psi(0.25) == 70000.0);
    CHECK(lag_bending_yield_psi(0.3125) == 60000.0);
    CHECK(lag_bending_yield_psi(0.375) == 45000.0);
    CHECK(lag_bending_yield_psi(1.0) == 45000.0);
    CHECK(bolt_bending_yield_psi() == 45000.0);
}

TEST_CASE("A fastener without a diameter has no bending yield strength", "[bad-input]") {
    CHECK_THROWS_AS(nail_bending_yield_psi(0.0), std::invalid_argument);
    CHECK_THROWS_AS(lag_bending_yield_psi(-0.25), std::invalid_argument);
}
