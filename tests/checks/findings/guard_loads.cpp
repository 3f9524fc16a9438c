// Loads that a file states against those the code in force asks for. 0.5.0 had no such rule: each of these passed.
#include "checks/run_check.h"

#include "demand/demand.h"
#include "support/example.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <memory>

using namespace toehold;
using checks::Finding;
using checks::Severity;
using model::Occupancy;

namespace {

catalog::Resolved dwelling() {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.guard.occupancy = Occupancy::one_and_two_family;
    return resolved;
}

std::vector<Finding> found(const catalog::Resolved& resolved) { return test::run_finding("guard-loads", resolved); }

}  // namespace

TEST_CASE("A dwelling's 200 lb from every side needs nothing more", "[unit]") {
    CHECK(found(dwelling()).empty());
    catalog::Resolved silent = dwelling();
    silent.detail.loads = {};
    CHECK(found(silent).empty());
}

TEST_CASE("Outside dwellings the length of rail a post takes must be there", "[published][A1]") {
    // IBC 2021 1607.9.1 and its second exception, IBC 2018 1607.8.1 (public copies): 50 plf, or 20 plf.
    catalog::Resolved resolved = test::example_resolved();
    const auto findings = found(resolved);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == Severity::missing);
    CHECK(findings[0].clause == "IBC 2021 1607.9.1");
    CHECK(test::says(findings[0].message, "50 lb/ft"));
    resolved.detail.guard.occupancy = Occupancy::limited;
    resolved.detail.basis.code = model::BuildingCode::ibc_2018;
    CHECK(test::says(found(resolved).at(0).message, "20 lb/ft"));
    CHECK(found(resolved).at(0).clause == "IBC 2018 1607.8.1");
    resolved.detail.guard.tributary_length_in = 72.0;
    CHECK(found(resolved).empty());
    resolved.detail.guard.tributary_length_in.reset();
    resolved.detail.loads.line = model::LineLoad{50.0, 6.0, 0.0};
    CHECK(found(resolved).empty());
}

TEST_CASE("Less than the code's concentrated load fails with its clause", "[published][A1]") {
    catalog::Resolved resolved = dwelling();
    for (const double push_lb : {1.0, 199.9}) {
        resolved.detail.loads.concentrated->push_lb = push_lb;
        const auto findings = found(resolved);
        REQUIRE(findings.size() == 1);
        CHECK(findings[0].severity == Severity::fails);
        CHECK(findings[0].clause == "IBC 2021 1607.9.1.1");
    }
    resolved.detail.basis.code = model::BuildingCode::irc_2021;
    CHECK(found(resolved).at(0).clause == "IRC 2021 Table R301.5");
    resolved.detail.loads.concentrated->push_lb = 890.0 / 4.4482216152605;  // 0.89 kN, the code's own rounding
    CHECK(found(resolved).empty());
}

TEST_CASE("Less than the code's load along the rail fails, but not on a dwelling", "[published][A1]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.loads.line = model::LineLoad{20.0, 6.0, 0.0};
    REQUIRE(found(resolved).size() == 1);
    CHECK(found(resolved)[0].severity == Severity::fails);
    resolved.detail.guard.occupancy = Occupancy::limited;
    CHECK(found(resolved).empty());
    resolved.detail.guard.occupancy = Occupancy::one_and_two_family;
    resolved.detail.loads.line->push_lb_per_ft = 1.0;
    CHECK(found(resolved).empty());
}

TEST_CASE("Fewer directions fail unless the edition lets a guard without a handrail do with them", "[memory][A1]") {
    catalog::Resolved resolved = dwelling();
    resolved.detail.loads.directions = model::Directions::outward;
    CHECK(found(resolved).at(0).severity == Severity::fails);
    resolved.detail.guard.handrail = false;
    CHECK(found(resolved).at(0).severity == Severity::fails);
    resolved.detail.basis.code = model::BuildingCode::irc_2021;
    CHECK(found(resolved).at(0).severity == Severity::caution);
    resolved.detail.guard.handrail = true;
    CHECK(found(resolved).at(0).severity == Severity::fails);
}

TEST_CASE("Wind without an area is not checked, and says so", "[unit][A13]") {
    catalog::Resolved resolved = dwelling();
    resolved.detail.loads.wind.emplace();
    resolved.detail.loads.wind->pressure_psf = 20.0;
    REQUIRE(found(resolved).size() == 1);
    CHECK(found(resolved)[0].severity == Severity::missing);
    resolved.detail.loads.wind->area_ft2 = 12.0;
    CHECK(found(resolved).empty());
}

TEST_CASE("The residential code for another occupancy is a caution, and the load along the rail is asked for",
          "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.basis.code = model::BuildingCode::irc_2021;
    const auto findings = found(resolved);
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].severity == Severity::caution);
    CHECK(findings[1].severity == Severity::missing);
}

TEST_CASE("A proof test is judged by allowable values at ten minutes", "[unit]") {
    catalog::Resolved resolved = dwelling();
    resolved.detail.basis.plate = model::PlateBehaviour::rigid;
    const auto under = [&](std::optional<double> push_lb) {
        resolved.detail.loads.proof_push_lb = push_lb;
        const demand::Outcome outcome = demand::find_demand(resolved);
        REQUIRE(outcome.demand);
        return test::run_finding("proof-test", resolved, *outcome.demand);
    };
    CHECK(under(std::nullopt).empty());
    REQUIRE(under(1.0).size() == 1);
    CHECK(under(1.0)[0].severity == Severity::caution);
    REQUIRE(under(5000.0).size() == 1);
    CHECK(under(5000.0)[0].severity == Severity::fails);
    CHECK(test::says(under(5000.0)[0].message, "Proof test of 5000 lb"));
    CHECK(under(1.0)[0].clause.find("1709.3.1") != std::string::npos);
}

TEST_CASE("A proof test turns to a failure where its worst strength is just used up", "[property]") {
    const catalog::Resolved resolved = dwelling();
    demand::Demand demand = test::example_demand(resolved, {}, {});
    const auto under = [&](double tension_lb) {
        demand.proof_test =
            std::make_shared<demand::Demand>(test::example_demand(resolved, {tension_lb, 0.0, 0.0}, {}));
        return test::run_finding("proof-test", resolved, demand).at(0);
    };
    double holds_lb = 50.0, fails_lb = 5000.0;
    REQUIRE(under(holds_lb).severity == Severity::caution);
    REQUIRE(under(fails_lb).severity == Severity::fails);
    while (fails_lb > 1.004 * holds_lb) {
        const double middle_lb = std::sqrt(holds_lb * fails_lb);
        (under(middle_lb).severity == Severity::fails ? fails_lb : holds_lb) = middle_lb;
    }
    INFO(format::english(under(holds_lb).message));
    CHECK(test::says(under(holds_lb).message, "at 1.00"));
    CHECK(test::says(under(fails_lb).message, "at 1.00"));
}
