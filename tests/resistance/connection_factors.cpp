#include "resistance/wood/connection_factors.h"

#include "support/compare.h"

using namespace toehold::resistance;

TEST_CASE("The load duration factor of a connection stops at 1.6", "[unit]") {
    // NDS 2018 11.3.2 with 2.3.2: impact, 2.0, is not for connections.
    CHECK(connection_load_duration(0.9) == 0.9);
    CHECK(connection_load_duration(1.6) == 1.6);
    CHECK(connection_load_duration(2.0) == 1.6);
    CHECK_THROWS_AS(connection_load_duration(-0.1), std::invalid_argument);
}

TEST_CASE("Wet service factors follow Table 11.3.3", "[published]") {
    // NDS 2018 Table 11.3.3, from memory, to be confirmed.
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
    // NDS 2018 Table 11.3.4, from memory, to be confirmed.
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
