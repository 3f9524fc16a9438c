// A few started details through the whole review: each gets a verdict, nothing that could be filled in is missing, and
// the usual ones hold as they were started.
#include "job/job.h"
#include "review/review.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using job::Job;
using test::shipped_catalog;

namespace {

review::Review reviewed(const Job& asked) {
    return review::evaluate(test::resolved_by_shipped(job::start(asked, shipped_catalog()).detail), {});
}

void check_whole(const review::Review& review) {
    REQUIRE(review.demand);
    for (const checks::Finding& finding : review.findings) {
        INFO(finding.id);
        CHECK(finding.severity != checks::Severity::missing);
        CHECK(finding.severity != checks::Severity::fails);
    }
    for (const checks::CheckResult& check : review.checks) {
        INFO(check.id);
        CHECK(check.status != checks::Status::missing_evidence);
    }
    CHECK(std::any_of(review.findings.begin(), review.findings.end(),
                      [](const checks::Finding& finding) { return finding.id == "hardware-not-chosen"; }));
}

}  // namespace

TEST_CASE("a dwelling's steel post holds as it was started, wherever it stands", "[unit]") {
    for (const job::Place place : {job::Place::between_joists, job::Place::over_a_joist, job::Place::beside_the_rim,
                                   job::Place::corner, job::Place::cantilever}) {
        INFO("place " << static_cast<int>(place));
        Job asked;
        asked.place = place;
        const review::Review review = reviewed(asked);
        check_whole(review);
        CHECK(review.verdict == review::Verdict::adequate);
    }
}

TEST_CASE("a public steel post at a corner holds as it was started", "[unit]") {
    Job asked;
    asked.place = job::Place::corner;
    asked.occupancy = model::Occupancy::other;
    asked.guard_height_in = 42.0;
    asked.tributary_length_in = 72.0;
    asked.post = {"2 1/2x2 1/2x3/16", "steel"};
    asked.joist_size = "2x12";
    const review::Review review = reviewed(asked);
    check_whole(review);
    CHECK(review.verdict == review::Verdict::adequate);
}

TEST_CASE("an aluminum post on packing over a joist has its verdict", "[unit]") {
    Job asked;
    asked.place = job::Place::over_a_joist;
    asked.post = {"2 1/2x2 1/2x1/4", "aluminum"};
    asked.decking = "composite-generic";
    check_whole(reviewed(asked));
}

TEST_CASE("a wood post on lag screws at a cantilever's end has its verdict", "[unit]") {
    Job asked;
    asked.place = job::Place::cantilever;
    asked.post = {"4x4", "wood"};
    asked.access_below = false;
    check_whole(reviewed(asked));
}
