// Remedies of shipped details: each must be a change that a review of its own confirms.
#include "review/remedies.h"

#include "model/validate.h"
#include "review/shipped_reviews.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using review::Verdict;

TEST_CASE("one block under the heel only: a second block under the other row mends it", "[unit]") {
    const review::Review before = test::shipped_review("heron-landing-heel-block-only");
    REQUIRE(before.verdict == Verdict::inadequate);
    const std::vector<review::Remedy> remedies = review::find_remedies(before, test::shipped_catalog());
    REQUIRE_FALSE(remedies.empty());
    CHECK(std::any_of(remedies.begin(), remedies.end(), [](const review::Remedy& one) {
        return one.id == "second-block" && one.verdict == Verdict::adequate;
    }));
    // What is recorded is what a fresh review of the changed detail says.
    const catalog::Resolution again = catalog::resolve(remedies.front().detail, test::shipped_catalog());
    REQUIRE(again.resolved);
    const review::Review after = review::review(*again.resolved, "");
    CHECK(after.verdict == remedies.front().verdict);
    CHECK(after.governing.ratio == remedies.front().governing.ratio);
}

TEST_CASE("a detail that holds is offered no remedy", "[unit]") {
    const review::Review holds = test::shipped_review("heron-landing-lags-in-deep-blocks");
    REQUIRE(holds.verdict == Verdict::adequate);
    CHECK(review::find_remedies(holds, test::shipped_catalog()).empty());
}

TEST_CASE("every change leaves a detail that passes validation", "[property]") {
    for (const char* name : {"heron-landing-end-nailed-blocks", "heron-landing-over-a-joist"}) {
        const catalog::Resolved resolved = test::shipped_detail(name);
        const std::vector<review::Remedy> remedies =
            review::find_remedies(review::review(resolved, ""), test::shipped_catalog());
        for (const review::Remedy& remedy : remedies) {
            INFO(name << ", " << remedy.id);
            CHECK(model::validate(remedy.detail).empty());
        }
    }
}
