// Aluminum in bending: Aluminum Design Manual 2020, all from memory, to be confirmed.
#include "resistance/aluminum/member.h"

#include "support/compare.h"

using namespace toehold;
using namespace toehold::resistance;

TEST_CASE("A plate's yielding and rupture use the plastic modulus", "[closed-form]") {
    // 4 x 1/2 in beside a weld of 6061-T6 (15 and 24 ksi, from memory): Z = 0.25: 3750 and 6000 lb in.
    const auto moment = aluminum::plate_moment(4.0, 0.5, {15e3, 24e3});
    CHECK_CLOSE(moment.yield_lb_in, 3750.0, 1e-12, 0.0);
    CHECK_CLOSE(moment.rupture_lb_in, 6000.0, 1e-12, 0.0);
    // 3750 / 1.65 = 2273 governs over 6000 / 1.95 = 3077.
    CHECK(moment.yield_lb_in / aluminum::yield_safety.omega < moment.rupture_lb_in / aluminum::rupture_safety.omega);
}

TEST_CASE("A tube yields on its elastic and breaks on its plastic modulus", "[closed-form]") {
    const auto moment = aluminum::tube_moment(0.55, 0.66, {15e3, 24e3});
    CHECK_CLOSE(moment.yield_lb_in, 8250.0, 1e-12, 0.0);
    CHECK_CLOSE(moment.rupture_lb_in, 15840.0, 1e-12, 0.0);
}

TEST_CASE("Wall limits are those remembered from the manual's tables of allowable stress", "[unit]") {
    // Part VI, S1 of flat elements supported on both edges in uniform compression: 6061-T6 20.8, 6063-T6 22.8; of round
    // tubes: 6061-T6 27.6 (from memory). Table values come from constants rounded to three digits: 0.5 %.
    CHECK_CLOSE(aluminum::flat_wall_limit(35e3, 10.1e6), 20.8, 0.005, 0.0);
    CHECK_CLOSE(aluminum::flat_wall_limit(25e3, 10.1e6), 22.8, 0.005, 0.0);
    CHECK_CLOSE(aluminum::round_wall_limit(35e3, 10.1e6), 27.6, 0.005, 0.0);
}
