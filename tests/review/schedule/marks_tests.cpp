// Marks of posts in few words.
#include "review/schedule/marks.h"

#include <catch2/catch.hpp>

using namespace toehold;
using review::joined_marks;
using Marks = std::vector<std::string>;

TEST_CASE("three marks that count up are one run, two are not", "[unit]") {
    CHECK(joined_marks({"P1", "P2", "P3", "P5"}, " to ") == "P1 to P3, P5");
    CHECK(joined_marks({"P1", "P2"}, " to ") == "P1, P2");
    CHECK(joined_marks({}, " to ").empty());
    CHECK(joined_marks({"P12"}, " to ") == "P12");
}

TEST_CASE("marks are put in the order of their numbers, each beginning for itself", "[unit]") {
    CHECK(joined_marks({"P10", "P9", "A1", "P8", "A2"}, "-", ",") == "A1,A2,P8-P10");
    CHECK(joined_marks({"1", "3", "2"}, " to ") == "1 to 3");
}

TEST_CASE("marks without a number to count on stand alone", "[unit]") {
    CHECK(joined_marks({"corner", "P01", "P02", "P03"}, " to ") == "P01, P02, P03, corner");
    CHECK(joined_marks({"P99999999999999999999999"}, " to ") == "P99999999999999999999999");
    CHECK(joined_marks({"P1", "P1", "P1"}, " to ") == "P1, P1, P1");
}

TEST_CASE("runs hold as many marks as there are", "[property]") {
    for (int seed = 1; seed < 40; ++seed) {
        Marks marks;
        for (int at = 1; at < 30; ++at) {
            if ((at * seed) % 7 > 2) marks.push_back("P" + std::to_string(at));
        }
        std::size_t count = 0;
        for (const review::MarkRun& run : review::mark_runs(marks)) count += run.count;
        CHECK(count == marks.size());
    }
}
