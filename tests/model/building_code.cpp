// Clause numbers by edition, as seen in public copies of the codes; those from memory say so.
#include "model/building_code.h"

#include "model/base_detail.h"

#include <catch2/catch.hpp>

using namespace toehold::model;

TEST_CASE("The guard's loads stand at 1607.8.1 in the IBC of 2018 and at 1607.9.1 in that of 2021", "[published]") {
    CHECK(clause(BuildingCode::ibc_2018, Provision::line_guard_load) == "IBC 2018 1607.8.1");
    CHECK(clause(BuildingCode::ibc_2018, Provision::concentrated_guard_load) == "IBC 2018 1607.8.1.1");
    CHECK(clause(BuildingCode::ibc_2018, Provision::infill_load) == "IBC 2018 1607.8.1.2");
    CHECK(clause(BuildingCode::ibc_2021, Provision::line_guard_load) == "IBC 2021 1607.9.1");
    CHECK(clause(BuildingCode::ibc_2021, Provision::concentrated_guard_load) == "IBC 2021 1607.9.1.1");
    CHECK(clause(BuildingCode::irc_2021, Provision::concentrated_guard_load) == "IRC 2021 Table R301.5");
    CHECK(clause(BuildingCode::ibc_2021, Provision::guard_load_standard) == "ASCE 7-16 4.5.1");
    CHECK(clause(BuildingCode::ibc_2018, Provision::load_test) == "IBC 2018 1709.3.1");
    CHECK(clause(BuildingCode::irc_2021, Provision::guard_on_decking) == "IRC 2021 R507.10.1.2");
}

TEST_CASE("A number nobody saw in print says so", "[memory]") {
    for (const BuildingCode code : {BuildingCode::irc_2024, BuildingCode::ibc_2024}) {
        CHECK(clause(code, Provision::concentrated_guard_load).find("from memory") != std::string::npos);
        CHECK(clause(code, Provision::guard_load_standard).starts_with("ASCE 7-22 4.5.1"));
    }
    CHECK(clause(BuildingCode::irc_2024, Provision::guard_height) ==
          "IRC 2024 R321.1.2 (from memory, to be confirmed)");
}

TEST_CASE("Where the residential code has no rule the building code of its year is cited", "[unit]") {
    CHECK(clause(BuildingCode::irc_2018, Provision::line_guard_load) == "IBC 2018 1607.8.1");
    CHECK(clause(BuildingCode::irc_2021, Provision::line_guard_load) == "IBC 2021 1607.9.1");
}

TEST_CASE("The residential rules for guards on decks are practice where another code is in force", "[unit]") {
    const std::string elsewhere = clause(BuildingCode::ibc_2021, Provision::notched_post);
    CHECK(elsewhere.starts_with("IBC 2021"));
    CHECK(elsewhere.ends_with("practice of IRC 2021 R507.10.2"));
    CHECK(clause(BuildingCode::irc_2018, Provision::notched_post).ends_with("practice of IRC 2021 R507.10.2"));
    CHECK(clause(BuildingCode::irc_2021, Provision::notched_post) == "IRC 2021 R507.10.2");
}

TEST_CASE("Only the residential code lets a guard do without pushes", "[memory]") {
    CHECK(directions_without_handrail(BuildingCode::ibc_2018) == GuardDirections::any);
    CHECK(directions_without_handrail(BuildingCode::ibc_2024) == GuardDirections::any);
    CHECK(directions_without_handrail(BuildingCode::irc_2018) == GuardDirections::not_along);
    CHECK(directions_without_handrail(BuildingCode::irc_2021) == GuardDirections::outward_and_down);
}

TEST_CASE("A line load's spacing is the tributary length where the guard has none", "[unit]") {
    Guard guard;
    Loads loads;
    CHECK_FALSE(tributary_length_in(guard, loads));
    loads.line = LineLoad{50.0, 5.0, 0.0};
    CHECK(tributary_length_in(guard, loads) == 60.0);
    guard.tributary_length_in = 72.0;
    CHECK(tributary_length_in(guard, loads) == 72.0);
}
