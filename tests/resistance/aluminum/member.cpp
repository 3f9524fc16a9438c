// Yielding and rupture of aluminum in bending: Aluminum Design Manual 2020, all from memory, to be confirmed.
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

// 2 x 2 x 1/8 in, square corners: Z = (8 - 1.75^3)/4 = 0.66016, S = 0.55176: Z/S = 1.196, under 1.5. 0.5.0 had F_y S.
TEST_CASE("A tube yields on its plastic modulus, no more than 1.5 times the elastic one", "[closed-form]") {
    const auto moment = aluminum::section_moment(0.55176, 0.66016, {15e3, 24e3});
    CHECK_CLOSE(moment.yield_lb_in, 9902.4, 1e-9, 0.0);
    CHECK_CLOSE(moment.rupture_lb_in, 15843.84, 1e-9, 0.0);
    // A round bar: Z/S = 1.698.
    CHECK_CLOSE(aluminum::section_moment(1.0, 1.698, {15e3, 24e3}).yield_lb_in, 22500.0, 1e-12, 0.0);
}

TEST_CASE("A stocky aluminum column has 0.85 of its yield", "[memory]") {
    // ADM 2020 E.2, from memory: 0.85 for the crookedness of a column. 2 x 2 x 1/8, square corners: 0.9375 in2.
    const auto section = steel::section_as_drawn({false, 2.0, 2.0, 0.125});
    CHECK_CLOSE(aluminum::flagpole_axial_lb(section, 0.0, 15e3, 10.1e6), 0.85 * 15e3 * 0.9375, 1e-3, 0.0);
}
