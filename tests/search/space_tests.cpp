// Candidates by number, and what tells one space from another.
#include "search/space/space.h"

#include "search/space/builder.h"

#include "small_space.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <random>
#include <stdexcept>

using namespace toehold;
using search::Candidate;
using search::Space;

TEST_CASE("a candidate's number and its choices are one another's inverse", "[closed-form]") {
    const Space space = test::rigid_space();
    REQUIRE(search::size(space) == 2 * 4 * 3 * 2);
    CHECK(search::choices(space, 0) == std::vector<std::size_t>{0, 0, 0, 0});
    CHECK(search::choices(space, 1) == std::vector<std::size_t>{0, 0, 0, 1});  // the last axis is the fastest
    CHECK(search::choices(space, 47) == std::vector<std::size_t>{1, 3, 2, 1});
    for (Candidate candidate = 0; candidate < search::size(space); ++candidate)
        CHECK(search::number_of(space, search::choices(space, candidate)) == candidate);
    CHECK_THROWS_AS(search::choices(space, 48), std::out_of_range);
    CHECK_THROWS_AS(search::number_of(space, {2, 0, 0, 0}), std::out_of_range);
    CHECK_THROWS_AS(search::number_of(space, {0, 0, 0}), std::out_of_range);
}

TEST_CASE("a space without axes is its base, one with an empty axis is empty, and one too large is refused", "[unit]") {
    Space space = test::hopeless_space();
    const search::Axis axis = space.axes.front();
    space.axes.clear();
    CHECK(search::size(space) == 1);
    CHECK(search::detail_of(space, 0) == space.base.detail);
    space.axes = {axis, {"none", format::verbatim("none"), {}}};
    CHECK(search::size(space) == 0);
    CHECK_THROWS_AS(search::detail_of(space, 0), std::out_of_range);
    space.axes.assign(64, axis);  // two options each: 2^64 candidates
    CHECK_THROWS_AS(search::size(space), std::overflow_error);
}

TEST_CASE("a candidate is its options applied one after the other", "[unit]") {
    const Space space = test::rigid_space();
    const auto detail = search::detail_of(space, search::number_of(space, {1, 0, 2, 1}));
    REQUIRE(detail);
    CHECK(on_deck(*detail).plate.thickness_in == 0.5);
    CHECK(std::get<model::LagScrew>(on_deck(*detail).anchors.front().fastener).length_in == 8.0);
    CHECK(detail->framing.blocks.front().depth_in == 7.25);
    // A 1/2 in screw of 4 in is none.
    CHECK_FALSE(search::detail_of(space, search::number_of(space, {0, 3, 0, 0})));
}

TEST_CASE("a builder gives the detail of any candidate, whatever it built before", "[property]") {
    const Space space = test::rigid_space();
    search::Builder builder(space);
    std::mt19937 chance(20261125);
    for (int trial = 0; trial < 200; ++trial) {
        const Candidate candidate = chance() % search::size(space);
        const auto detail = search::detail_of(space, candidate);
        const model::BaseDetail* const built = builder.detail(candidate);
        INFO("candidate " << candidate);
        REQUIRE((built != nullptr) == detail.has_value());
        if (detail) CHECK(*built == *detail);
    }
    CHECK_THROWS_AS(builder.detail(search::size(space)), std::out_of_range);
}

TEST_CASE("a fingerprint changes with the base, the axes, the labels and what an option does", "[property]") {
    const std::string first = search::fingerprint(test::rigid_space());
    CHECK(first.size() == 64);
    CHECK(search::fingerprint(test::rigid_space()) == first);
    Space space = test::rigid_space();
    space.base.detail.guard.height_in = 36.0;
    CHECK(search::fingerprint(space) != first);
    space = test::rigid_space();
    std::swap(space.axes[0], space.axes[1]);
    CHECK(search::fingerprint(space) != first);
    space = test::rigid_space();
    space.axes[0].options[0].label = "thin";
    CHECK(search::fingerprint(space) != first);
    space = test::rigid_space();
    std::swap(space.axes[0].options[0].apply, space.axes[0].options[1].apply);
    CHECK(search::fingerprint(space) != first);
}
