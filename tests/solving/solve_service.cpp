#include "solving/solve_service.h"

#include "review/shipped_reviews.h"
#include "solving/collected.h"

#include <catch2/catch.hpp>

#include <thread>

using namespace toehold;
using solving::Request;
using solving::Result;
using solving::SolveService;
using solving::Stage;

namespace {

/// Holds as it is, so that no remedy is looked for.
const char* const sound = "heron-landing-lags-in-deep-blocks";
/// Needs remedies, which take many reviews.
const char* const unsound = "heron-landing-short-lags-in-flat-block";

Request request_of(const char* name, std::uint64_t revision, bool moving = false) {
    return {revision, test::shipped_detail(name).detail, std::nullopt, moving};
}

void pause(int ms) { std::this_thread::sleep_for(std::chrono::milliseconds(ms)); }

bool revisions_never_fall(const std::vector<Result>& results) {
    for (std::size_t i = 1; i < results.size(); ++i) {
        if (results[i].revision < results[i - 1].revision) return false;
    }
    return true;
}

}  // namespace

TEST_CASE("a request at rest is answered quickly, then evaluated, then completed", "[unit]") {
    test::Collected collected;
    SolveService service(test::shipped_catalog(), std::ref(collected), 1);
    service.submit(request_of(sound, 1));
    REQUIRE(collected.wait_for(1, Stage::complete));
    REQUIRE(collected.wait_for(1, Stage::quick));
    for (const Result& result : collected.all()) {
        CHECK(result.revision == 1);
        CHECK(result.failure.empty());
        CHECK(result.problems.empty());
        CHECK(result.resolved);
        CHECK((result.quick != nullptr) == (result.stage == Stage::quick));
        REQUIRE((result.review != nullptr) == (result.stage != Stage::quick));
        if (result.review) CHECK(result.review->assumptions.empty() == (result.stage == Stage::evaluated));
    }
    CHECK(collected.all().size() == 3);
}

TEST_CASE("of a burst the last request is answered, and no older answer comes after a newer one", "[unit]") {
    test::Collected collected;
    SolveService service(test::shipped_catalog(), std::ref(collected), 5);
    constexpr std::uint64_t last = 200;
    Request request = request_of(sound, 0);
    for (std::uint64_t revision = 1; revision <= last; ++revision) {
        request.revision = revision;
        request.moving = revision % 3 == 0;
        on_deck(request.detail).plate.holes.front().center.x_in += 0.001;
        service.submit(request);
        if (revision % 20 == 0) pause(20);
    }
    REQUIRE(collected.wait_for(last, Stage::complete));
    REQUIRE(collected.wait_for(last, Stage::quick));
    const std::vector<Result> results = collected.all();
    CHECK(revisions_never_fall(results));
    CHECK(collected.count(last, Stage::quick) == 1);
    CHECK(collected.count(last, Stage::evaluated) == 1);
    CHECK(collected.count(last, Stage::complete) == 1);
    // Most were overtaken before anybody came to them.
    CHECK(results.size() < 200);
}

TEST_CASE("while a hand is on it only quick answers come; letting go brings the review", "[unit]") {
    test::Collected collected;
    SolveService service(test::shipped_catalog(), std::ref(collected), 1);
    service.submit(request_of(sound, 1, true));
    REQUIRE(collected.wait_for(1, Stage::quick));
    pause(200);
    CHECK(collected.count(1, Stage::evaluated) == 0);
    service.submit(request_of(sound, 1, false));
    REQUIRE(collected.wait_for(1, Stage::complete));
}

TEST_CASE("another push at a reviewed detail gets a quick answer and no second review", "[unit]") {
    test::Collected collected;
    SolveService service(test::shipped_catalog(), std::ref(collected), 1);
    service.submit(request_of(sound, 1));
    REQUIRE(collected.wait_for(1, Stage::complete));
    REQUIRE(collected.wait_for(1, Stage::quick));
    Request turned = request_of(sound, 1);
    turned.direction_rad = 1.0;
    service.submit(turned);
    for (int waits = 0; collected.count(1, Stage::quick) < 2 && waits < 600; ++waits) pause(100);
    REQUIRE(collected.count(1, Stage::quick) == 2);
    CHECK(collected.all().back().quick->push.direction_rad == 1.0);
    pause(200);
    CHECK(collected.count(1, Stage::evaluated) == 1);
}

TEST_CASE("an edit overtakes a review that is under way, and nothing of it is delivered after", "[unit]") {
    test::Collected collected;
    SolveService service(test::shipped_catalog(), std::ref(collected), 1);
    service.submit(request_of(unsound, 1));
    REQUIRE(collected.wait_for(1, Stage::evaluated));
    service.submit(request_of(sound, 2));
    REQUIRE(collected.wait_for(2, Stage::complete));
    CHECK(collected.count(1, Stage::complete) == 0);
    CHECK(revisions_never_fall(collected.all()));
}

TEST_CASE("the service ends without finishing its review, and delivers nothing afterwards", "[unit]") {
    test::Collected collected;
    {
        SolveService service(test::shipped_catalog(), std::ref(collected), 1);
        service.submit(request_of(unsound, 1));
        REQUIRE(collected.wait_for(1, Stage::evaluated));
    }
    const std::size_t delivered = collected.all().size();
    CHECK(collected.count(1, Stage::complete) == 0);
    pause(100);
    CHECK(collected.all().size() == delivered);
}

TEST_CASE("a listener may ask again from where it is told", "[unit]") {
    test::Collected collected;
    SolveService* asked = nullptr;
    SolveService service(
        test::shipped_catalog(),
        [&](Result result) {
            const bool again = result.stage == Stage::quick && result.revision < 3;
            const std::uint64_t next = result.revision + 1;
            collected(std::move(result));
            if (again) asked->submit(request_of(sound, next, true));
        },
        1);
    asked = &service;
    service.submit(request_of(sound, 1, true));
    CHECK(collected.wait_for(3, Stage::quick));
}
