#include "session/sizes.h"

#include "session/session.h"
#include "solving/solve_service.h"
#include "support/shipped.h"
#include "wording/search.h"

#include <catch2/catch.hpp>

#include <string>

using namespace toehold;
using session::Session;
using session::SizeOrder;
using session::Sizes;

namespace {

const char* const sound = "heron-landing-lags-in-deep-blocks";

/// A search that the test answers.
struct Workplace {
    Session session{test::shipped_catalog(), test::shipped_detail(sound).detail, [](const solving::Request&) {}};
    std::optional<search::Space> space;
    std::uint64_t number = 0;
    int stopped = 0, told = 0;
    Sizes sizes{session,
                {[this](search::Space of) {
                     space = std::move(of);
                     return ++number;
                 },
                 [this] { ++stopped; }},
                [this] { ++told; }};

    /// A result whose detail differs from the session's by its note alone.
    [[nodiscard]] search::Result result(search::Candidate candidate, double cost, double ratio) const {
        search::Result made;
        made.candidate = candidate;
        made.detail = session.detail();
        made.detail.note = "candidate " + std::to_string(candidate);
        made.score.steel_cost = cost;
        made.score.weight_lb = 100.0 - cost;
        made.score.governing_ratio = ratio;
        return made;
    }
    void answer(search::Outcome outcome) {
        solving::SizingNews news;
        news.search = number;
        news.outcome = std::make_shared<const search::Outcome>(std::move(outcome));
        sizes.receive(news);
    }
    void answer_with_three() {
        search::Outcome outcome;
        outcome.holding = {result(0, 30.0, 0.9), result(1, 10.0, 0.8), result(2, 20.0, 0.7)};
        outcome.front = {outcome.holding[1], outcome.holding[2]};
        outcome.counts = {10, 10, 3, {}};
        answer(std::move(outcome));
    }
};

}  // namespace

TEST_CASE("candidates are counted as the ranges say, and none are where a row cannot be read", "[unit]") {
    Workplace place;
    const std::optional<search::Candidate> all = place.sizes.count();
    REQUIRE(all);
    CHECK(*all > 1);
    place.sizes.tick_all(0, false);
    REQUIRE(place.sizes.count());
    CHECK(*place.sizes.count() < *all);
    CHECK(place.sizes.why_not().empty());
    place.sizes.reset_ranges();
    CHECK(place.sizes.count() == all);
}

TEST_CASE("a result taken is one step, another in its place the same, and undo leads back", "[unit]") {
    Workplace place;
    const model::BaseDetail start = place.session.detail();
    place.sizes.begin();
    CHECK(place.sizes.state() == Sizes::State::running);
    REQUIRE(place.space);
    place.answer_with_three();
    CHECK(place.sizes.state() == Sizes::State::done);
    REQUIRE(place.sizes.rows().size() == 2);
    CHECK_FALSE(place.sizes.opened());

    place.sizes.open(0);
    CHECK(place.session.detail().note == "candidate 1");
    CHECK(place.sizes.opened() == std::size_t{0});
    place.sizes.open(1);
    CHECK(place.session.detail().note == "candidate 2");
    place.session.undo();
    CHECK(place.session.detail() == start);
    CHECK(place.sizes.fits());
}

TEST_CASE("results of an earlier detail are not taken over what came after", "[unit]") {
    Workplace place;
    place.sizes.begin();
    place.answer_with_three();
    model::BaseDetail edited = place.session.detail();
    edited.guard.height_in += 1.0;
    place.session.change(format::verbatim("Change height"), edited);
    CHECK_FALSE(place.sizes.fits());
    place.sizes.open(0);
    CHECK(place.session.detail() == edited);
    CHECK_FALSE(place.session.message().empty());
}

TEST_CASE("results stand in the order wished, all of them where that is wished", "[unit]") {
    Workplace place;
    place.sizes.begin();
    place.answer_with_three();
    CHECK(place.sizes.rows().front()->candidate == 1);
    place.sizes.order_by(SizeOrder::weight);
    CHECK(place.sizes.rows().front()->candidate == 2);
    place.sizes.show_all(true);
    CHECK(place.sizes.rows().size() == 3);
    CHECK(place.sizes.rows().front()->candidate == 0);
    place.sizes.order_by(SizeOrder::ratio);
    CHECK(place.sizes.rows().front()->candidate == 2);
}

TEST_CASE("where nothing holds, the limit and the nearest miss are told", "[unit]") {
    Workplace place;
    place.sizes.begin();
    search::Outcome outcome;
    outcome.counts = {10, 10, 0, {}};
    outcome.limits = {{"anchor-withdrawal", 7}, {"plate-bending", 3}};
    search::NearestMiss miss;
    miss.detail = place.session.detail();
    miss.detail.note = "nearest";
    miss.title = wording::limit_title("anchor-withdrawal");
    miss.ratio = 1.25;
    miss.would_change = format::phrase("Use a longer screw.");
    outcome.nearest = miss;
    place.answer(std::move(outcome));
    const std::string summary = format::english(place.sizes.summary());
    CHECK(summary.find(format::english(wording::limit_title("anchor-withdrawal"))) != std::string::npos);
    CHECK(summary.find("7") != std::string::npos);
    CHECK(format::english(place.sizes.nearest_words()).find("1.25") != std::string::npos);
    place.sizes.open_nearest();
    CHECK(place.session.detail().note == "nearest");
}

TEST_CASE("candidates that no check stopped are told by what stopped them too", "[unit]") {
    const auto summary = [](std::map<std::string, std::size_t> limits, search::Candidate by_choice) {
        Workplace place;
        place.sizes.begin();
        search::Outcome outcome;
        outcome.counts = {10, 10, 0, {by_choice, 0, 0, 10 - by_choice}};
        outcome.limits = std::move(limits);
        place.answer(std::move(outcome));
        return format::english(place.sizes.summary());
    };
    CHECK(summary({{"anchor-withdrawal", 3}}, 7).find("Choices that do not go together (7)") != std::string::npos);
    CHECK(summary({{search::no_equilibrium, 10}}, 0).find("Base overturns (10)") != std::string::npos);
    CHECK(summary({}, 10) == "None of the 10 candidates tried can be built.");
}

TEST_CASE("where nothing holds, the choices that most often do not go together are told with their reason", "[unit]") {
    Workplace place;
    place.sizes.begin();
    search::Outcome outcome;
    outcome.counts = {10, 10, 0, {10, 0, 0, 0}};
    outcome.clashes.push_back({std::nullopt, {}, format::verbatim("no hole is left"), false, 10});
    place.answer(std::move(outcome));
    CHECK(format::english(place.sizes.summary()) ==
          "None of the 10 candidates tried can be built. Choices that do not go together, most often: All choices "
          "together: no hole is left (10 candidates).");
}

TEST_CASE("news of a search that another has taken the place of are not heard", "[unit]") {
    Workplace place;
    place.sizes.begin();
    solving::SizingNews old;
    old.search = place.number;
    old.outcome = std::make_shared<const search::Outcome>();
    place.sizes.begin();
    place.sizes.receive(old);
    CHECK(place.sizes.state() == Sizes::State::running);
    place.sizes.stop();
    CHECK(place.stopped == 1);
}
