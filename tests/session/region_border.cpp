// The pieces of a border, however they are ordered, become the lines they are of.
#include "session/region_border.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

study::RegionBorder piece(const char* limit, model::Position from, model::Position to) {
    return {from, to, {limit, {}, {}}};
}

}  // namespace

TEST_CASE("pieces that go on from each other are one line, longest first, and a limit ends it", "[unit]") {
    const auto found = session::stretches({piece("b", {3, 0}, {3, 1}), piece("a", {1, 0}, {2, 0}),
                                           piece("a", {2, 0}, {3, 0}), piece("a", {0, 0}, {1, 0})});
    REQUIRE(found.size() == 2);
    CHECK(found[0].limit.id == "a");
    CHECK(found[0].places == std::vector<model::Position>{{0, 0}, {1, 0}, {2, 0}, {3, 0}});
    CHECK(found[0].long_in == 3.0);
    CHECK(found[1].limit.id == "b");
    CHECK(found[1].long_in == 1.0);
}

TEST_CASE("a closed border begins and ends at one place", "[unit]") {
    const auto found =
        session::stretches({piece("a", {0, 0}, {1, 0}), piece("a", {1, 1}, {0, 0}), piece("a", {1, 0}, {1, 1})});
    REQUIRE(found.size() == 1);
    CHECK(found[0].places.size() == 4);
    CHECK(found[0].places.front() == found[0].places.back());
}

TEST_CASE("of an interval each end is one place", "[unit]") {
    const auto found = session::stretches({piece("a", {1, 0}, {1, 0}), piece("a", {4, 0}, {4, 0})});
    REQUIRE(found.size() == 2);
    CHECK(found[0].places == std::vector<model::Position>{{1, 0}});
    CHECK(found[1].places == std::vector<model::Position>{{4, 0}});
    CHECK(session::stretches({}).empty());
}
