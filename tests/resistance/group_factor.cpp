#include "resistance/wood/group_factor.h"

#include "support/compare.h"

#include <array>

using namespace toehold::resistance;

TEST_CASE("Group action factors come out as tabulated for 1 in fasteners 4 in apart", "[published]") {
    // NDS Tables 11.3.6A (wood side members, As/Am 0.5, As 5 in2) and 11.3.6C (steel side plates, Am/As 12, Am 5 in2):
    // D 1 in, s 4 in, E 1.4e6 psi, steel 30e6 psi. Printed rows for n = 2 to 12, from memory, to be confirmed.
    constexpr std::array wood{.98, .92, .84, .75, .68, .61, .55, .50, .45, .41, .38};
    constexpr std::array steel{.97, .89, .80, .70, .62, .55, .49, .44, .40, .37, .34};
    for (int n = 2; n <= 12; ++n) {
        CAPTURE(n);
        const auto column = static_cast<std::size_t>(n - 2);
        const FastenerRow to_wood{n, 4.0, 1.0, wood_to_wood_slip_modulus_lb_per_in(1.0), 1.4e6 * 10.0, 1.4e6 * 5.0};
        const FastenerRow to_steel{
            n, 4.0, 1.0, wood_to_metal_slip_modulus_lb_per_in(1.0), 1.4e6 * 5.0, 30e6 * 5.0 / 12.0};
        CHECK(toehold::test::prints_as(group_factor(to_wood), wood[column], 0.01));
        CHECK(toehold::test::prints_as(group_factor(to_steel), steel[column], 0.01));
    }
}

TEST_CASE("Two fasteners between equal members share equally", "[closed-form]") {
    const FastenerRow row{2, 4.0, 0.5, wood_to_wood_slip_modulus_lb_per_in(0.5), 2e7, 2e7};
    CHECK_CLOSE(group_factor(row), 1.0, 1e-9, 0.0);
}

TEST_CASE("One fastener and thin fasteners act alone", "[unit]") {
    CHECK(group_factor({1, 0.0, 0.5, 0.0, 0.0, 0.0}) == 1.0);
    CHECK(group_factor({5, 2.0, 0.242, 1.0, 1.0, 1.0}) == 1.0);
}

TEST_CASE("A row without stiffness is refused", "[bad-input]") {
    CHECK_THROWS_AS(group_factor({2, 4.0, 0.5, 1e5, 0.0, 2e7}), std::invalid_argument);
    CHECK_THROWS_AS(group_factor({2, 0.0, 0.5, 1e5, 2e7, 2e7}), std::invalid_argument);
}
