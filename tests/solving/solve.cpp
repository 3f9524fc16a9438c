#include "solving/solve_service.h"

#include "review/shipped_reviews.h"
#include "search/remedies/remedies.h"
#include "support/compare.h"
#include "xml/detail/detail_file.h"
#include "xml/document/file.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace toehold;
using solving::Request;
using solving::Result;
using solving::Stage;

namespace {

model::BaseDetail detail_of(const char* name) { return test::shipped_detail(name).detail; }

}  // namespace

TEST_CASE("a quick answer shows the push that pulls most unless another is asked for", "[unit]") {
    Request request{7, detail_of("heron-landing-lags-in-deep-blocks"), std::nullopt, true};
    const Result governing = solving::solve_quick(request, test::shipped_catalog());
    CHECK(governing.revision == 7);
    CHECK(governing.stage == Stage::quick);
    REQUIRE(governing.quick);
    const demand::PolarEnvelope& polar = governing.quick->polar;
    CHECK(governing.quick->push.direction_rad == polar.largest_direction_rad);
    CHECK_CLOSE(governing.quick->push.flexible[polar.largest_anchor].tension_lb, polar.largest_lb, 1e-9, 0.0);
    REQUIRE(governing.quick->cases.size() == 3);  // the push, and the same load straight down and straight up
    CHECK(governing.quick->cases[0].push_lb == 200.0);
    request.direction_rad = 0.5 * std::numbers::pi;
    const Result outward = solving::solve_quick(request, test::shipped_catalog());
    REQUIRE(outward.quick);
    CHECK(outward.quick->push.direction_rad == *request.direction_rad);
    // Moment about the toe edge by the anchors alone is more than the push's: bearing stands inward of that edge.
    const std::vector<model::Position> corners = model::polygon(on_deck(request.detail).plate.outline);
    const double toe =
        std::max_element(corners.begin(), corners.end(), [](auto a, auto b) { return a.y_in < b.y_in; })->y_in;
    double moment = 0.0;
    for (std::size_t i = 0; i < outward.resolved->anchors.size(); ++i) {
        moment += outward.quick->push.flexible[i].tension_lb * (toe - outward.resolved->anchors[i].at.y_in);
    }
    CHECK(moment > 200.0 * model::lever_height_in(request.detail));
}

TEST_CASE("a detail that is not valid, or names what no catalog has, comes back with its problems", "[bad-input]") {
    Request request{1, detail_of("heron-landing-lags-in-deep-blocks"), std::nullopt, false};
    on_deck(request.detail).plate.thickness_in = -1.0;
    for (const Result& result : {solving::solve_quick(request, test::shipped_catalog()),
                                 solving::solve_review(request, test::shipped_catalog())}) {
        CHECK_FALSE(result.problems.empty());
        CHECK_FALSE(result.resolved);
        CHECK_FALSE(result.quick);
        CHECK_FALSE(result.review);
        CHECK(result.failure.empty());
    }
    on_deck(request.detail).plate.thickness_in = 0.5;
    on_deck(request.detail).plate.metal = "steel-nobody-sells";
    CHECK_FALSE(solving::solve_quick(request, test::shipped_catalog()).problems.empty());
}

TEST_CASE("a base that turns over is a failure in words, beside a review that says so", "[bad-input]") {
    Request request{1, detail_of("heron-landing-lags-in-deep-blocks"), std::nullopt, false};
    model::Plate& plate = on_deck(request.detail).plate;
    plate.holes.resize(1);
    for (model::AnchorGroup& group : on_deck(request.detail).anchors) group.holes.clear();
    on_deck(request.detail).anchors.resize(1);
    plate.holes[0].center.x_in += 0.5;
    const Result quick = solving::solve_quick(request, test::shipped_catalog());
    CAPTURE(quick.problems.size());
    CHECK(format::english(quick.failure).find("twisting") != std::string::npos);
    CHECK_FALSE(quick.quick);
    const Result review = solving::solve_review(request, test::shipped_catalog());
    REQUIRE(review.review);
    CHECK(review.failure == review.review->no_demand);
    CHECK_FALSE(review.failure.empty());
    CHECK(review.review->verdict == review::Verdict::inadequate);
}

TEST_CASE("a whole review is the program's: checks, assumptions, cautions, remedies and the file's digest", "[unit]") {
    const Request request{3, detail_of("heron-landing-heel-block-only"), std::nullopt, false};
    const Result result = solving::solve_review(request, test::shipped_catalog());
    CHECK(result.stage == Stage::complete);
    REQUIRE(result.review);
    review::Review expected = review::review(*result.resolved, xml::sha256(xml::write_detail(request.detail)));
    expected.remedies = search::find_remedies(expected, test::shipped_catalog());
    CHECK(result.review->input_sha256 == expected.input_sha256);
    CHECK(result.review->facts.counts.failing() == expected.facts.counts.failing());
    CHECK(result.review->checks.size() == expected.checks.size());
    CHECK(result.review->cautions == expected.cautions);
    REQUIRE(result.review->assumptions.size() == expected.assumptions.size());
    for (std::size_t i = 0; i < expected.assumptions.size(); ++i)
        CHECK(result.review->assumptions[i].other == expected.assumptions[i].other);
    REQUIRE_FALSE(expected.remedies.empty());
    CHECK(result.review->remedies.size() == expected.remedies.size());
    CHECK(result.review->remedies.front().id == expected.remedies.front().id);
}
