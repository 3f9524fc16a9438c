// What is drawn from a chain: settled by its seed, surer with more samples, worse for wet wood.
#include "study/proof_load/proof_load.h"
#include "study/proof_load/two_screws.h"
#include "support/compare.h"

#include <numeric>

using namespace toehold;

namespace {

const study::ProofLoad& foretold() {
    static const study::ProofLoad proof =
        study::proof_load(test::resolved_by_shipped(test::two_screws()), {4000, 7}).proof.value();
    return proof;
}

study::Prediction again(std::uint64_t samples, std::uint64_t seed) {
    return study::predict(foretold().in_service.chain, model::Moisture::wet, {samples, seed});
}

double width(const mechanics::ConfidenceInterval& interval) { return interval.high - interval.low; }

}  // namespace

TEST_CASE("The same seed gives the same prediction, another one another", "[property]") {
    const study::Prediction one = again(4000, 7);
    CHECK(one.mean_push_lb == foretold().in_service.mean_push_lb);
    CHECK(one.curve[0].push_lb == foretold().in_service.curve[0].push_lb);
    CHECK(one.mean_push_lb != again(4000, 8).mean_push_lb);
}

TEST_CASE("Sixteen times the samples narrow the intervals to about a quarter", "[property]") {
    const study::Prediction few = again(1000, 3), many = again(16000, 3);
    CHECK(width(many.mean_interval) / width(few.mean_interval) == Approx(0.25).epsilon(0.15));
    CHECK(width(many.carries.interval) < width(few.carries.interval));
}

TEST_CASE("Wet wood breaks sooner than dry", "[property]") {
    CHECK(foretold().in_service.moisture == model::Moisture::wet);
    CHECK(foretold().other.moisture == model::Moisture::dry);
    CHECK(foretold().in_service.mean_push_lb < foretold().other.mean_push_lb);
    CHECK(foretold().in_service.carries.share <= foretold().other.carries.share);
    CHECK_FALSE(foretold().moisture_stated);
}

TEST_CASE("Every sample has one first break, and the curve rises", "[property]") {
    const study::Prediction& wet = foretold().in_service;
    const double all = std::accumulate(wet.first.begin(), wet.first.end(), 0.0,
                                       [](double sum, const study::FirstBreak& one) { return sum + one.share; });
    CHECK(all == Approx(1.0));
    for (const study::FirstBreak& one : wet.first) {
        CHECK(one.interval.low < one.share);
        CHECK(one.interval.high > one.share);
        CHECK(width(one.interval) < 0.035);  // 2 x 1.96 sqrt(p (1 - p)/4000) is at most 0.031
    }
    CHECK(wet.curve[0].push_lb < wet.curve[1].push_lb);
    CHECK(wet.curve[1].push_lb < wet.curve[2].push_lb);
    // The weaker of two screws breaks first, so the mean lies below that of one, and not far.
    CHECK(wet.mean_push_lb < wet.chain.links.front().breaks_at_lb);
    CHECK(wet.mean_push_lb > 0.75 * wet.chain.links.front().breaks_at_lb);
}
