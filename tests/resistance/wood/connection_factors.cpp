// Adjustment factors of connections.
#include "resistance/wood/connection_factors.h"

#include "support/compare.h"

#include <array>

using namespace toehold::resistance;

TEST_CASE("The load duration factor of a connection stops at 1.6", "[unit]") {
    // NDS 2018 11.3.2 with 2.3.2: impact, 2.0, is not for connections.
    CHECK(connection_load_duration(0.9) == 0.9);
    CHECK(connection_load_duration(1.6) == 1.6);
    CHECK(connection_load_duration(2.0) == 1.6);
    CHECK_THROWS_AS(connection_load_duration(-0.1), std::invalid_argument);
}

TEST_CASE("Wet service factors follow Table 11.3.3", "[published]") {
    // NDS 2018 Table 11.3.3, read in a public text.
    using M = ConnectionMoisture;
    CHECK(screw_withdrawal_wet_service(M::dry) == 1.0);
    CHECK(screw_withdrawal_wet_service(M::dried_in_service) == 1.0);
    CHECK(screw_withdrawal_wet_service(M::wet) == 0.7);

    CHECK(lateral_wet_service(M::dry, 0.375, false) == 1.0);
    CHECK(lateral_wet_service(M::wet, 0.375, true) == 0.7);
    CHECK(lateral_wet_service(M::wet, 0.19, false) == 0.7);
    CHECK(lateral_wet_service(M::dried_in_service, 0.375, false) == 0.4);
    CHECK(lateral_wet_service(M::dried_in_service, 0.375, true) == 1.0);
    CHECK(lateral_wet_service(M::dried_in_service, 0.19, false) == 0.7);
}

TEST_CASE("Temperature factors follow Table 11.3.4", "[published]") {
    // NDS 2018 Table 11.3.4, read in a public text.
    using M = ConnectionMoisture;
    using T = ConnectionTemperature;
    CHECK(connection_temperature(T::to_100F, M::wet) == 1.0);
    CHECK(connection_temperature(T::to_125F, M::dry) == 0.8);
    CHECK(connection_temperature(T::to_125F, M::wet) == 0.7);
    CHECK(connection_temperature(T::to_150F, M::dried_in_service) == 0.7);
    CHECK(connection_temperature(T::to_150F, M::wet) == 0.5);
}

TEST_CASE("The constants of the connection tables are the published ones", "[published]") {
    CHECK(connection_format_conversion() == 3.32);  // NDS Table 11.3.1, read in a public scan
    CHECK(connection_resistance_factor() == 0.65);  // the same
    CHECK(lag_withdrawal_end_grain() == 0.75);      // NDS 12.5.2.1, read
    CHECK(lateral_end_grain() == 0.67);  // NDS 12.5.2.2, read as "two thirds" and as 0.67 in two public texts
}

TEST_CASE("Group action factors meet the entries of NDS Table 11.3.6A that were read", "[published]") {
    // Public transcriptions: D 1 in, s 4 in, E 1.4e6 psi; As/Am 0.5, As 5 in2: n 2, 3, 4, 8; As/Am 1, As 12 in2: n 4.
    const double slip = wood_to_wood_slip_modulus_lb_per_in(1.0);
    const std::pair<int, double> halves[] = {{2, .98}, {3, .92}, {4, .84}, {8, .55}};
    for (const auto& [n, printed] : halves) {
        CAPTURE(n);
        CHECK(toehold::test::prints_as(group_factor({n, 4.0, 1.0, slip, 1.4e6 * 10.0, 1.4e6 * 5.0}), printed, 0.01));
    }
    CHECK(toehold::test::prints_as(group_factor({4, 4.0, 1.0, slip, 1.4e6 * 12.0, 1.4e6 * 12.0}), .96, 0.01));
}

TEST_CASE("Group action factors come out as tabulated for 1 in fasteners 4 in apart", "[memory]") {
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
