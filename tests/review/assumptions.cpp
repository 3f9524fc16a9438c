// What a review says it assumed, and which other choices it tries.
#include "review/shipped_reviews.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

// 0.5.0 tried lambda = 1.0, which NDS 2018 Table N3 does not have beside a live load: 0.7, 0.8 and 1.25.
TEST_CASE("The time effect factor has no other choice beside it", "[unit][A14]") {
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

// Between the axes of a square steel tube the plastic moment is taken, and the linear sum is tried beside it; the other
// choice of the two is named in no review whose post is round or of wood.
TEST_CASE("What a steel post carries between its axes is said, with the other choice", "[unit]") {
    catalog::Resolved resolved = test::shipped_detail("heron-landing-through-bolts");
    REQUIRE(std::holds_alternative<model::RectangularTube>(resolved.detail.post));
    const auto said = [&resolved] {
        const review::Review review = review::review(resolved, "");
        return std::any_of(review.assumptions.begin(), review.assumptions.end(), [](const review::Assumption& one) {
            return format::english(one.text).find("bent between its axes") != std::string::npos && one.other;
        });
    };
    CHECK(said());
    resolved.detail.basis.tube_diagonal = model::TubeDiagonal::linear;
    CHECK_FALSE(said());
    resolved.detail.basis.tube_diagonal.reset();
    resolved.detail.post = model::RoundTube{2.0, 0.1875, "steel-a500-b-round"};
    CHECK_FALSE(said());
}
