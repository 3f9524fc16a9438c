// What is solved of the code's loads and the file's: the code's always, by occupancy and edition.
#include "demand/loads/load_cases.h"

#include "demand/loads/code_loads.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>
#include <string>
#include <vector>

using namespace toehold;
using demand::LoadCase;
using model::Directions;
using model::Occupancy;

namespace {

std::vector<std::string> solved(const std::vector<LoadCase>& cases) {
    std::vector<std::string> ids;
    for (const LoadCase& load : cases) {
        if (!load.covered_by) ids.push_back(load.id);
    }
    return ids;
}

std::vector<std::string> all(const std::vector<LoadCase>& cases) {
    std::vector<std::string> ids;
    for (const LoadCase& load : cases) ids.push_back(load.id);
    return ids;
}

using Ids = std::vector<std::string>;

}  // namespace

// IBC 2018 1607.8.1 and IBC 2021 1607.9.1 with their exceptions (public copies of both).
TEST_CASE("50 lb/ft along a guard, 20 where access is limited, none on a dwelling", "[published][A1]") {
    CHECK(demand::code_line_lb_per_ft({42.0, Occupancy::other}) == 50.0);
    CHECK(demand::code_line_lb_per_ft({42.0, Occupancy::limited}) == 20.0);
    CHECK_FALSE(demand::code_line_lb_per_ft({42.0, Occupancy::one_and_two_family}));
}

TEST_CASE("A public guard that takes 6 ft of rail is solved at 300 lb, which covers the 200 lb", "[published]") {
    model::BaseDetail detail = test::example_detail();
    detail.guard.tributary_length_in = 72.0;
    const auto cases = demand::load_cases(detail);
    CHECK(all(cases) == Ids{"concentrated", "line"});
    CHECK(solved(cases) == Ids{"line"});
    CHECK_CLOSE(cases.at(1).push_lb, 300.0, 1e-12, 0.0);
    CHECK(cases.at(0).push_lb == 200.0);
    detail.guard.occupancy = Occupancy::limited;  // 20 x 6 = 120 lb
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated"});
    CHECK_CLOSE(demand::load_cases(detail).at(1).push_lb, 120.0, 1e-12, 0.0);
    detail.guard.occupancy = Occupancy::one_and_two_family;
    CHECK(all(demand::load_cases(detail)) == Ids{"concentrated"});
    detail.basis.method = model::Method::lrfd;
    CHECK_CLOSE(demand::load_cases(detail).at(0).push_lb, 320.0, 1e-12, 0.0);
}

// 0.5.0 solved each of these alone.
TEST_CASE("No load of the file replaces or lowers the code's", "[unit][A1]") {
    model::BaseDetail detail = test::example_detail();
    detail.loads = {};
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated"});
    detail.loads.concentrated = model::ConcentratedLoad{1.0, 0.0};
    CHECK(all(demand::load_cases(detail)) == Ids{"concentrated", "file-concentrated"});
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated"});
    detail.loads = {};
    detail.loads.user = {{"leaning", 50.0, 0.0, std::nullopt, ""}};
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated"});
    detail.loads = {};
    detail.loads.line = model::LineLoad{50.0, 2.0, 0.0};  // 100 lb, and 2 ft is the tributary length
    CHECK(all(demand::load_cases(detail)) == Ids{"concentrated", "line"});
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated"});
    detail.loads.line = model::LineLoad{80.0, 6.0, 0.0};
    CHECK(solved(demand::load_cases(detail)) == Ids{"file-line"});
}

TEST_CASE("A load at another height or with a vertical force is a case of its own", "[unit]") {
    model::BaseDetail detail = test::example_detail();
    detail.guard.occupancy = Occupancy::one_and_two_family;
    detail.loads.user = {{"infill", 100.0, 0.0, 20.0, ""}};
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated", "user-1"});
    detail.loads.user = {{"leaning", 150.0, -40.0, std::nullopt, ""}};
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated", "user-1-with-vertical"});
}

TEST_CASE("A preload ends the proportion, so that nothing but an equal push is covered", "[unit]") {
    model::BaseDetail detail = test::example_detail();
    detail.guard.tributary_length_in = 72.0;
    on_deck(detail).anchors[0].preload_lb = 1000.0;
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated", "line"});
    detail.guard.tributary_length_in = 48.0;  // 200 lb too
    CHECK(solved(demand::load_cases(detail)) == Ids{"concentrated"});
}

