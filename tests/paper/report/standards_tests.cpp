// The standards a review rests on: what its results, loads, stiffnesses and assumptions cite, and no word beside it.
#include "paper/report/standards.h"

#include "review/review.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using format::Citation;
using format::phrase;
using paper::report::Standard;

namespace {

const Standard& standard(std::string_view name) {
    const auto& all = paper::report::known_standards();
    return *std::find_if(all.begin(), all.end(), [name](const Standard& one) { return one.name == name; });
}

std::vector<std::string> names_used(const review::Review& review) {
    std::vector<std::string> names;
    for (const Standard& one : paper::report::standards_used(review)) names.emplace_back(one.name);
    return names;
}

}  // namespace

TEST_CASE("A citation belongs to the standard it begins with", "[unit]") {
    CHECK(cites("NDS 2018 11.3.6", standard("NDS 2018")));
    CHECK(cites("common practice; Wood Handbook 2010 ch. 5 (from memory)", standard("Wood Handbook 2010")));
    CHECK(cites("NDS 2018 12.3.1;AWC TR12", standard("AWC TR12")));
    CHECK_FALSE(cites("NDS Supplement 2018 Table 4A", standard("NDS 2018")));
    CHECK_FALSE(cites("assumption after NDS 2018", standard("NDS 2018")));
    CHECK_FALSE(cites("", standard("NDS 2018")));
    CHECK_FALSE(cites(";", standard("NDS 2018")));
}

TEST_CASE("A review's standards come from its citations, wherever they stand", "[unit]") {
    review::Review review;
    checks::CheckResult result;
    result.clause = "NDS 2018 12.2";
    result.steps = {checks::given("F_y", phrase("yield strength"), 36000.0, "psi", "AISC 360-16 J3.6")};
    review.checks = {result};
    review.assumptions = {{phrase("Assumed {} at the top ({}, {}).", format::Quantity{200.0, "lb"},
                                  Citation{"IBC 2021 1607.9.1.1"}, Citation{"IRC 2021 Table R301.5"})},
                          {phrase("Not as EN 1993-1-8 has it.")}};
    review.demand.emplace();
    review.demand->cases.resize(1);
    review.demand->cases.front().source =
        phrase("{} and {}", format::verbatim("ASTM E985"), phrase("{}", Citation{"ASCE 7-16 4.5.1"}));
    CHECK(names_used(review) ==
          std::vector<std::string>{"IBC 2021", "IRC 2021", "ASCE 7-16", "NDS 2018", "AISC 360-16"});
}

TEST_CASE("Codes are told from the standards of design", "[unit]") {
    for (const Standard& one : paper::report::known_standards()) {
        const bool code =
            one.name.starts_with("IBC ") || one.name.starts_with("IRC ") || one.name.starts_with("ASCE 7-");
        INFO(std::string(one.name));
        CHECK((one.kind == Standard::Kind::code) == code);
    }
}
