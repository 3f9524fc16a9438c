#include "solving/errand.h"

#include <catch2/catch.hpp>

#include <atomic>
#include <chrono>
#include <future>
#include <thread>

using toehold::solving::Errand;
using namespace std::chrono_literals;

TEST_CASE("a newer errand stops the one that runs, and is done", "[unit]") {
    Errand errand;
    std::promise<void> begun, done;
    std::atomic<bool> first_was_stopped = false;
    errand.begin([&](const Errand::Stop& stop) {
        begun.set_value();
        while (!stop()) std::this_thread::sleep_for(1ms);
        first_was_stopped = true;
    });
    REQUIRE(begun.get_future().wait_for(60s) == std::future_status::ready);
    errand.begin([&](const Errand::Stop& stop) {
        CHECK_FALSE(stop());
        done.set_value();
    });
    REQUIRE(done.get_future().wait_for(60s) == std::future_status::ready);
    CHECK(first_was_stopped);
}

TEST_CASE("an errand that is given up tells its work so, and the thread takes the next", "[unit]") {
    std::promise<void> begun, ended, next;
    {
        Errand errand;
        errand.begin([&](const Errand::Stop& stop) {
            begun.set_value();
            while (!stop()) std::this_thread::sleep_for(1ms);
            ended.set_value();
        });
        REQUIRE(begun.get_future().wait_for(60s) == std::future_status::ready);
        errand.stop();
        REQUIRE(ended.get_future().wait_for(60s) == std::future_status::ready);
        errand.begin([&](const Errand::Stop&) { next.set_value(); });
        REQUIRE(next.get_future().wait_for(60s) == std::future_status::ready);
    }
}