TEST_CASE("Straight down and straight up are solved where joists may meet them", "[unit]") {
    model::BaseDetail detail = test::example_detail();
    detail.guard.occupancy = Occupancy::one_and_two_family;
    detail.framing.joists->from_in = -96.0;
    detail.framing.joists->to_in = 12.0;
    detail.framing.supports = {{"S1", model::JoistSupport::Kind::beam, -90.0, 3.5, {}}};
    const auto cases = demand::load_cases(detail);
    CHECK(solved(cases) == Ids{"concentrated", "concentrated-down", "concentrated-up"});
    CHECK(cases.at(1).push_lb == 0.0);
    CHECK(cases.at(1).down_lb == 200.0);
    CHECK(cases.at(2).down_lb == -200.0);
    CHECK(cases.at(2).directions_rad.size() == 1);
}

TEST_CASE("Fewer directions only where the edition lets a guard without a handrail do with them", "[memory]") {
    const struct {
        model::BuildingCode code;
        std::optional<bool> handrail;
        Directions stated, taken;
    } rows[] = {
        {model::BuildingCode::ibc_2021, false, Directions::outward, Directions::all_round},
        {model::BuildingCode::irc_2021, std::nullopt, Directions::outward, Directions::all_round},
        {model::BuildingCode::irc_2021, true, Directions::outward, Directions::all_round},
        {model::BuildingCode::irc_2021, false, Directions::outward, Directions::outward},
        {model::BuildingCode::irc_2021, false, Directions::across, Directions::across},
        {model::BuildingCode::irc_2018, false, Directions::across, Directions::across},
        {model::BuildingCode::irc_2018, false, Directions::outward, Directions::all_round},
        {model::BuildingCode::irc_2024, false, Directions::outward, Directions::outward},
    };
    for (const auto& row : rows) {
        model::BaseDetail detail = test::example_detail();
        detail.guard.handrail = row.handrail;
        detail.basis.code = row.code;
        detail.loads.directions = row.stated;
        INFO(model::edition(row.code));
        CHECK(demand::code_directions(detail) == row.taken);
    }
}

// Everything grows in proportion to a push alone: a case that is covered need not be solved.
TEST_CASE("300 lb pulls one and a half times as hard as 200 lb, by as many solves", "[property]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.guard.occupancy = Occupancy::one_and_two_family;
    const demand::Outcome dwelling = demand::find_demand(resolved);
    resolved.detail.guard.occupancy = Occupancy::other;
    resolved.detail.guard.tributary_length_in = 72.0;
    const demand::Outcome open = demand::find_demand(resolved);
    REQUIRE(dwelling.demand);
    REQUIRE(open.demand);
    CHECK(open.demand->states.size() == dwelling.demand->states.size());
    for (std::size_t anchor = 0; anchor < 4; ++anchor) {
        CHECK_CLOSE(open.demand->anchors[anchor].tension_lb, 1.5 * dwelling.demand->anchors[anchor].tension_lb, 1e-9,
                    0.0);
        // The proof level is 2.5 times the code's 200 lb, whatever governs.
        CHECK_CLOSE(open.demand->anchors[anchor].proof_tension_lb, 2.5 * dwelling.demand->anchors[anchor].tension_lb,
                    1e-9, 0.0);
    }
}

TEST_CASE("A proof test pushes outward alone, without a load factor, beside the design loads", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.method = model::Method::lrfd;
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    CHECK_FALSE(demand::find_demand(resolved).demand->proof_test);
    const double design = demand::find_demand(resolved).demand->anchors[0].tension_lb;
    resolved.detail.loads.proof_push_lb = 500.0;
    const demand::Outcome outcome = demand::find_demand(resolved);
    REQUIRE(outcome.demand);
    CHECK(outcome.demand->anchors[0].tension_lb == design);
    REQUIRE(outcome.demand->proof_test);
    const demand::Demand& test = *outcome.demand->proof_test;
    REQUIRE(test.states.size() == test.scenarios.size());
    double outward = 0.0;
    for (const demand::State& state : outcome.demand->states) {
        if (std::abs(state.direction_rad - std::acos(0.0)) < 1e-9)
            outward = std::max(outward, state.anchors[0].tension_lb);
    }
    CHECK_CLOSE(test.anchors[0].tension_lb, outward * 500.0 / 320.0, 1e-9, 0.0);
}
