// Nominal sizes against NDS Supplement 2018 Table 1A (PS 20), dry: dimension lumber read in a public transcription;
// boards and timbers from memory.
#include "model/lumber_size.h"

#include <catch2/catch.hpp>

using namespace toehold::model;

namespace {

void check(const char* name, double first_in, double second_in) {
    INFO(name);
    const auto size = dressed_size(name);
    REQUIRE(size);
    CHECK(size->first_in == first_in);
    CHECK(size->second_in == second_in);
}

}  // namespace

TEST_CASE("dimension lumber is 1/2 in under its name to 6 in, 3/4 in beyond", "[published]") {
    check("2x4", 1.5, 3.5);
    check("2x6", 1.5, 5.5);
    check("2x8", 1.5, 7.25);
    check("2x10", 1.5, 9.25);
    check("2x12", 1.5, 11.25);
    check("3x8", 2.5, 7.25);
    check("4x4", 3.5, 3.5);
    check("4x8", 3.5, 7.25);
}

TEST_CASE("boards and timbers", "[memory]") {
    check("5/4x6", 1.0, 5.5);
    check("1x6", 0.75, 5.5);
    check("6x6", 5.5, 5.5);
    check("6x8", 5.5, 7.25);
    check("8x8", 7.25, 7.25);
    check("6x16", 5.5, 15.0);
}

TEST_CASE("a name is read as people write it, in its own order", "[unit]") {
    check("2 X 8", 1.5, 7.25);
    check("2\u00d78", 1.5, 7.25);
    check("8x2", 7.25, 1.5);
    check("2 1/2x6", 2.0, 5.5);
    CHECK(is_size("2x8", 7.25, 1.5));
    CHECK(is_size("2x8", 1.5, 7.25));
    CHECK_FALSE(is_size("2x8", 1.5, 7.5));
    CHECK_FALSE(is_size("", 1.5, 7.25));
}

TEST_CASE("what nobody sells is no size", "[bad-input]") {
    for (const char* name :
         {"", "2", "x", "2x", "x8", "2x8x4", "0x4", "1.5x7.25", "2 x eight", "-2x4", "99x4", "2x1 1/8"}) {
        INFO(name);
        CHECK_FALSE(dressed_size(name));
    }
}
