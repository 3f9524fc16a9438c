// Remarks of a reviewer; days against the calendar (Gregorian, ISO 8601).
#include "model/validate_remarks.h"

#include <catch2/catch.hpp>

using namespace toehold::model;

namespace {

Problems problems_of(const std::vector<Remark>& remarks) {
    ProblemList problems;
    check_remarks(problems, remarks);
    return problems.take();
}

Problems problems_of(const Remark& remark) { return problems_of(std::vector{remark}); }

Remark saying(const std::string& words) { return {{}, {}, words, {}, {}, Remark::State::open}; }

}  // namespace

TEST_CASE("a day is one of the calendar, written in full", "[unit]") {
    for (const char* day : {"2026-11-25", "2024-02-29", "2000-02-29", "0001-01-01", "9999-12-31"}) {
        INFO(day);
        CHECK(is_iso_day(day));
    }
    for (const char* none : {"", "2026-11-31", "2023-02-29", "1900-02-29", "2026-00-10", "2026-13-01", "2026-01-00",
                             "0000-01-01", "26-11-25", "2026-1-5", "2026/11/25", "25.11.2026", "2026-11-25 ",
                             "2026-11-25Z", "20261125", "abcd-ef-gh", "-026-11-25"}) {
        INFO(none);
        CHECK_FALSE(is_iso_day(none));
    }
}

TEST_CASE("a sound remark has no problem, whatever check it is about", "[unit]") {
    CHECK(problems_of(std::vector<Remark>{}).empty());
    CHECK(problems_of(saying("Show the block's ends.")).empty());
    CHECK(problems_of(Remark{"no-such-check", "anchor A", "x", "A. Reviewer", "2026-11-25", Remark::State::settled})
              .empty());
}

TEST_CASE("each fault of a remark is told, with the remark's place", "[bad-input]") {
    for (const char* nothing : {"", "  \t\r\n"}) CHECK(problems_of(saying(nothing)).size() == 1);
    const Problems problems = problems_of({saying("x"), {"two words", {}, "", {}, "soon", Remark::State::open}});
    REQUIRE(problems.size() == 3);
    for (const Problem& problem : problems) CHECK(problem.element == "remarks/remark[2]");
}

TEST_CASE("length counts characters and not bytes, and a file's remarks are limited", "[bad-input]") {
    std::string accents;
    for (std::size_t count = 0; count < longest_remark; ++count) accents += "\u00E9";
    CHECK(problems_of(saying(accents)).empty());
    CHECK(problems_of(saying(accents + "e")).size() == 1);
    CHECK(problems_of(std::vector(most_remarks, saying("x"))).empty());
    CHECK(problems_of(std::vector(most_remarks + 1, saying("x"))).size() == 1);
}
