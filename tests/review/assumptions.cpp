// What a review says it assumed, and which other choices it tries.
#include "review/shipped_reviews.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

// 0.5.0 tried lambda = 1.0, which NDS 2018 Table N3 does not have beside a live load: 0.7, 0.8 and 1.25.
TEST_CASE("The time effect factor has no other choice beside it", "[unit]") {
    catalog::Resolved resolved = test::shipped_detail("heron-landing-through-bolts");
    resolved.detail.basis.method = model::Method::lrfd;
    resolved.detail.basis.time_effect.reset();
    const review::Review review = review::review(resolved, "");
    const auto found =
        std::find_if(review.assumptions.begin(), review.assumptions.end(), [](const review::Assumption& one) {
            return format::english(one.text).find("lambda = 0.8") != std::string::npos;
        });
    REQUIRE(found != review.assumptions.end());
    CHECK_FALSE(found->other);
}
