#include "editing/reach/reach.h"

#include "editing/samples.h"
#include "support/parts.h"

#include <catch2/catch.hpp>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Dragged;
using editing::HandleId;
using editing::HandleKind;

TEST_CASE("an anchor's tip stands for the group that names its hole, be another for all others before it", "[unit]") {
    model::BaseDetail base = test::square_base();
    std::vector<model::AnchorGroup>& groups = on_deck(base).anchors;
    REQUIRE(groups.size() == 1);
    REQUIRE(groups.front().holes.empty());
    groups.push_back(groups.front());
    groups.back().holes = {"C"};
    const auto by_tip = [&base](const char* hole) {
        return editing::dragged_by(base, {HandleId{HandleKind::anchor_tip, parts::anchor(hole)}, {}});
    };
    CHECK(by_tip("A") == Dragged{Dragged::Kind::length, "A", study::EdgeSide::right, 0});
    CHECK(by_tip("C") == Dragged{Dragged::Kind::length, "C", study::EdgeSide::right, 1});
    groups.erase(groups.begin());
    CHECK(by_tip("C") == Dragged{Dragged::Kind::length, "C", study::EdgeSide::right, 0});
    CHECK_FALSE(by_tip("A"));
}
