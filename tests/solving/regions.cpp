#include "solving/regions.h"

#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <future>

using namespace toehold;
using editing::Dragged;
using solving::RegionNews;
using namespace std::chrono_literals;

namespace {

std::shared_ptr<const RegionNews> first_answer(const model::BaseDetail& detail, const Dragged& dragged) {
    std::promise<std::shared_ptr<const RegionNews>> told;
    solving::Regions regions(test::shipped_catalog(),
                             [&](std::shared_ptr<const RegionNews> news) { told.set_value(std::move(news)); });
    regions.begin(detail, dragged);
    std::future<std::shared_ptr<const RegionNews>> answer = told.get_future();
    return answer.wait_for(60s) == std::future_status::ready ? answer.get() : nullptr;
}

}  // namespace

TEST_CASE("where there is nothing to look for, the one answer says so", "[unit]") {
    const model::BaseDetail sound = test::shipped_detail("heron-landing-lags-in-deep-blocks").detail;
    const auto no_such_block = first_answer(sound, {Dragged::Kind::block, "no such block"});
    REQUIRE(no_such_block);
    CHECK(no_such_block->last);
    CHECK_FALSE(no_such_block->looked);

    model::BaseDetail unsound = sound;
    on_deck(unsound).plate.thickness_in = -1.0;
    const auto not_solved = first_answer(unsound, {Dragged::Kind::anchor, "A"});
    REQUIRE(not_solved);
    CHECK(not_solved->last);
    CHECK_FALSE(not_solved->looked);
}
