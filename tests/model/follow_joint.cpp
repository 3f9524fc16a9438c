// Framing that goes with the faces of a post on a member's side: what moves, by how much, and what stays.
#include "model/follow_joint.h"

#include "support/compare.h"
#include "support/side_detail.h"

#include <catch2/catch.hpp>

using namespace toehold;
using model::BaseDetail;

TEST_CASE("all framing moves alike in plan, and back", "[unit]") {
    const BaseDetail detail = test::side_detail();
    model::Framing framing = detail.framing;
    model::Block block;
    block.along = model::PlanAxis::x;
    block.from_in = -7.0;
    block.to_in = 7.0;
    block.across_in = -6.5;
    framing.blocks.push_back(block);
    const model::Framing before = framing;
    model::move_framing(framing, {3.0, -2.0});
    CHECK(framing.joists->members.front().offset_in == before.joists->members.front().offset_in + 3.0);
    CHECK(*framing.joists->to_in == *before.joists->to_in - 2.0);
    CHECK(framing.rims.front().at_in == before.rims.front().at_in - 2.0);
    CHECK(framing.rims.front().from_in == before.rims.front().from_in + 3.0);
    CHECK(framing.supports.front().at_in == before.supports.front().at_in - 2.0);
    CHECK(framing.blocks.front().from_in == -4.0);
    CHECK(framing.blocks.front().across_in == -8.5);
    model::move_framing(framing, {-3.0, 2.0});
    CHECK(framing == before);
}

TEST_CASE("a deeper post takes the framing along by half of what it grows", "[unit]") {
    for (BaseDetail detail : {test::side_detail(), test::inside_detail()}) {
        const model::SideJoint before = model::side_joint(detail);
        const double rim_in = detail.framing.rims.front().at_in;
        std::get<model::WoodPost>(detail.post).depth_in += 2.0;
        model::framing_follows(detail, before);
        CHECK_CLOSE(detail.framing.rims.front().at_in, rim_in + before.towards_y, 0.0, 1e-12);
    }
}

TEST_CASE("pieces of a member grow away from the post", "[unit]") {
    BaseDetail detail = test::side_detail();
    const double joists_end_in = *detail.framing.joists->to_in;
    CHECK_FALSE(model::set_plies(detail, 0));
    CHECK_FALSE(model::set_plies(detail, model::most_plies + 1));
    CHECK(detail == test::side_detail());
    REQUIRE(model::set_plies(detail, 1));
    CHECK_CLOSE(detail.framing.rims.front().at_in, -1.75 - 0.75, 0.0, 1e-12);
    CHECK_CLOSE(*detail.framing.joists->to_in, joists_end_in + 1.5, 0.0, 1e-12);
    REQUIRE(model::set_plies(detail, 2));
    CHECK_CLOSE(detail.framing.rims.front().at_in, test::side_detail().framing.rims.front().at_in, 0.0, 1e-12);
}
